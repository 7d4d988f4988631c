/** Side slope and raised rim in the what-if: the same as a survey that says so. */
import { describe, expect, it } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { assess, judge as judged } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { holder } from '../../lib/page/heldMeasures.js';
import { explorer, type WhatIf, whatIf } from '../../lib/page/index.js';
import { trialColumn } from '../../lib/page/trialColumn.js';
import { surveyedNumbers } from '../../lib/page/whatIfParameters.js';
import { viewOf } from '../../lib/page/whatIfView.js';
import { verdictAt } from '../../lib/reliability/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';

const OPTIONS = { seed: 1, samples: 48 };
const hollow = briefDemo('clay-hollow');
const said = (files: Record<string, string>, item: string, value: string, unit = '') =>
  withItem(files, 'pond.csv', item, value, unit);
/** A garden whose rim may go up further than it needs to. */
const free = said(hollow, 'highest_raise', '0.6', 'm');

describe('side slope', () => {
  it.each(
    sweep(
      [
        ['clay-hollow', '1.2'],
        // Laid back by the ground, as a survey that says it is.
        ['clay-hollow', '0.1'],
        ['loam-terrace', '0.75'],
        // Its sides meet.
        ['loam-terrace', '4'],
      ],
      1,
    ),
  )('of %s at %s is the analysis of a survey that says so', (name, slope) => {
    const files = briefDemo(name);
    const own = resultOf(judged(siteModel(surveyOf(said(files, 'side_slope', slope)), OPTIONS)));
    const judge = explorer(surveyOf(files), OPTIONS);
    judge({});
    judge({ slope: 2, depth: 0.5 });
    const tried = resultOf(judge({ slope: Number(slope) }));
    expect(tried.options).toEqual(own.options);
    expect(tried.recommendation).toEqual(own.recommendation);
  });

  it('is tried where sides are cut, not where a wall holds them', () => {
    const keys = (files: Record<string, string>) => {
      const { site, decision } = explorer(surveyOf(files), OPTIONS)({});
      return surveyedNumbers(site, undefined, decision.measures).map(([key]) => key);
    };
    expect(keys(hollow)).toContain('slope');
    expect(keys(said(said(hollow, 'wall', 'block'), 'side_slope', '0'))).not.toContain('slope');
  });
});

describe('raised rim', () => {
  it('to what the answer needs, or is allowed, is the analysis of a survey that allows no more', () => {
    const judge = explorer(surveyOf(free), OPTIONS);
    const { raise } = judge({}).decision.measures;
    expect(raise).toBeGreaterThan(0);
    for (const allowed of [raise, 0]) {
      const own = resultOf(
        assess(siteModel(surveyOf(said(hollow, 'highest_raise', String(allowed), 'm')), OPTIONS)),
      );
      const tried = resultOf(judge({ raise: allowed }));
      expect(tried.options).toEqual(own.options);
      expect(tried.recommendation).toEqual(own.recommendation);
      expect(resultOf(whatIf(surveyOf(free), { raise: allowed }, OPTIONS)).recommendation).toEqual(
        own.recommendation,
      );
    }
  });

  it.each(sweep(['raise-pond', 'surface-water-only', 'no-drain'] as const, 1))(
    'with %s is built so high, and no higher than the survey allows',
    (option) => {
      const judge = explorer(surveyOf(free), OPTIONS);
      const measuresOf = (change: WhatIf) => judge({ option, ...change }).decision;
      expect(measuresOf({ raise: 0.2 })).toMatchObject({ option: 'raise-pond', measures: { raise: 0.2 } });
      expect(measuresOf({ raise: 2 }).measures.raise).toBe(0.6);
      expect(measuresOf({ raise: 0 })).toMatchObject({
        option: option === 'raise-pond' ? 'no-drain' : option,
        measures: { raise: 0 },
      });
    },
  );

  it('lifts floor and water together: kept full it fares as a shallower pond that stands as much higher', () => {
    const { basis } = explorer(surveyOf(free), OPTIONS)({ raise: 0.2 });
    const { pond } = basis.site;
    const higher = basisOf({ ...basis.site, pond: { ...pond, fullLevel: pond.fullLevel + 0.2 } });
    const modes = (chance: Record<string, number | undefined>) => [
      chance['lift-full'],
      chance['lift-drawn-down'],
    ];
    const raised = verdictAt(basis, { ...NOTHING, raise: 0.2 }, pond.depth).chance;
    expect(modes(raised.modes)).toEqual(modes(verdictAt(higher, NOTHING, pond.depth - 0.2).chance.modes));
    expect(modes(raised.modes)).not.toEqual(modes(verdictAt(basis, NOTHING, pond.depth).chance.modes));
  });

  it('is held on the page as it is tried, and named', () => {
    const held = holder(surveyOf(free), OPTIONS);
    const own = trialColumn(held.asked({}), 'us');
    const told = (change: WhatIf) => viewOf(held, held.asked(change), own, 'us');
    const rowOf = (change: WhatIf, what: string) =>
      told(change)
        .compared.rows.find(([name]) => name === what)!
        .slice(1);
    expect(held.option).toBe('raise-pond');
    expect(rowOf({ raise: 0.1524 }, 'Rim raised by')).toEqual(['11 3/4 in', '6 in']);
    expect(told({ raise: 0.1524 }).headline).toContain('the rim raised by 6 in');
    expect(rowOf({ raise: 0 }, 'Rim raised by')[1]).toBe('nothing');
    expect(told({ raise: 0 }).headline).not.toContain('raised by 0');
    expect(rowOf({ slope: 0.1 }, 'Sides')).toEqual(['1 : 0.5', '1 : 0.5, for they do not stand at 1 : 0.1']);
    const judge = explorer(surveyOf(free), OPTIONS);
    for (const change of [{ raise: 0.2 }, { slope: 1, raise: 0.1 }, { raise: 0.4, depth: 0.6 }]) {
      const { measures } = held.asked({}).held!.decision;
      const option = measures.way === 'keptOut' ? 'surface-water-only' : 'no-drain';
      expect(held.asked(change).held!.decision.verdict.chance.perYear).toBe(
        judge({ ...change, option }).decision.verdict!.chance.perYear,
      );
    }
  });

  it('is offered as far as the survey allows, and not where the rim must stay', () => {
    const rangeOf = (files: Record<string, string>) => {
      const { site, decision } = explorer(surveyOf(files), OPTIONS)({});
      return surveyedNumbers(site, undefined, decision.measures).find(([key]) => key === 'raise');
    };
    expect(rangeOf(hollow)).toBeUndefined();
    expect(rangeOf(free)).toEqual(['raise', 0.3, 0.6]);
  });
});
