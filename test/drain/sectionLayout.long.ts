import { describe, expect, test } from 'vitest';
import {
  BARE_RADIUS,
  type Bed,
  bedHead,
  evenPlaces,
  isMat,
  type Layout,
  layoutOf,
  levelAtPipe,
  MAT_THICKNESS,
  pipesForBallast,
  searchLayout,
  strataOf,
  withWorks,
} from '../../lib/drain/index.js';
import { headAt, middleOf, type PondGround, pondSection, solveFreeSurface } from '../../lib/seepage/index.js';

const soil = (k: number) => ({ across: k, down: k, sorptive: 1, drainable: 0.05, storage: 1e-5 });
const PIPE = 0.1;

/** Clay so tight that only what is let in moves, the floor 1 m deep. */
const pondIn = (width: number, clay: number, level: number): PondGround => ({
  outline: [
    { x: -width / 2 - 0.1, z: 0 },
    { x: -width / 2, z: -1 },
    { x: width / 2, z: -1 },
    { x: width / 2 + 0.1, z: 0 },
  ],
  pond: -1,
  surface: [
    { x: -width / 2 - 8, z: 0 },
    { x: width / 2 + 8, z: 0 },
  ],
  layers: [{ thickness: 1, soil: soil(clay) }],
  base: -9,
  pipes: [],
  far: { left: level, right: level },
  rain: 0,
});

/** Heads above the underside of a bed with pipes in it, and how they depend on what is let in under it and at its ends. */
function bedSection(bed: Bed, width: number, places: number[], below: number, atEnds: number) {
  const pipe = isMat(bed)
    ? { depth: MAT_THICKNESS / 2, radius: MAT_THICKNESS / 6 }
    : { depth: 0.15 - PIPE / 2, radius: PIPE / 2 };
  const ground = withWorks(pondIn(width, 1e-10, -1.2), {
    bed: { kind: bed, turnedUp: false },
    pipes: places.map((across) => ({ across, ...pipe })),
  });
  const pond = pondSection(ground);
  const { section } = pond;
  const supply = section.supply!;
  const nx = section.grid.x.length - 1;
  const lowest = new Map<number, number>();
  section.soilOf.forEach((s, k) => {
    if (s >= 1 && !lowest.has(k % nx)) lowest.set(k % nx, k);
  });
  const columns = [...lowest].filter(
    ([i]) => Math.abs(section.grid.x[i] + section.grid.x[i + 1]) / 2 < width / 2,
  );
  for (const [i, k] of columns) supply[k] += below * (section.grid.x[i + 1] - section.grid.x[i]);
  for (const [, k] of [columns[0], columns[columns.length - 1]]) supply[k] += atEnds;
  const state = solveFreeSurface(section);
  const thickness = strataOf(bed).reduce((sum, l) => sum + l.thickness, 0);
  const heads = columns.map(([, k]) => ({
    x: middleOf(section.grid, k).x,
    h: state.head[k] + 1 + thickness,
  }));
  return {
    thickness,
    at: (x: number) => headAt(section, state.head, x, -1 - thickness + 1e-4) + 1 + thickness,
    heads,
  };
}

const BED_KINDS: Bed[] = [
  'pea gravel on concrete sand',
  'pea gravel in fabric',
  'concrete sand',
  'drainage mat',
];

describe.each(BED_KINDS)('water in a bed of %s', (bed) => {
  test.each([1e-6, 1e-5, 3e-5])(
    '%d m/s from below: never less than the section has, 0.015 m more at most',
    (q) => {
      const strata = strataOf(bed);
      const far = bedHead(strata, levelAtPipe(bed, PIPE), q, 1.5);
      const { thickness, at } = bedSection(bed, 3, [0], q, 0);
      if (far > thickness + 0.01) return expect(at(1.45)).toBeGreaterThan(thickness - 0.02);
      expect(far - at(1.45)).toBeGreaterThan(-0.001);
      expect(far - at(1.45)).toBeLessThan(0.015);
    },
  );

  test('full and under pressure it is the loss in a full blanket, q L²/(2 T)', () => {
    const strata = strataOf(bed);
    const thickness = strata.reduce((sum, l) => sum + l.thickness, 0);
    const transmissivity = strata.reduce((sum, l) => sum + l.permeability * l.thickness, 0);
    const more = bedHead(strata, thickness, 1e-5, 2) - thickness;
    expect(more).toBeCloseTo((1e-5 * 2 ** 2) / (2 * transmissivity), 12);
  });
});

/** Where the pipes of a layout lie in the cut that meets them, and its width. */
function cutOf(layout: Layout, length: number, width: number): { width: number; places: number[] } {
  if (layout.kind === 'herringbone') return { width: length, places: evenPlaces(length, layout.branches) };
  if (layout.kind === 'ring') return { width, places: [-1, 1].map((side) => side * (width / 2 - PIPE / 2)) };
  return { width, places: [0] };
}

describe('the layout that is designed, on the section', () => {
  test.each<[Bed, number, number, Layout['kind']]>([
    ['pea gravel on concrete sand', 1e-6, 1e-4, 'spine'],
    ['pea gravel on concrete sand', 5e-5, 4e-5, 'spine'],
    ['pea gravel in fabric', 1e-6, 1.5e-4, 'spine'],
    ['concrete sand', 1e-6, 4e-7, 'spine'],
    ['concrete sand', 2e-6, 1e-4, 'ring'],
    ['concrete sand', 2e-5, 1e-6, 'herringbone'],
  ])(
    '%s, %d m³/s from below and %d from the sides: a %s keeps the water below the liner',
    (bed, fromBelow, fromSides, kind) => {
      const [length, width] = [4, 3];
      const layout = layoutOf(length, width, bed, { fromBelow, fromSides }, PIPE);
      expect(layout.kind).toBe(kind);
      const cut = cutOf(layout, length, width);
      // A ring takes the water of the sides before it crosses the floor; branches take their share of it on the way.
      const evenly = fromBelow / (length * width);
      const atEnds = kind === 'spine' ? fromSides / (2 * length) : 0;
      const { thickness, heads } = bedSection(
        bed,
        cut.width,
        cut.places,
        kind === 'herringbone' ? layout.evenly : evenly,
        atEnds,
      );
      const highest = Math.max(...heads.map((p) => p.h));
      expect(highest).toBeLessThan(thickness - 0.02);
    },
  );
});

describe('search on the section', () => {
  test.each([
    [1, 0.12],
    [1.5, 0.2],
    [2, 0.4],
  ])(
    'pipes in soaked clay, floor %d m wide, ballast holds %d m: as many as by the closed form',
    (width, held) => {
      // More rain than the clay takes keeps the water at the surface.
      const ground = { ...pondIn(width, 1e-8, 0), rain: 1e-7 };
      const { found, tried } = searchLayout(ground, { pipe: { radius: BARE_RADIUS }, held, most: 12 });
      const closed = pipesForBallast(width, 1.15, held, 0.1)!;
      expect(closed).toBeGreaterThan(1);
      expect(found!.count).toBe(closed);
      for (let i = 1; i < tried.length; i++) expect(tried[i].floor).toBeLessThan(tried[i - 1].floor);
      expect(found!.sides).toBeGreaterThan(0);
    },
  );

  test('where the pipes may draw the water outside down, fewer do', () => {
    const { found } = searchLayout(pondIn(3, 1e-8, -0.6), { pipe: { radius: BARE_RADIUS }, held: 0.1 });
    expect(found!.count).toBeLessThan(pipesForBallast(3, 0.55, 0.1, 0.1)!);
  });

  test('in a bed one pipe does, sides too where it is turned up; in open ground a thicker bed spares a second pipe', () => {
    const inClay = searchLayout(pondIn(3, 1e-7, -0.1), {
      bed: { kind: 'pea gravel on concrete sand', turnedUp: true },
      pipe: { radius: PIPE / 2 },
      held: 0,
    });
    expect(inClay.tried).toHaveLength(1);
    expect(inClay.found).toMatchObject({ count: 1, thickness: 0.15 });
    expect(inClay.found!.sides).toBeLessThan(0);
    const wish = {
      bed: { kind: 'concrete sand', turnedUp: false },
      pipe: { radius: 0.04 },
      held: 0,
    } as const;
    const ground = pondIn(3, 1.2e-5, -0.1);
    const thin = searchLayout(ground, { ...wish, thicknesses: [0.15] });
    const thick = searchLayout(ground, { ...wish, thicknesses: [0.15, 0.3] });
    expect(thin.found!.count).toBeGreaterThan(1);
    expect(thick.found).toMatchObject({ count: 1, thickness: 0.3 });
  });

  test('where nothing holds, every layout tried is told', () => {
    const { found, tried } = searchLayout(pondIn(4, 1e-8, -0.05), {
      pipe: { radius: BARE_RADIUS },
      held: 0,
      most: 2,
    });
    expect(found).toBeUndefined();
    expect(tried.map((t) => t.count)).toEqual([1, 2]);
  });
});
