import { describe, expect, test } from 'vitest';
import { loweringOf, reachChecks } from '../../lib/drain/index.js';

const MM_A_DAY = 0.001 / 86400;
const reach = (k: number, below: number, head = 1, recharge = MM_A_DAY) =>
  Object.fromEntries(
    reachChecks({ permeability: k, below, porosity: 0.05 }, head, recharge, 0.05).map((c) => [c.by, c.reach]),
  );

describe('reach of a drain by the spacing formulas', () => {
  test('the steady ones agree within a fifth where all of them hold, and each says what it holds for', () => {
    const r = reach(1e-5, 2);
    for (const by of ['Kirkham', 'Ernst']) {
      expect(r[by] / r.Hooghoudt, by).toBeGreaterThan(0.8);
      expect(r[by] / r.Hooghoudt, by).toBeLessThan(1.2);
    }
    for (const { scope } of reachChecks({ permeability: 1e-5, below: 2, porosity: 0.05 }, 1, MM_A_DAY, 0.05))
      expect(scope.length).toBeGreaterThan(20);
  });

  test('Donnan, on the tight layer, by hand: half of √(4 K m²/q)', () => {
    expect(reach(1e-7, 1).Donnan).toBeCloseTo(Math.sqrt((4 * 1e-7) / MM_A_DAY) / 2, 9);
  });

  test('ground below the drain and faster ground reach farther; more recharge less far', () => {
    for (const by of ['Hooghoudt', 'Kirkham', 'Ernst']) {
      expect(reach(1e-6, 3)[by], by).toBeGreaterThan(reach(1e-6, 1)[by]);
      expect(reach(1e-5, 1)[by], by).toBeGreaterThan(reach(1e-6, 1)[by]);
      expect(reach(1e-6, 1, 1, 3 * MM_A_DAY)[by], by).toBeLessThan(reach(1e-6, 1)[by]);
    }
  });

  test('is a number in any ground, from tight clay to gravel', () => {
    for (let e = -10; e <= -3; e++)
      for (const head of [0.05, 0.5, 2])
        for (const [by, r] of Object.entries(reach(10 ** e, 1, head))) {
          expect(Number.isFinite(r), `${by} ${e} ${head}`).toBe(true);
          expect(r, `${by} ${e} ${head}`).toBeGreaterThan(0);
        }
  });
});

describe('ground below the drain', () => {
  const depths = [0.05, 0.1, 0.3, 0.5, 1, 2, 3, 5, 7, 10, 20];

  test.each([1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4])('more of it never makes a reach shorter, K %d m/s', (k) => {
    for (const head of [0.1, 0.5, 1.5])
      for (const by of ['Hooghoudt', 'Kirkham', 'Ernst']) {
        const reaches = depths.map((below) => reach(k, below, head)[by]);
        for (let i = 1; i < reaches.length; i++)
          expect(reaches[i], `${by} ${head} ${depths[i]}`).toBeGreaterThanOrEqual(
            reaches[i - 1] * (1 - 1e-9),
          );
      }
  });

  test('Ernst holds its converging flow to a quarter of the spacing: within a tenth of Hooghoudt at 5 m', () => {
    const r = (below: number) => reach(1e-7, below, 0.5);
    expect([0.5, 2, 5, 10].map((below) => Number(r(below).Ernst.toFixed(2)))).toEqual([1.9, 2.21, 2.47, 2.6]);
    expect(r(5).Ernst / r(5).Hooghoudt).toBeGreaterThan(0.9);
  });
});

describe('the lowering next door', () => {
  const at = (distance: number, below: number, s = 1, k = 1e-6) =>
    loweringOf(
      { name: '', distance },
      s,
      { permeability: { low: k / 3, likely: k, high: 3 * k }, below, radius: 2 },
      false,
    ).lowered;

  test('by hand: K 1e-6, 1 m, 1 mm a day, 3 m of the same ground below a pond of 2 m radius', () => {
    // q/K 0.01157; R² ln(R/2) − (R² − 4)/2 = 1 × 7/0.01157 = 604.8 where R = 18.26 m with 2.815 m of depth: 3 m is more
    // than the disc brings: 4/π ln(18.26/2) = 2.815, 1 × 6.63/0.01157 = 573.
    const R = 18.26;
    const d = (4 / Math.PI) * Math.log(R / 2);
    expect(0.0115741 * (R * R * Math.log(R / 2) - (R * R - 4) / 2)).toBeCloseTo(1 + 2 * d, 1);
    const y = Math.sqrt(d * d + 0.0115741 * (R * R * Math.log(7 / 2) - (49 - 4) / 2)) - d;
    expect(at(5, 3).likely).toBeCloseTo(1 - y, 2);
    expect(at(16.1, 3).likely).toBeGreaterThan(0);
    expect(at(16.5, 3).likely).toBe(0);
  });

  test('where rain is little to the ground, higher than the drawdown of a disc in ground without end and without rain', () => {
    for (const k of [1e-6, 1e-5])
      for (const distance of [2, 3, 5])
        expect(at(distance, Number.POSITIVE_INFINITY, 1, k).likely).toBeGreaterThan(
          (2 / Math.PI) * Math.asin(2 / (2 + distance)),
        );
  });

  test('never less with more ground below, nearer, deeper drained or in faster ground; all of it at the drain', () => {
    for (const k of [1e-9, 1e-7, 1e-5])
      for (const s of [0.05, 0.5, 2])
        for (const distance of [0, 0.5, 2, 8, 30]) {
          const here = at(distance, 1, s, k);
          expect(here.low).toBeLessThanOrEqual(here.likely + 1e-9);
          expect(here.likely).toBeLessThanOrEqual(here.high + 1e-9);
          if (distance === 0) expect(here.likely).toBeCloseTo(s, 9);
          for (const more of [
            at(distance, 3, s, k),
            at(distance, Number.POSITIVE_INFINITY, s, k),
            at(distance / 2, 1, s, k),
            at(distance, 1, 1.5 * s, k),
            at(distance, 1, s, 2 * k),
          ])
            expect(more.high).toBeGreaterThanOrEqual(here.high - 1e-9);
        }
    expect(at(5, 1, 0).high).toBe(0);
  });
});
