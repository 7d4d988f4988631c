import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ruleOf } from '../../lib/contract/index.js';
import { ruleText } from '../../lib/text/index.js';
import {
  type ClaySide,
  infiniteSlopeFactor,
  SIDE_FACTOR_WANTED,
  SOFTENED_FRICTION,
  secondsSidesAllow,
  sidePlan,
  softened,
  standingHeight,
  steepestLeftEmpty,
  steepestSide,
  workingSlope,
} from '../../lib/uplift/index.js';
import { between, RUNS } from './geometry.js';

const clay = (kPa: number, edgingLoad = 0): ClaySide => ({
  strength: 1000 * kPa,
  unitWeight: 18500,
  edgingLoad,
});
const sides = fc.record({
  strength: between(5000, 150000),
  unitWeight: between(17000, 21000),
  edgingLoad: between(0, 10000),
});

describe('the steepest side', () => {
  test('stands with the factor, and nothing steeper does', () => {
    fc.assert(
      fc.property(sides, between(0.2, 2), (side, height) => {
        const slope = steepestSide(side, height);
        const stands = (s: number) => standingHeight(side.strength, side.unitWeight, s, side.edgingLoad);
        const wanted = SIDE_FACTOR_WANTED * height;
        expect(stands(slope ?? 5) >= wanted).toBe(slope !== null);
        if (slope !== null && slope > 1e-6) expect(stands(slope - 1e-6)).toBeLessThan(wanted);
      }),
      RUNS,
    );
  });

  test('is upright in stiff clay at a garden depth, none in very soft clay', () => {
    expect(steepestSide(clay(70), 1)).toBe(0);
    expect(steepestSide(clay(6), 1.5)).toBeNull();
  });

  test('left empty it must lie so flat that seepage leaves the factor', () => {
    const slope = steepestLeftEmpty(clay(30));
    expect(
      infiniteSlopeFactor.compute(0, 18500, 0.5, 1, SOFTENED_FRICTION, Math.atan(1 / slope)),
    ).toBeCloseTo(1.5, 12);
  });
});

describe('the plan for a depth', () => {
  test('the slope to dig holds after softening too; edging and depth never make it steeper', () => {
    fc.assert(
      fc.property(sides, between(0.2, 2), between(0, 0.5), (side, depth, more) => {
        const plan = sidePlan(side, depth);
        if (plan.slope === null) return;
        const soft = softened(side);
        expect(
          standingHeight(soft.strength, soft.unitWeight, plan.slope, soft.edgingLoad),
        ).toBeGreaterThanOrEqual(1.5 * depth - 1e-9);
        const deeper = sidePlan(side, depth + more).slope ?? Number.POSITIVE_INFINITY;
        const loaded =
          sidePlan({ ...side, edgingLoad: side.edgingLoad + 4000 * more }, depth).slope ??
          Number.POSITIVE_INFINITY;
        expect(deeper).toBeGreaterThanOrEqual(plan.slope);
        expect(loaded).toBeGreaterThanOrEqual(plan.slope);
      }),
      RUNS,
    );
  });

  test('steps: every riser stands, and every run of risers lies back as far as its height asks', () => {
    fc.assert(
      fc.property(sides, between(0.2, 2), (side, depth) => {
        const { steps } = sidePlan(side, depth);
        if (!steps) return;
        const soft = softened(side);
        expect(steps.count * steps.riser).toBeCloseTo(depth, 9);
        for (let k = 1; k <= steps.count; k++) {
          const lean = ((k - 1) * steps.shelf) / (k * steps.riser);
          const stands = standingHeight(soft.strength, soft.unitWeight, lean, soft.edgingLoad);
          expect(stands).toBeGreaterThanOrEqual(1.5 * k * steps.riser - 1e-6);
        }
      }),
      RUNS,
    );
  });

  test('stiff clay needs no shelf; clay too soft for the depth has no plan', () => {
    expect(sidePlan(clay(70), 0.9)).toMatchObject({ slope: 0, steps: { count: 1, shelf: 0, run: 0 } });
    expect(sidePlan(clay(6), 1.5)).toMatchObject({ digging: null, slope: null, steps: null });
    const soft = sidePlan(clay(14), 0.9);
    expect(soft.digging).toBe(0);
    expect(soft.slope).toBeGreaterThan(0);
    expect(soft.steps!.count).toBeGreaterThan(1);
  });
});

describe('how long the sides allow an empty pond', () => {
  test('not at all in clay too soft, days where it softens, for good where they lie flat', () => {
    expect(secondsSidesAllow(clay(6), 1.2, 0.5)).toBe(0);
    expect(secondsSidesAllow(clay(40), 1, 0.5) / 86400).toBeGreaterThan(2);
    expect(secondsSidesAllow(clay(40), 1, 0.5) / 86400).toBeLessThan(14);
    expect(secondsSidesAllow(clay(40), 1, 8)).toBe(Number.POSITIVE_INFINITY);
  });

  test('the less of a side stands in water, the longer, and without end where none does', () => {
    const at = (share: number) => secondsSidesAllow(clay(40), 1, 0.5, share);
    expect(at(0.5)).toBeCloseTo(2 * at(1), 6);
    expect(at(1e-6)).toBeGreaterThan(1e5 * at(1));
    expect(at(0)).toBe(Number.POSITIVE_INFINITY);
    expect(secondsSidesAllow(clay(6), 1.2, 0.5, 0)).toBe(0);
  });
});

describe('the working slope', () => {
  test.each([
    ['strong, whole, dry', 80000, false, false, 'A', 0.75],
    ['strong but cracked', 80000, true, false, 'B', 1],
    ['firm', 35000, false, false, 'B', 1],
    ['soft', 20000, false, false, 'C', 1.5],
    ['strong but seeping', 80000, false, true, 'C', 1.5],
  ] as const)('%s', (_, strength, fissured, wet, type, slope) => {
    const sides = [{ texture: 'clay', structure: fissured ? 'cracked' : 'massive' }] as const;
    expect(workingSlope({ strength, sides, wet }, 1)).toMatchObject({
      type,
      slope,
      protect: false,
      engineer: false,
    });
  });

  test('at 5 ft protection is due, above 20 ft an engineer; the caution defers to the law of the country', () => {
    const sides = [{ texture: 'clay', structure: 'cracked' }] as const;
    const at = (depth: number) => workingSlope({ strength: 60000, sides, wet: false }, depth);
    expect([at(1.499).protect, at(1.5).protect, at(6.2).engineer]).toEqual([false, true, true]);
    const { type, slope } = at(1);
    for (const due of ['less-deep', 'protect', 'engineer'] as const) {
      const rule = ruleOf('working-slope/class', { type, slope, due, height_m: 1.8, deep_m: 1.2 });
      for (const [country, law] of [
        [
          'us',
          /type B in the United States rule for employers \(29 CFR 1926 Subpart P\).*Your local rules decide\.$/,
        ],
        ['gb', /Construction \(Design and Management\) Regulations 2015 decides/],
        ['ie', /Safety, Health and Welfare at Work \(Construction\) Regulations 2013 decide/],
        ['en', /The law of your country decides: look it up before you dig\.$/],
      ] as const) {
        const told = ruleText(rule, 'metric', country);
        expect(told).toMatch(law);
        expect(told).toMatch(
          due === 'less-deep' ? /side uphill is 1\.80 m high\. / : /1\.80 m high: that is due there/,
        );
        expect(told).toMatch(
          /laid back 1 to 1 or flatter, or shored|lay the sides back 1 to 1 or flatter, or shore them/,
        );
        expect(/United States|1926|registered/.test(told)).toBe(country === 'us');
        expect(told.includes('A shallower hole can cave in too')).toBe(due === 'less-deep');
        expect(/engineer has to design it/.test(told)).toBe(due === 'engineer');
      }
      expect(ruleText(rule, 'us')).toBe(ruleText(rule, 'us', 'us'));
      expect(ruleText(rule, 'metric')).toBe(ruleText(rule, 'metric', 'en'));
    }
  });
});
