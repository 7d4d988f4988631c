import { describe, expect, test } from 'vitest';
import { BARE_RADIUS, pipesInClay } from '../../lib/drain/index.js';
import { headAt, pitMap, pondSection, solveFreeSurface, solveSaturated } from '../../lib/seepage/index.js';
import { headLeftUnderFloor, lonePipeDrawdown, lonePipeRelief } from './lonePipe.js';

/** Complete elliptic integrals of the first and second kind, by the arithmetic–geometric mean. */
function elliptic(k2: number): { K: number; E: number } {
  let [a, b, sum, power] = [1, Math.sqrt(1 - k2), k2 / 2, 1];
  while (Math.abs(a - b) > 1e-15) {
    const c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    sum += power * c * c;
    power *= 2;
  }
  const K = Math.PI / (2 * a);
  return { K, E: K * (1 - sum) };
}

describe('a pit mapped on a half plane', () => {
  test.each([
    [1, 0.01],
    [3, 0.8],
    [1, 1.5],
    [0.5, 6],
  ])(
    'upright sides, floor %d m wide, %d m deep: depth over half width by elliptic integrals',
    (width, depth) => {
      const k2 = pitMap({ width, depth, slope: 0 }).onFloor(width / 2) ** 2;
      const [floor, side] = [elliptic(k2), elliptic(1 - k2)];
      // ∫√((k² − t²)/(1 − t²)) from 0 to k, and √((t² − k²)/(1 − t²)) from k to 1.
      const half = floor.E - (1 - k2) * floor.K;
      const deep = side.E - k2 * side.K;
      expect(deep / half / ((2 * depth) / width)).toBeCloseTo(1, 5);
    },
  );

  test.each([
    [0, 1.2],
    [0.5, 0.4],
    [2, 1],
  ])('sides %d to 1, %d m deep: a point found goes back to where it was', (slope, depth) => {
    const map = pitMap({ width: 2, depth, slope });
    for (const [x, y] of [
      [0, 0.15],
      [0.9, 0.15],
      [-0.6, 0.4],
    ]) {
      const w = map.below({ x, y });
      const steps = 4000;
      let [re, im] = [0, 0];
      for (let i = 0; i < steps; i++) {
        const at = map.slopeAt({ x: (w.x * (i + 0.5)) / steps, y: (w.y * (i + 0.5)) / steps });
        re += (at.x * w.x - at.y * w.y) / steps;
        im += (at.x * w.y + at.y * w.x) / steps;
      }
      expect(re).toBeCloseTo(x, 5);
      expect(im).toBeCloseTo(y, 5);
    }
  });

  test('a floor level with the ground is the closed form of one pipe', () => {
    const left = headLeftUnderFloor(2, [{ x: 0, depth: 0.5, radius: 0.01 }], 1);
    const flow = 1 / lonePipeDrawdown(1, 0.5, 100);
    for (const x of [0, 0.3, 0.8]) expect(left(x)).toBeCloseTo(1 - lonePipeRelief(flow, 0.5, x), 12);
    const hardly = headLeftUnderFloor(2, [{ x: 0, depth: 0.5, radius: 0.01 }], 1, { depth: 1e-6, slope: 0 });
    for (const x of [0, 0.3, 0.8]) expect(hardly(x)).toBeCloseTo(left(x), 4);
  });
});

const CLAY = { across: 1e-8, down: 1e-8, sorptive: 1, drainable: 0.05, storage: 0 };

/** The pond of the closed form as a section: water outside at 0, tight ground so deep below the floor. */
function sectionOf(width: number, depth: number, slope: number, count: number, radius: number, deep: number) {
  const [half, far] = [width / 2, 8 * (width + depth)];
  const top = half + slope * depth;
  return pondSection({
    outline: [
      { x: -top, z: 0 },
      { x: -half, z: -depth },
      { x: half, z: -depth },
      { x: top, z: 0 },
    ],
    pond: -depth,
    surface: [
      { x: -top - far, z: 0 },
      { x: top + far, z: 0 },
    ],
    layers: [{ thickness: deep, soil: CLAY }],
    base: -depth - deep,
    pipes: Array.from({ length: count }, (_, i) => ({
      x: (width * (i + 0.5)) / count - half,
      z: -depth - 0.15,
      radius,
    })),
    far: { left: 0, right: 0 },
    rain: 0,
  });
}

/** Head left at middle and edge, the ground flooded to the surface. */
function flooded(width: number, depth: number, slope: number, count: number, radius: number, deep: number) {
  const { section } = sectionOf(width, depth, slope, count, radius, deep);
  const contacts = section.contacts.map((c) =>
    c.name.startsWith('pipe')
      ? { ...c, head: -depth - 0.15 }
      : c.name === 'surface'
        ? { ...c, head: 0, outOnly: false }
        : c,
  );
  const full = { ...section, contacts };
  const { head } = solveSaturated(full);
  return [0, 0.45 * width].map((x) => headAt(full, head, x, -depth - 1e-6) + depth + 0.15);
}

const RANGE = [
  [1, 1.35, 0, 3],
  [1, 0.4, 0, 1],
  [2, 1.2, 0.5, 1],
  [2, 0.5, 1, 2],
  [3, 1, 0, 3],
  [4, 0.85, 0.8, 5],
  [4, 2, 2, 2],
];

describe.each(RANGE)(
  'floor %d m wide, %d m below the water, sides %d to 1, %d pipes',
  (width, depth, slope, count) => {
    const head = depth + 0.15;
    const closed = (radius: number) => {
      const { middle, edge } = pipesInClay(width, head, count, slope, 0.15, radius);
      return [middle, edge];
    };

    test.each([
      ['bare', BARE_RADIUS, 0.01],
      ['with a sock', 0.059, 0.025],
    ])('%s: the closed form is the numerical section', (_, radius, tolerance) => {
      const numerical = flooded(width, depth, slope, count, radius, 8 * (width + depth));
      closed(radius).forEach((left, i) => {
        expect(Math.abs(left - numerical[i]) / head).toBeLessThan(tolerance);
      });
    });

    test('over tight ground near the floor, and with the water drawn down by the pipes, less head is left', () => {
      const shallow = flooded(width, depth, slope, count, BARE_RADIUS, 0.5 * width);
      const pond = sectionOf(width, depth, slope, count, BARE_RADIUS, 4 * (width + depth));
      const { head: drawn } = solveFreeSurface(pond.section);
      closed(BARE_RADIUS).forEach((left, i) => {
        const free = headAt(pond.section, drawn, i === 0 ? 0 : 0.45 * width, -depth - 1e-6) + depth + 0.15;
        expect(shallow[i]).toBeLessThan(left + 0.01 * head);
        expect(free).toBeLessThan(left + 0.01 * head);
      });
    });
  },
);

test('a deep narrow pond: the head left at the edge by three pipes is half of what a floor on the ground would have', () => {
  const { edge } = pipesInClay(1, 1.5, 3);
  expect(edge / 1.5).toBeCloseTo(0.285, 3);
  const flat = headLeftUnderFloor(
    1,
    [-1 / 3, 0, 1 / 3].map((x) => ({ x, depth: 0.15, radius: BARE_RADIUS })),
    1.5,
  );
  expect(flat(0.45) / 1.5).toBeCloseTo(0.607, 3);
});
