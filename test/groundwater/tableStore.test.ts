import { describe, expect, test } from 'vitest';
import { days, run, STILL } from './column.js';

/** Water above the base that stands so high, m. */
const held = (height: number) => height * STILL.porosity;
const recession = 0.012;

describe('against closed forms', () => {
  test('recession without rain: height = start × exp(−k t)', () => {
    const { depth } = run(days(200), { recession }, { held: held(1.5) });
    for (const d of [0, 9, 99, 199]) expect(2 - depth[d]).toBeCloseTo(1.5 * Math.exp(-0.012 * (d + 1)), 12);
  });

  test('steady recharge: a geometric series that tends to R/m × q/(1 − q), q = exp(−k)', () => {
    const [rain, q] = [0.0005, Math.exp(-0.012)];
    const { depth } = run(days(400, { rain }), { recession });
    for (const d of [0, 10, 399])
      expect(2 - depth[d]).toBeCloseTo(((rain / 0.03) * q * (1 - q ** (d + 1))) / (1 - q), 12);
  });

  test('a drain alone: the height above it shrinks by exp(−rate) a day, and nothing leaves below it', () => {
    const drained = { drainDepth: 0.8, drainRate: 0.2 };
    const { depth, spill } = run(days(60), drained, { held: held(1.8) });
    for (const d of [0, 9, 59]) expect(0.8 - depth[d]).toBeCloseTo(0.6 * Math.exp(-0.2 * (d + 1)), 12);
    expect(spill.every((v) => v === 0)).toBe(true);
    for (const d of run(days(9), drained, { held: held(1.1) }).depth) expect(d).toBeCloseTo(2 - 1.1, 14);
  });

  test('a drain below the base draws the table to the base, not below', () => {
    const { depth } = run(days(60), { drainDepth: 3, drainRate: 1 }, { held: held(1) });
    for (const d of [0, 9, 59]) expect(2 - depth[d]).toBeCloseTo(Math.exp(-(d + 1)), 12);
  });

  test('evaporation alone: the height above the extinction depth shrinks by 1 − u/(m E) a day', () => {
    // Roots that have drawn all they can leave the whole demand to the table.
    const [demand, start] = [0.003, 1.8];
    const { depth } = run(days(60, { demand }), {}, { held: held(start), deficit: STILL.rootCapacity });
    const factor = 1 - demand / (0.03 * 1.4);
    for (const d of [0, 20, 59]) expect(1.4 - depth[d]).toBeCloseTo((start - 0.6) * factor ** (d + 1), 12);
  });

  test('no more is drawn than stands above the base', () => {
    const dry = { held: held(0.5), deficit: STILL.rootCapacity };
    const { depth } = run(days(1, { demand: 0.05 }), { extinctionDepth: 5 }, dry);
    expect(depth[0]).toBeCloseTo(2, 14);
  });

  test('nothing is drawn from below the extinction depth', () => {
    const dry = { held: held(0.5), deficit: STILL.rootCapacity };
    for (const d of run(days(50, { demand: 0.006 }), {}, dry).depth) expect(d).toBe(1.5);
  });
});

test('recharge arrives through its delay as an exponential: 1 − exp(−t/delay) after t days', () => {
  const { depth } = run([{ rain: 0.01 }, ...days(30)], { delay: 5 });
  for (const d of [0, 4, 30])
    expect(2 - depth[d]).toBeCloseTo((0.01 / 0.03) * (1 - Math.exp(-(d + 1) / 5)), 12);
});

test('what exceeds the spill level runs off, to the last drop', () => {
  // 1.7 m above the base holds 51 mm; room for 6 mm is left below the spill level.
  const { depth, spill } = run([{ rain: 0.02 }], {}, { held: held(1.7) });
  expect(depth[0]).toBeCloseTo(0.1, 12);
  expect(spill[0]).toBeCloseTo(0.014, 12);
});
