import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runTableStore, type TableParameters } from '../../lib/groundwater/index.js';

const P: TableParameters = {
  porosity: 0.03,
  recession: 0.012,
  baseDepth: 2,
  spillDepth: 0.1,
  extinctionDepth: 1.4,
  delay: 1e-3,
  rootCapacity: 0.1,
  demandFactor: 1,
  crackShare: 0,
  drainDepth: 1,
  drainRate: 0,
  meltFactor: 0.003,
};

function run(recharge: number[], unmet: number[], change: Partial<TableParameters>, height: number) {
  const depth = new Float64Array(recharge.length);
  const spill = new Float64Array(recharge.length);
  const p = { ...P, ...change };
  const end = runTableStore(Float64Array.from(recharge), Float64Array.from(unmet), p, height, depth, spill);
  return { ...end, depth, spill, p };
}

const nothing = (n: number): number[] => new Array(n).fill(0);

describe('against closed forms', () => {
  test('recession without rain: height = start × exp(−k t)', () => {
    const { depth } = run(nothing(200), nothing(200), {}, 1.5);
    for (const d of [0, 9, 99, 199]) expect(2 - depth[d]).toBeCloseTo(1.5 * Math.exp(-0.012 * (d + 1)), 12);
  });

  test('steady recharge: a geometric series that tends to R/m × q/(1 − q), q = exp(−k)', () => {
    const [r, q] = [0.0005, Math.exp(-0.012)];
    const { depth } = run(new Array(400).fill(r), nothing(400), {}, 0);
    for (const d of [0, 10, 399])
      expect(2 - depth[d]).toBeCloseTo(((r / 0.03) * q * (1 - q ** (d + 1))) / (1 - q), 12);
  });

  test('a drain alone: the height above it shrinks by exp(−rate) a day, and nothing leaves below it', () => {
    const drained = { recession: 0, drainDepth: 0.8, drainRate: 0.2 };
    const { depth, spill } = run(nothing(60), nothing(60), drained, 1.8);
    for (const d of [0, 9, 59]) expect(0.8 - depth[d]).toBeCloseTo(0.6 * Math.exp(-0.2 * (d + 1)), 12);
    expect(spill.every((v) => v === 0)).toBe(true);
    expect(run(nothing(9), nothing(9), drained, 1.1).depth.every((d) => d === 2 - 1.1)).toBe(true);
  });

  test('evaporation alone: the height above the extinction depth shrinks by 1 − u/(m E) a day', () => {
    const [u, start] = [0.003, 1.8];
    const { depth } = run(nothing(60), new Array(60).fill(u), { recession: 0 }, start);
    const factor = 1 - u / (0.03 * 1.4);
    for (const d of [0, 20, 59]) expect(1.4 - depth[d]).toBeCloseTo((start - 0.6) * factor ** (d + 1), 12);
  });

  test('nothing is drawn from below the extinction depth', () => {
    const { depth } = run(nothing(50), new Array(50).fill(0.006), { recession: 0 }, 0.5);
    expect(depth.every((d) => d === 1.5)).toBe(true);
  });
});

test('recharge arrives through its delay as an exponential: 1 − exp(−t/delay) after t days', () => {
  const { depth } = run([0.01, ...nothing(30)], nothing(31), { recession: 0, delay: 5 }, 0);
  for (const d of [0, 4, 30])
    expect(2 - depth[d]).toBeCloseTo((0.01 / 0.03) * (1 - Math.exp(-(d + 1) / 5)), 12);
});

test('what exceeds the spill level runs off, to the last drop', () => {
  // 1.7 m above the base holds 51 mm; room for 6 mm is left below the spill level.
  const { depth, spill } = run([0.02], [0], { recession: 0 }, 1.7);
  expect(depth[0]).toBeCloseTo(0.1, 12);
  expect(spill[0]).toBeCloseTo(0.014, 12);
});

test('closes, and stays between spill level and base, whatever the weather', () => {
  const day = fc.record({
    r: fc.double({ min: 0, max: 0.1, noNaN: true }),
    u: fc.double({ min: 0, max: 0.01, noNaN: true }),
  });
  const parameters = fc.record({
    porosity: fc.double({ min: 0.005, max: 0.35, noNaN: true }),
    recession: fc.double({ min: 0, max: 0.5, noNaN: true }),
    baseDepth: fc.double({ min: 0.8, max: 6, noNaN: true }),
    spillDepth: fc.double({ min: 0, max: 0.4, noNaN: true }),
    extinctionDepth: fc.double({ min: 0.3, max: 3, noNaN: true }),
    delay: fc.double({ min: 0.05, max: 60, noNaN: true }),
    drainDepth: fc.double({ min: 0, max: 7, noNaN: true }),
    drainRate: fc.double({ min: 0, max: 9, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(day, { minLength: 1, maxLength: 300 }), parameters, (days, change) => {
      const { depth, closure, p } = run(
        days.map((d) => d.r),
        days.map((d) => d.u),
        change,
        0.3,
      );
      expect(Math.abs(closure)).toBeLessThan(1e-10);
      for (const d of depth) {
        expect(d).toBeGreaterThanOrEqual(p.spillDepth - 1e-12);
        expect(d).toBeLessThanOrEqual(p.baseDepth + 1e-12);
      }
    }),
    { seed: 1, numRuns: 100 },
  );
});

test('a balance that does not close is an error', () => {
  expect(() => run([Number.NaN], [0], {}, 0.3)).toThrow(/does not close/);
});
