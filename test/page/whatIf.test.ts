import { describe, expect, it } from 'vitest';
import type { OptionName } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { explorer, type WhatIf, whatIf } from '../../lib/page/index.js';
import { decoded, fragmentOf, notebookLine, stateOf } from '../../lib/page/whatIfState.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';

const OPTIONS = { seed: 1, samples: 48 };
const files = briefDemo('clay-hollow');
const survey = surveyOf(files);
const judge = explorer(survey, OPTIONS);

describe('the what-if', () => {
  it('with nothing tried is the analysis itself', () => {
    expect(resultOf(whatIf(survey, {}, OPTIONS))).toEqual(resultOf(assess(siteModel(survey, OPTIONS))));
  });

  it('of drawdown and size is the analysis of a survey that says so', () => {
    const said = ['usual_drawdown', 'length', 'width'].reduce(
      (all, item, at) => withItem(all, 'pond.csv', item, String([0.15, 5, 4][at]), 'm'),
      files,
    );
    const own = resultOf(assess(siteModel(surveyOf(said), OPTIONS)));
    judge({});
    const tried = resultOf(judge({ drawdown: 0.15, length: 5, width: 4 }));
    expect(tried.options).toEqual(own.options);
    expect(tried.recommendation).toEqual(own.recommendation);
  });

  it('of one side leaves the other as it was, where the survey gives an area', () => {
    const area = withItem(files, 'pond.csv', 'area', '16', 'm2');
    const bare = edited(area, 'pond.csv', (text) => text.replace(/^(length|width),.*\n/gm, ''));
    const planOf = (shape: string, change: WhatIf) => {
      const judged = explorer(surveyOf(withItem(bare, 'pond.csv', 'shape', shape)), OPTIONS)(change);
      const { length, width } = judged.site.pond.shape;
      return [length, width];
    };
    expect(planOf('box', { width: 3 })).toEqual([4, 3]);
    expect(planOf('box', { length: 5 })).toEqual([5, 4]);
    expect(planOf('round', { length: 5 })).toEqual([5, 5]);
  });

  it('runs the water once for all depths, and again for another size', () => {
    const water = judge({}).site.water;
    expect(judge({ depth: 0.5, full: 0, option: 'no-drain' }).site.water).toBe(water);
    expect(judge({ length: 6 }).site.water).not.toBe(water);
  });

  it('leaves the water alone for another size where no ring lies around the pond', () => {
    const slope = explorer(surveyOf(briefDemo('clay-slope')), OPTIONS);
    const { site } = slope({});
    expect(slope({ length: 6 }).site.water).toBe(site.water);
    expect(() => siteModel(site.survey, { ...OPTIONS, samples: 200, before: site })).toThrow(
      'invalid site before: drawn with seed 1 and 48 samples',
    );
  });

  it('puts an option in the place of what is recommended', () => {
    const { decision, drain } = judge({ option: 'no-drain' });
    expect(decision).toMatchObject({ option: 'no-drain', also: [] });
    expect(drain).toBeNull();
  });

  it('says of an option that does not serve what still fails, and of one that needs months kept which', () => {
    const reason = (tried: typeof judge, option: OptionName) => recommend(tried({ option })).reason;
    expect(reason(judge, 'no-drain')).toMatch(
      /^With no drain, .* (?:nearly every year|most years|about [^(]*) \(2 % a year is accepted\)\.$/,
    );
    expect(reason(judge, 'surface-water-only')).toMatch(
      /^With nothing done, .*\. With surface water kept out, the water/,
    );
    const slope = explorer(surveyOf(briefDemo('clay-slope')), OPTIONS);
    expect(reason(slope, 'no-drain')).toMatch(
      /^Kept full it stays put; emptied in March as wished the liner lifts/,
    );
    expect(slope({ option: 'drain-to-outlet' }).decision.emptyingRuled).toBe(false);
  });

  it('tells of no tipping point because another option is tried', () => {
    expect(whatIf(survey, { option: 'no-drain' }, OPTIONS).tippingPoints).toEqual(
      whatIf(survey, {}, OPTIONS).tippingPoints,
    );
  });

  it('keeps run-off out as the option does that keeps it out', () => {
    const kept = judge({ runoff: 'kept-out', option: 'no-drain' });
    const surface = judge({ option: 'surface-water-only' });
    expect(kept.decision.verdict!.chance.perYear).toBeCloseTo(surface.decision.verdict!.chance.perYear, 12);
  });

  it('fails oftener in wet years than in all', () => {
    const slope = explorer(surveyOf(briefDemo('clay-slope')), OPTIONS);
    const chance = (years: 'all' | 'ordinary' | 'wet') =>
      slope({ years, option: 'no-drain', full: 0.05, depth: 0.5 }).decision.verdict!.chance.modes[
        'lift-drawn-down'
      ]!;
    expect(chance('wet')).toBeGreaterThan(chance('all'));
    expect(chance('all')).toBeGreaterThan(0);
    expect(slope({ years: 'wet' }).site.water.years).toBe(2);
  });

  it('moves the outlet', () => {
    const slope = surveyOf(briefDemo('clay-slope'));
    expect(whatIf(slope, { outlet: -1.2, run: 30 }, OPTIONS).site.places.outlets[0]).toMatchObject({
      level: -1.2,
      distance: 30,
    });
  });
});

describe('its state', () => {
  const state = { depth: 1.05, option: 'no-drain', years: 'wet', units: 'us' } as const;

  it('comes back from a link', () => {
    expect(stateOf(fragmentOf(state))).toEqual({ state, left: [] });
    expect(fragmentOf({})).toBe('');
    expect(stateOf('drain')).toBeUndefined();
    // A stray % is no escape: the fragment is read as it stands.
    expect(stateOf(decoded('try=1&depth=0.9&note=5%'))).toMatchObject({ left: ['note=5%'] });
  });

  it('leaves out of a stranger’s link what cannot be tried, and tells', () => {
    expect(
      stateOf('try=1&depth=900&depth=&width=1e999&option=<b>&__proto__=1&constructor=2&length=4'),
    ).toEqual({
      state: { length: 4 },
      left: ['depth=900', 'depth=', 'width=1e999', 'option=<b>', '__proto__=1', 'constructor=2'],
    });
  });

  it('is a line for a notebook', () => {
    expect(notebookLine(state)).toBe(
      "const tried = whatIf(survey, { depth: 1.05, option: 'no-drain', years: 'wet' });",
    );
    expect(notebookLine({})).toBe('const tried = whatIf(survey, {});');
  });
});
