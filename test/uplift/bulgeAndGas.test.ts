import { describe, expect, test } from 'vitest';
import { ruleOf } from '../../lib/contract/index.js';
import { BULGE_NEVER, BULGE_REMEDY, reasonText, ruleText } from '../../lib/text/index.js';
import {
  bulgeCause,
  GAS_FALL,
  type GasSigns,
  gasCheck,
  gasInflow,
  rimLoad,
  ventFlow,
} from '../../lib/uplift/index.js';

describe('what lifts a bulge', () => {
  test.each([
    [-0.05, 0.06, 'groundwater', 0.11],
    [-0.05, -0.05, 'leak', 0],
    [-0.05, -0.04, 'leak', 0.01],
    [-0.05, -0.3, 'gas', -0.25],
  ] as const)('pond %d, under the liner %d: %s', (pond, under, cause, difference) => {
    const bulge = bulgeCause(pond, under);
    expect(bulge.cause).toBe(cause);
    expect(bulge.difference).toBeCloseTo(difference, 12);
  });

  test('the difference is said in the units of the reader', () => {
    const { cause, difference } = bulgeCause(-0.05, 0.2);
    const told = [{ code: 'bulge', values: { cause, difference_m: difference } }] as const;
    expect(reasonText(told, 'metric')).toContain('stands 0.25 m above');
    expect(reasonText(told, 'us')).toContain('stands 9 3/4 in above');
  });

  test('a dry dip pipe means gas; no reading means nothing yet', () => {
    expect(bulgeCause(-0.05, 'dry').cause).toBe('gas');
    expect(bulgeCause(undefined, 0.1)).toMatchObject({ cause: 'unknown', difference: null });
    expect(bulgeCause(-0.1, undefined).cause).toBe('unknown');
  });

  test('every cause has a remedy; never cut, never empty', () => {
    expect(Object.keys(BULGE_REMEDY).sort()).toEqual(['gas', 'groundwater', 'leak', 'unknown']);
    expect(BULGE_NEVER.join(' ')).toMatch(/Never cut .* Never lower or empty/);
  });
});

describe('gas under a liner', () => {
  const signs: GasSigns = {
    organicTop: 0.9,
    smell: false,
    depth: 0.8,
    floor: -0.8,
    head: -1.6,
    floorFall: 0.005,
    area: 12,
    highSide: 4,
    ventLength: 2,
  };

  test('peat close below asks for a vent at the high point, and for a floor that falls to it', () => {
    const check = gasCheck(signs);
    expect(check).toMatchObject({ expected: true, falls: false, vent: { count: 1 } });
    expect(check.vent!.capacity).toBeGreaterThan(check.inflow);
    const vent = { count: 1, diameter_m: check.vent!.diameter, wet: check.wet, fall: GAS_FALL };
    expect(ruleText(ruleOf('vent-high-point/gas', vent), 'metric')).toMatch(
      /high point.*below the floor.*fall by 2 %/,
    );
    expect(gasCheck({ ...signs, floorFall: 0.02 }).falls).toBe(true);
  });

  test('no organic soil within a metre of the floor and no smell: none expected', () => {
    for (const change of [{ organicTop: undefined }, { organicTop: 2 }])
      expect(gasCheck({ ...signs, ...change })).toMatchObject({ expected: false, vent: null });
    expect(gasCheck({ ...signs, organicTop: undefined, smell: true }).expected).toBe(true);
  });

  test('vents stand 15 ft apart along a long side, and water above the floor has its own way out', () => {
    const check = gasCheck({ ...signs, highSide: 10, head: -0.3 });
    expect(check.vent!.count).toBe(3);
    expect(check.wet).toBe(true);
    const vent = { count: 3, diameter_m: 0.025, wet: true, fall: null };
    expect(ruleText(ruleOf('vent-high-point/gas', vent), 'metric')).toContain('no water drain replaces it');
  });

  test('a vent is so large that all gas gets out, or there are more of them', () => {
    const { vent, inflow } = gasCheck({ ...signs, area: 900, ventLength: 40 });
    expect(vent!.capacity * vent!.count).toBeGreaterThanOrEqual(inflow);
    expect(gasInflow.compute(10, 0, 0.1, 1e-6)).toBeCloseTo(1e-6, 18);
    expect(ventFlow.compute(0.02, 100, 1.8e-5, 2)).toBeCloseTo(
      16 * ventFlow.compute(0.01, 100, 1.8e-5, 2),
      12,
    );
  });
});

describe('a raised rim', () => {
  test('half a metre of water above ground', () => {
    expect(rimLoad(0.5)).toMatchObject({ pressure: 4905, push: 1226.25, moment: 204.375 });
    const rule = ruleOf('rim-load/edge', { above_m: 0.5, push_n_m: rimLoad(0.5).push });
    expect(ruleText(rule, 'metric')).toMatch(/0\.50 m .*1\.3 kN on every metre.*not checked here/);
  });

  test('water below ground loads nothing', () => {
    expect(rimLoad(-0.2)).toMatchObject({ pressure: 0, push: 0, moment: 0 });
  });
});
