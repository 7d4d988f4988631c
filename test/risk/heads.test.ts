import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { judge } from '../../lib/decision/index.js';
import { type TubGeometry, tubBottom, tubHead } from '../../lib/groundwater/index.js';
import { highestOfThree, NOTHING, secondsToLift } from '../../lib/heads/index.js';
import { chanceOf, chancesOf, verdictAt } from '../../lib/reliability/index.js';
import { resultOf } from '../../lib/report/index.js';
import { replicateChance } from '../../lib/sampling/index.js';
import { REPLICATES, siteModel } from '../../lib/site/index.js';
import { briefDemo, demoFiles, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';

const files = briefDemo('loam-terrace');
const wished = (depth: number) =>
  siteModel(surveyOf(withItem(files, 'pond.csv', 'depth', `${depth}`, 'm')), { samples: 64 });

describe('a dry ring has no head', () => {
  // The water stands 2.5 m down all year: whatever is dug in the loam, nothing lifts it.
  test.each([0.6, 1, 1.4])('over deep water no depth lifts, the wish being %s m', (wish) => {
    const basis = basisOf(wished(wish));
    for (const depth of [0.3, wish - 0.05, wish, wish + 0.05, 1.5]) {
      const { modes } = chanceOf(basis, NOTHING, depth);
      for (const mode of ['lift-full', 'lift-drawn-down', 'lift-emptied'] as const)
        expect(modes[mode], `${mode} at ${depth} m`).toBeLessThan(0.005);
    }
  });

  test('a store has a head above a millimetre only, and it is its level', () => {
    const g: TubGeometry = {
      floor: -1,
      spill: 0,
      ringArea: 2,
      ringPorosity: 0.1,
      ringHold: 0,
      perimeter: 12,
      bedArea: 4,
      bedThickness: 0.05,
      bedPorosity: 0.3,
    };
    expect(tubHead(g, tubBottom(g))).toBe(Number.NEGATIVE_INFINITY);
    expect(tubHead(g, tubBottom(g) + 9e-4)).toBe(Number.NEGATIVE_INFINITY);
    expect(tubHead(g, -0.4)).toBe(-0.4);
  });
});

test('an emptied liner over clay whose water stands below it lifts by what the ring holds, or never', () => {
  const site = wished(1);
  fc.assert(
    fc.property(fc.double({ min: -0.99, max: 0, noNaN: true }), (ring) => {
      const seconds = secondsToLift(site, 1, -1, -1.2, ring, 1e-5);
      expect([0, Number.POSITIVE_INFINITY]).toContain(seconds);
    }),
  );
});

describe('the water that decides is named', () => {
  test('the highest of three, whatever their order', () => {
    const level = fc.double({ min: -2, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(level, level, level, (low, uphill, ring) => {
        const waters = [ring, uphill, low];
        expect(waters[highestOfThree(low, uphill, ring)]).toBeGreaterThanOrEqual(Math.max(...waters) - 2e-3);
      }),
    );
  });

  test.each(['clay-hollow', 'clay-slope', 'loam-terrace'])('%s', (name) => {
    const site = siteModel(surveyOf(briefDemo(name)), { samples: 64 });
    const { options } = resultOf(judge(site));
    for (const { full, lowest_safe_level_water, option } of options) {
      const named = [...(full ? [full.where] : []), ...(lowest_safe_level_water ?? [])];
      if (site.places.highRim === 0) expect(named).not.toContain('uphill wall');
      if (!site.tub) expect(named).not.toContain('ring');
      if (!option.startsWith('drain-to'))
        for (const water of named) expect(water).not.toMatch(/receiver|drain/);
    }
  });
});

test('a chance never errs by less than its samples alone would have it', () => {
  const basis = basisOf(siteModel(surveyOf(demoFiles('clay-hollow')), { samples: 64 }));
  for (const depth of [0.3, 0.6, 1]) {
    const { chance } = verdictAt(basis, NOTHING, depth);
    const bySample = replicateChance(chance.shares, REPLICATES);
    expect(chance.error.standardError).toBeGreaterThan(bySample.standardError);
    expect(chance.error.halfWidth95).toBeGreaterThan(bySample.halfWidth95);
  }
});

test.each(sweep([1, 2, 3, 6], 1))(
  '%i years of weather leave an error, and one that a share can have',
  (years) => {
    const files = briefDemo('clay-slope');
    const [header, ...days] = files['weather.csv'].trimEnd().split('\n');
    const short = [header, ...days.slice(-Math.ceil(365.25 * years + 180))].join('\n');
    const site = siteModel(surveyOf({ ...files, 'weather.csv': short }), { samples: 16 });
    expect(site.record!.years).toBe(years);
    const basis = basisOf(site);
    for (const chance of chancesOf(basis, NOTHING, [0.1, 0.2, 0.3, 0.5, 1])) {
      for (const { standardError, halfWidth95 } of [chance.error, chance.drawnError]) {
        expect(standardError).toBeGreaterThan(0);
        // What lies between 0 and 1 cannot scatter wider than by half of it.
        expect(standardError).toBeLessThanOrEqual(0.5);
        expect(halfWidth95).toBeLessThanOrEqual(1);
        expect(halfWidth95).toBeGreaterThan(standardError);
      }
    }
  },
);
