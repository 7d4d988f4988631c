import { expect, test } from 'vitest';
import {
  fluxOf,
  linerUplift,
  type PondGround,
  pondSection,
  solveFreeSurface,
  undersidesOf,
} from '../../../lib/seepage/section/index.js';

const soil = (across: number, down = across) => ({
  across,
  down,
  sorptive: 4,
  drainable: 0.05,
  storage: 1e-5,
});
const COARSE = { across: 80, up: 50, hole: 2 } as const;

/** A shallow pond in level ground, the water 0.2 m below it on both sides. */
const GROUND: PondGround = {
  outline: [
    { x: -1, z: 0 },
    { x: -1, z: -0.6 },
    { x: 1, z: -0.6 },
    { x: 1, z: 0 },
  ],
  pond: -0.6,
  surface: [
    { x: -6, z: 0 },
    { x: 6, z: 0 },
  ],
  layers: [{ thickness: 1, soil: soil(1e-6, 1e-7) }],
  base: -4,
  pipes: [],
  far: { left: -0.2, right: -0.2 },
  rain: 0,
};

test('water that slopes moves with the fall times the conductivity across, and not at all in the pond', () => {
  const sloping = { ...GROUND, far: { left: -0.1, right: -0.3 }, base: -40 };
  const { section } = pondSection(sloping, COARSE);
  const flux = fluxOf(section, solveFreeSurface(section).head);
  // Far below the pond as if there were none: 0.2 m over 12 m.
  const deep = flux({ x: 0, z: -30 })!;
  expect(deep.x / ((1e-6 * 0.2) / 12)).toBeCloseTo(1, 2);
  expect(Math.abs(deep.z / deep.x)).toBeLessThan(0.01);
  expect(flux({ x: 0, z: -0.3 })).toBeUndefined();
  expect(flux({ x: -3, z: -0.01 })).toBeUndefined();
});

test('to a pipe the water moves from both sides and from below', () => {
  const { section } = pondSection({ ...GROUND, pipes: [{ x: 0, z: -0.9, radius: 0.03 }] }, COARSE);
  const flux = fluxOf(section, solveFreeSurface(section).head);
  expect(flux({ x: -0.6, z: -0.9 })!.x).toBeGreaterThan(0);
  expect(flux({ x: 0.6, z: -0.9 })!.x).toBeLessThan(0);
  expect(flux({ x: 0, z: -1.5 })!.z).toBeGreaterThan(0);
});

test('a bed in two layers lies under the floor as it is laid, the upper one first', () => {
  const bed = [
    { thickness: 0.1, soil: soil(1e-2) },
    { thickness: 0.05, soil: soil(3e-4) },
  ];
  const ground = { ...GROUND, blanket: bed };
  expect(undersidesOf(ground)).toEqual([-0.7, -0.75].map((z) => expect.closeTo(z, 12)));
  const { section } = pondSection(ground, COARSE);
  const nx = section.grid.x.length - 1;
  const heights = [1, 2].map((s) => {
    let [low, high] = [0, Number.NEGATIVE_INFINITY];
    section.soilOf.forEach((of, k) => {
      if (of !== s) return;
      const j = Math.floor(k / nx);
      low = Math.min(low, section.grid.z[j]);
      high = Math.max(high, section.grid.z[j + 1]);
    });
    return [low, high];
  });
  expect(heights).toEqual([
    [expect.closeTo(-0.7, 9), expect.closeTo(-0.6, 9)],
    [expect.closeTo(-0.75, 9), expect.closeTo(-0.7, 9)],
  ]);
});

test('the floor stands in the grid however fine, and a finer grid says the same', () => {
  const uplift = [COARSE, { across: 160, up: 100, hole: 2 } as const].map((fineness) => {
    const pond = pondSection({ ...GROUND, pipes: [{ x: 0, z: -0.9, radius: 0.03 }] }, fineness);
    expect([...pond.section.grid.z].some((z) => Math.abs(z + 0.6) < 1e-9)).toBe(true);
    return Math.max(...linerUplift(pond, solveFreeSurface(pond.section)).map((p) => p.uplift));
  });
  expect(Math.abs(uplift[1] - uplift[0])).toBeLessThan(0.01);
});

test('what cannot be cut is refused in words', () => {
  const refused = (change: Partial<PondGround>) => () => pondSection({ ...GROUND, ...change }, COARSE);
  expect(refused({ pipes: [{ x: 0, z: -0.62, radius: 0.03 }] })).toThrow(
    /a pipe at x 0 m lies 0\.020 m under the floor; .* needs more than 0\.\d+ m to its middle\. Lay it deeper\./,
  );
  expect(refused({ pipes: [{ x: 0, z: -0.3, radius: 0.03 }] })).toThrow(
    'lies in the pond, not in the ground',
  );
  expect(refused({ blanket: [{ thickness: 0, soil: soil(1e-2) }] })).toThrow(
    'blanket, layer 1 from above: thickness 0 m is outside 0 m upwards',
  );
  expect(refused({ base: -0.5 })).toThrow('base -0.5 m is outside the ground below the pond, under -0.6 m');
});
