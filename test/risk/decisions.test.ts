import { describe, expect, test } from 'vitest';
import type { Recommendation } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const run = (files: Files) => resultOf(judge(siteModel(surveyOf(files), { samples: 128 })));
const decide = (files: Files): Recommendation =>
  recommend(judge(siteModel(surveyOf(files), { samples: 128 })));
const levels = (rows: string) => `point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\n${rows}`;

/** Water 5 cm under the ground all winter, pond level with the ground: it lifts when drawn down. */
const wet = () => baseSurvey({ depth: 0.05, spread: 0.03, level: 0, drawdown: 0.1 });

describe('answers that are no drains come first', () => {
  test('a full pond above the water needs nothing, at any depth below', () => {
    expect(decide(baseSurvey({ depth: 0.3, spread: 0.05, level: 0.1 })).option).toBe('no-drain');
  });

  test('raise it where the rim may rise, drain it where not', () => {
    const outlet = levels('out,outlet,20,8.3\nditch,ditch,20.5,8.1\nhigh,flood,20.5,8.6\n');
    const drainable = { ...withItem(wet(), 'site.csv', 'discharge_allowed', 'yes'), 'levels.csv': outlet };
    expect(decide(withItem(drainable, 'pond.csv', 'highest_raise', '0.5', 'm')).option).toBe('raise-pond');
    expect(decide(drainable).option).toBe('drain-to-outlet');
  });

  test('surface water kept out where only the ring holds it', () => {
    const dry = { ...baseSurvey({ depth: 1.5, spread: 0.05, level: -0.05, drawdown: 0.1 }) };
    const open = withItem(withItem(dry, 'pond.csv', 'ring_width', '0.2', 'm'), 'pond.csv', 'ring_cap', 'no');
    expect(decide(withItem(open, 'site.csv', 'uphill_area', '80', 'm2')).option).toBe('surface-water-only');
  });
});

describe('stops', () => {
  test('protected ground stops the job and no drain is designed', () => {
    const r = run(withItem(wet(), 'site.csv', 'protected_ground', 'yes'));
    expect(r.recommendation.option).toBe('do-not-dig');
    expect(r.drain).toBeNull();
    expect(r.recommendation.rules.map((x) => x.code)).toContain('ask-regulator');
  });

  test('no lawful place for the water rules out every drain, not the pond', () => {
    const outlet = levels('out,outlet,20,8.3\nditch,ditch,20.5,8.1\n');
    const r = run({ ...withItem(wet(), 'pond.csv', 'highest_raise', '0.5', 'm'), 'levels.csv': outlet });
    for (const name of ['drain-to-outlet', 'drain-to-sump'] as const) {
      const option = r.options.find((o) => o.option === name)!;
      expect(option.possible).toBe(false);
      expect(option.why_not).toMatch(/lawful|mains/);
    }
    expect(r.recommendation.option).toBe('raise-pond');
  });

  test('a footing inside the 45° line makes it shallower', () => {
    const near = {
      ...edited(baseSurvey({ depth: 1.6, level: 0.1 }), 'pits.csv', (t) => t.replace('blocky', 'massive')),
      'levels.csv': levels('wall,footing,0.4,9.6\n'),
    };
    const r = decide(withItem(near, 'pond.csv', 'side_slope', '0'));
    expect(r.option).toBe('shallower');
    expect(r.governs).toBe('footing');
    expect(r.depth_m).toBeLessThanOrEqual(0.8);
  });

  test('nothing known of the wet season: measure first, unless the verdict holds even so', () => {
    const blind = { ...wet() };
    delete (blind as Files)['heads.csv'];
    expect(decide(blind)).toMatchObject({ option: 'measure-first', governs: 'evidence' });
    const high = { ...baseSurvey({ level: 0.4, drawdown: 0.05 }) };
    delete (high as Files)['heads.csv'];
    expect(decide(high).option).toBe('no-drain');
  });
});

describe('a seam under pressure', () => {
  const seam = (depth: number) => {
    const files = baseSurvey({ depth: 0.5, spread: 0.05, level: 0.05 });
    files['pits.csv'] += 'P1,2.6,3.2,sand,,none,,,\n';
    files['heads.csv'] += `below:P1,high,${depth},0.05,pipe in the sand\n`;
    return decide(files);
  };
  test('above the ground it limits the dig, deep down it does not', () => {
    expect(seam(-0.6)).toMatchObject({ governs: 'floor-heave' });
    expect(['shallower', 'move']).toContain(seam(-0.6).option);
    expect(seam(2.2).option).toBe('no-drain');
  });
});

describe('the drain', () => {
  const drained = (outletLevel: number, floodLevel: number) => {
    const files = withItem(
      withItem(wet(), 'pond.csv', 'emptied_in', '3'),
      'site.csv',
      'discharge_allowed',
      'yes',
    );
    return run({
      ...files,
      'levels.csv': levels(
        `out,outlet,20,${outletLevel}\nditch,ditch,20.5,${outletLevel - 0.2}\nhigh,flood,20.5,${floodLevel}\n`,
      ),
    });
  };
  const option = (r: ReturnType<typeof run>) => r.options.find((o) => o.option === 'drain-to-outlet')!;

  test('with its outlet below the floor protects the emptied pond', () => {
    const r = drained(8.3, 8.6);
    expect(r.recommendation.option).toBe('drain-to-outlet');
    expect(r.drain!.fall_available_m).toBeCloseTo(10 - 1 - 0.15 - 8.3, 6);
    // 20 m from the edge and 1 m under the side that leans back 1 to 1, at 1 %.
    expect(r.drain!.fall_needed_m).toBeCloseTo(0.21, 9);
  });

  test('between floor and pond level it only relieves the full pond', () => {
    const r = drained(9.4, 9.5);
    expect(option(r).possible).toBe(true);
    expect(option(r).full!.safe).toBe(true);
    expect(option(r).risk_at_wish!.per_year).toBeGreaterThan(0.5);
    // The outlet lies too high to hold the water below the floor.
    expect(option(r).governs).toBe('fall');
  });

  test('above the pond level it is no drain', () => {
    expect(option(drained(9.95, 9.99))).toMatchObject({ possible: false });
  });
});

test('result.json carries no number that is not finite, and the same seed gives the same bytes', () => {
  const text = () => JSON.stringify(run(wet()));
  expect(text()).toBe(text());
  expect(text()).not.toMatch(/null,"p50"|NaN|Infinity/);
});

test('plants of wet ground send one to the regulator, unless the ground is said not to be protected', () => {
  const rules = (said: string) => {
    const files = withItem(
      withItem(baseSurvey(), 'site.csv', 'wet_plants', 'yes'),
      'site.csv',
      'protected_ground',
      said,
    );
    const a = judge(siteModel(surveyOf(files), { samples: 16 }));
    return recommend(a).rules.map((r) => r.code);
  };
  expect(rules('unknown')).toContain('ask-regulator');
  expect(rules('no')).not.toContain('ask-regulator');
});
