import { describe, expect, test } from 'vitest';
import { reachChecks } from '../../lib/drain/index.js';

const MM_A_DAY = 0.001 / 86400;
const reach = (k: number, below: number, head = 1, recharge = MM_A_DAY) =>
  Object.fromEntries(
    reachChecks({ k, below, porosity: 0.05 }, head, recharge, 0.05).map((c) => [c.by, c.reach]),
  );

describe('reach of a drain by the spacing formulas', () => {
  test('the steady ones agree within a fifth where all of them hold, and each says what it holds for', () => {
    const r = reach(1e-5, 2);
    for (const by of ['Kirkham', 'Ernst']) {
      expect(r[by] / r.Hooghoudt, by).toBeGreaterThan(0.8);
      expect(r[by] / r.Hooghoudt, by).toBeLessThan(1.2);
    }
    for (const { scope } of reachChecks({ k: 1e-5, below: 2, porosity: 0.05 }, 1, MM_A_DAY, 0.05))
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
