import fc from 'fast-check';
import type { PondGround, SectionSoil } from '../../../lib/seepage/section/index.js';

const decade = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map((power) => 10 ** power);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A soil, from tight clay to coarse sand; the coarser, the sharper it drains. */
export const soil: fc.Arbitrary<SectionSoil> = fc
  .record({ across: decade(-9, -4), unequal: between(1, 10), drainable: between(0.01, 0.3) })
  .map(({ across, unequal, drainable }) => ({
    across,
    down: across / unequal,
    sorptive: Math.min(36, 10 ** ((Math.log10(across) + 9) * 0.35)),
    drainable,
    storage: 1e-5,
  }));
const gravel: fc.Arbitrary<SectionSoil> = decade(-4, -2).map((k) => ({
  across: k,
  down: k,
  sorptive: 36,
  drainable: 0.3,
  storage: 1e-6,
}));

/** A pond's ground of any make: layers, slope, ring, blanket, pipes, rain, water at the ends, liner tight or leaking. */
export const pondGround: fc.Arbitrary<PondGround> = fc
  .record({
    half: between(0.6, 2.5),
    depth: between(0.4, 1.5),
    batter: between(0, 1),
    slope: between(0, 0.08),
    layers: fc.array(fc.record({ thickness: between(0.15, 1.2), soil }), { minLength: 1, maxLength: 4 }),
    ring: fc.option(fc.record({ width: between(0.1, 0.4), soil: gravel }), { nil: undefined }),
    blanket: fc.array(fc.record({ thickness: between(0.05, 0.15), soil: gravel }), { maxLength: 2 }),
    pipes: fc.integer({ min: 0, max: 3 }),
    radius: between(0.01, 0.03),
    left: between(-2.5, 0.2),
    right: between(-2.5, 0.2),
    rain: fc.oneof(fc.constant(0), decade(-10, -6.5)),
    leakance: fc.option(decade(-10, -7), { nil: undefined }),
    full: between(0, 1),
  })
  .map(({ half, depth, batter, slope, layers, pipes, radius, left, right, full, ...rest }) => {
    const foot = half * (1 - 0.5 * batter);
    const end = half + 5;
    const below = Math.max(rest.blanket.reduce((sum, l) => sum + l.thickness, 0) / 2, 0.08);
    return {
      outline: [
        { x: -half, z: 0 },
        { x: -foot, z: -depth },
        { x: foot, z: -depth },
        { x: half, z: 0 },
      ],
      pond: -depth + full * (depth - 0.05),
      surface: [
        { x: -end, z: slope * 5 },
        { x: -half, z: 0 },
        { x: half, z: 0 },
        { x: end, z: -slope * 5 },
      ],
      layers,
      base: -depth - 2,
      pipes: Array.from({ length: pipes }, (_, p) => ({
        x: -foot + (2 * foot * (p + 0.5)) / pipes,
        z: -depth - below,
        radius,
      })),
      far: { left: slope * 5 + left, right: -slope * 5 + right },
      ...rest,
    };
  });

/** Coarse, so that thousands run. */
export const COARSE = { across: 64, up: 40, hole: 1 } as const;
