import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { loweringYear, possibleOption } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { optionsOf } from '../../lib/options/index.js';
import { carryingOf, chanceOf, chancesOf, verdictAt } from '../../lib/reliability/index.js';

import { recommend, reportOf, resultOf } from '../../lib/report/index.js';

import { siteModel } from '../../lib/site/index.js';
import { orderText } from '../../lib/text/index.js';
import { drainFor } from '../../lib/works/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const hollow = briefDemo('clay-hollow');
const slope = briefDemo('clay-slope');
const site = (files: Files) => siteModel(surveyOf(files), { samples: 32 });
/** Ground that lets water through, m/s, its water near the grass; a pump that may be had. */
const inGround = (ksat: string): Files => {
  const files = edited(baseSurvey({ depth: 0.1 }), 'site.csv', (t) =>
    t.replace(/^(mains_power|pump_acceptable|discharge_allowed),no/gm, '$1,yes'),
  );
  return edited(
    {
      ...withItem(files, 'pond.csv', 'emptied_in', '3'),
      'levels.csv': `${files['levels.csv']}gully,discharge,12,10.2\n`,
    },
    'pits.csv',
    (t) => t.replace('clay,blocky,,stiff,1e-7,60', `gravel,,,,${ksat},`),
  );
};
const sumpOf = (files: Files) => {
  const basis = basisOf(site(files));
  const { measures } = optionsOf(basis).find(({ name }) => name === 'drain-to-sump')!;
  return { basis, measures: measures! };
};

describe('capacity', () => {
  test('a pump that moves less than what comes is refused, with the link and both numbers', () => {
    const judged = judge(site(inGround('2e-4')));
    const option = resultOf(judged).options.find((o) => o.option === 'drain-to-sump')!;
    expect(option.possible).toBe(false);
    expect(option.why_not).toMatch(
      /^dug .* deep the \S.* takes [\d,.]+ m³\/day, and [\d,.]+ m³\/day would come$/,
    );
    const { option: advised, also } = recommend(judged);
    expect([advised, ...also]).not.toContain('drain-to-sump');
  });

  test('no depth that is called safe has a link below 1, and more water never makes a depth safe', () => {
    let refused = 0;
    const deepest = ['1e-8', '1e-6', '1.1e-5', '1.1e-4'].map((ksat) => {
      const { basis, measures } = sumpOf(inGround(ksat));
      return [0.4, 0.8, 1.2].filter((depth) => {
        const { reserve } = drainFor(basis, measures, depth)!;
        const carried = ['pipe', 'pipe entry', 'bed', 'pump', 'envelope', 'pipe openings'].every(
          (link) => reserve[link] >= 1,
        );
        const { safe, kept, chance } = verdictAt(basis, measures, depth);
        expect(chance.lacks === undefined).toBe(carried);
        if (!carried) {
          refused++;
          expect(safe || kept).toBe(false);
        }
        return chance.lacks === undefined;
      }).length;
    });
    expect(refused).toBeGreaterThan(0);
    expect(deepest).toEqual([...deepest].sort((a, b) => b - a));
  });

  test('the drain takes the median of what comes, but not what more open ground brings: that enters the chance', () => {
    const { basis, measures } = sumpOf(inGround('2e-5'));
    const [carrying] = carryingOf(basis, measures, [0.9]);
    const share = carrying.overwhelmed.reduce((a, b) => a + b, 0) / basis.draws.samples;
    expect(share).toBeGreaterThan(0);
    const undrained = chanceOf(basis, { ...measures, drain: undefined }, 0.9);
    const drained = chanceOf(basis, measures, 0.9);
    // Of the chance only what the samples that are carried lose to neglect is told as upkeep.
    const neglect = basis.draws.blocked.reduce((a, b) => a + b, 0) / basis.draws.samples;
    expect(drained.upkeep).toBeGreaterThan(0);
    expect(drained.upkeep).toBeLessThan(3 * neglect);
    expect(drained.perYear).toBeGreaterThan(drained.upkeep + 0.5 * share * undrained.perYear);
    carrying.overwhelmed.forEach((over, s) => {
      // Overwhelmed: as without a drain.
      if (over === 1) expect(drained.shares[s]).toBeCloseTo(undrained.shares[s], 12);
      else expect(drained.shares[s]).toBeLessThanOrEqual(undrained.shares[s] + 1e-12);
    });
  });

  test('where storm water is what the drain cannot take, it is turned away, not pumped', () => {
    const judged = judge(site(withItem(hollow, 'site.csv', 'uphill_area', '2000', 'm2')));
    const { options, drain } = resultOf(judged);
    const sump = options.find(({ option }) => option === 'drain-to-sump')!;
    expect(sump.possible).toBe(false);
    const { option, also } = recommend(judged);
    if (option === 'drain-to-sump') expect(also).toContain('surface-water-only');
    if (drain) expect(Math.min(...Object.values(drain.reserve))).toBeGreaterThanOrEqual(1);
    expect(['move', 'ballast']).not.toContain(option);
  });

  test('one depth by itself has the chance it has among many', () => {
    const { basis, measures } = sumpOf(inGround('2e-5'));
    const depths = [0.4, 0.7, 0.9, 1.3];
    chancesOf(basis, measures, depths).forEach(({ perYear, upkeep }, i) => {
      const alone = chanceOf(basis, measures, depths[i]);
      expect(alone.perYear).toBeCloseTo(perYear, 12);
      expect(alone.upkeep).toBeCloseTo(upkeep, 12);
    });
  });
});

describe('how drain and pump are kept', () => {
  const perYear = (files: Files) => {
    const { basis, measures } = sumpOf(files);
    return chanceOf(basis, measures, basis.site.pond.depth).perYear;
  };
  const kept = (item: string, value: string, unit = '') => withItem(hollow, 'site.csv', item, value, unit);

  test('a fact that equals its default changes nothing but the list of assumptions', () => {
    const said = { drain_blocked_once_in: '200', pump_out_once_in: '200', power_cut_once_in: '10' };
    const files = Object.entries(said).reduce((f, [item, v]) => withItem(f, 'site.csv', item, v), hollow);
    const [told, silent] = [files, hollow].map((f) => resultOf(judge(site(f))));
    expect(told.options).toEqual(silent.options);
    expect(told.recommendation).toEqual(silent.recommendation);
    const items = (r: typeof told) => r.assumptions.map(({ item }) => item);
    expect(items(silent)).toEqual(expect.arrayContaining(Object.keys(said)));
    for (const item of Object.keys(said)) expect(items(told)).not.toContain(item);
  });

  test('the rarer a failure the lower the chance: silt reaches the sump too, and a cut is not a pump out', () => {
    const now = perYear(hollow);
    expect(perYear(kept('drain_blocked_once_in', '20'))).toBeGreaterThan(now);
    expect(perYear(kept('pump_out_once_in', '20'))).toBeGreaterThan(now);
    expect(perYear(kept('power_cut_once_in', '1'))).toBeGreaterThan(now);
    expect(perYear(kept('power_cut_hours', '720', 'h'))).toBeGreaterThanOrEqual(now);
    // No cut: bed and sump take up what comes.
    expect(perYear(kept('power_cut_hours', '0', 'h'))).toBeLessThanOrEqual(now);
    const none = withItem(kept('power_cut_hours', '0', 'h'), 'site.csv', 'power_cut_once_in', '1');
    expect(perYear(none)).toBe(perYear(kept('power_cut_hours', '0', 'h')));
  });

  test('a chance of upkeep is told as an order, with what sets it', () => {
    expect([1 / 148, 1 / 60, 1 / 1.1, 0.0004].map(orderText)).toEqual([
      'about 1 year in 150',
      'about 1 year in 70',
      'about 1 year in 1',
      'about 1 year in 3000',
    ]);
    const { reason } = recommend(judge(site(slope)));
    expect(reason).toMatch(/it fails about 1 year in \d+, set by how drain and flap are kept/);
  });
});

describe('without its drain', () => {
  test('where even the full pond lifts no rule says that keeping it full is enough', () => {
    const judged = judge(site(hollow));
    const { rules } = recommend(judged);
    const rule = rules.find(({ code }) => code === 'full-if-power-fails')!;
    const undrained = possibleOption(resultOf(judged), 'no-drain')!;
    expect(undrained.full.safe).toBe(false);
    expect(rule.text).toMatch(/even the full pond may lift (?:in|from) /);
    expect(rule.months!.length).toBeGreaterThan(0);
    for (const month of rule.months!)
      expect(undrained.lowest_safe_level_m[month - 1]).toBeGreaterThan(judged.site.pond.fullLevel);
  });

  test('nor does a month of the card', () => {
    const report = reportOf(judge(site(hollow)));
    const { blocked } = loweringYear(report);
    const undrained = possibleOption(report.result, 'no-drain')!;
    expect(blocked!.filter(({ says }) => says === 'not-even-full').map(({ month }) => month)).toEqual(
      undrained.lowest_safe_level_m.flatMap((level, i) =>
        level !== null && level > report.pond.full_level_m ? [i + 1] : [],
      ),
    );
  });
});
