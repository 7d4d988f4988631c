import { describe, expect, test } from 'vitest';
import type { OptionName } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';
import { baseSurvey } from './base.js';

/** Reason, rules and verdict of one answer, held against each other. All invented. */

type Items = Record<string, string>;

function run(files: Items) {
  return resultOf(assess(siteModel(surveyOf(files), { samples: 64 })));
}

const withPond = (files: Items, items: Items) =>
  Object.entries(items).reduce((all, [item, cell]) => {
    const [value, unit = ''] = cell.split(' ');
    return withItem(all, 'pond.csv', item, value, unit);
  }, files);

/** Winter water 0.3 m down from November to May, 1.4 m down in summer; the full pond stands above it. */
function seasonal(items: Items = {}): Items {
  const depth = (month: number) => (month > 5 && month < 11 ? 1.4 : 0.3);
  const rows = Array.from({ length: 12 }, (_, m) => `site,${m + 1},${depth(m + 1)},0.05,six winters`);
  const files = { ...baseSurvey({ level: 0.1, drawdown: 0.08 }) };
  files['heads.csv'] = `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`;
  return withPond(files, { emptied_in: '3', days_empty: '14', ...items });
}

const lawful = (files: Items, rows: string): Items => ({
  ...withItem(files, 'site.csv', 'discharge_allowed', 'yes'),
  'levels.csv': `${files['levels.csv']}${rows}`,
});
const rule = (r: ReturnType<typeof run>, code: string) =>
  r.recommendation.rules.find((one) => one.code === code);
const option = (r: ReturnType<typeof run>, name: OptionName) => r.options.find((o) => o.option === name)!;

describe('emptied in a wet month', () => {
  test('for two days in tight clay it is refilled in time: the rule allows what the verdict found safe', () => {
    const files = seasonal({ days_empty: '2' });
    files['pits.csv'] = files['pits.csv'].replace('1e-7', '3e-9');
    const r = run(files);
    // 20 mm over about 2 m2 of floor are 40 L; 4*K*r*h = 4 * 3e-9 * 1.2 * 0.7 m3/s bring under 1 L a day.
    expect(r.recommendation).toMatchObject({ option: 'no-drain', governs: 'none' });
    expect(r.recommendation.reason).toMatch(/^Emptied in March it is full again before/);
    // From the last of October it runs into November, whose highest water may stand there on its first day.
    expect(rule(r, 'empty-only-in')).toMatchObject({ months: [3, 6, 7, 8, 9] });
    expect(rule(r, 'empty-only-in')!.text).toMatch(/or in March for at most 2 days/);
    // The water stands at -0.3 m with a spread of 0.05 m, and 0.1 m of margin: about -0.1 m.
    expect(rule(r, 'keep-above-level')!.text).toMatch(
      /October to May, but for the days it may stand empty: in the worst month no lower than 0\.(09|1\d) m below/,
    );
    expect(rule(r, 'do-not-lower')).toBeUndefined();
  });

  test('for as long in open ground it lifts, and the rule bans the month', () => {
    const files = seasonal({ days_empty: '2' });
    files['pits.csv'] = files['pits.csv'].replace('1e-7', '1e-6');
    const r = run(files);
    expect(r.recommendation.reason).toMatch(
      /lift the liner while the pond stands empty nearly every year\. As wished but emptied in June instead it holds/,
    );
    expect(rule(r, 'empty-only-in')!.months).not.toContain(3);
    expect(rule(r, 'do-not-lower')!.months).toContain(3);
  });

  test('surface water kept out saves the kept pond only: emptied in summer too, and the chance told is of both', () => {
    const ring = { ring_width: '0.3 m', ring_fill: 'sand', ring_cap: 'no', water_above_rim_ground: '0.05 m' };
    const r = run(seasonal(ring));
    expect(r.recommendation.option).toBe('surface-water-only');
    expect(option(r, 'surface-water-only').risk_at_wish!.per_year).toBe(1);
    expect(r.recommendation.change).toEqual({ emptied_in: [6] });
    expect(r.recommendation.reason).toMatch(
      /emptied in June instead and with surface water kept out of the ring it holds: less than 0.1 % of years fail/,
    );
    expect(rule(r, 'do-not-lower')!.months).toContain(3);
  });
});

test('where no month is known to be free, the reason does not send one to the months given', () => {
  const files = seasonal();
  files['heads.csv'] = 'place,month,depth_m,spread_m,source\nsite,high,0.3,0.1,told\n';
  files['pits.csv'] = files['pits.csv'].replace('1e-7', '3e-7');
  const r = run(files);
  expect(rule(r, 'empty-only-in')).toBeUndefined();
  expect(r.recommendation.reason).toMatch(/no month is free for it: empty it only when the dip pipe shows/);
});

describe('no drain serves the emptied pond, and the reason says why', () => {
  const open = () => {
    const files = seasonal();
    // High all year: no other month is better.
    const heads = files['heads.csv'].replaceAll(',1.4,', ',0.3,');
    return { ...files, 'heads.csv': heads, 'pits.csv': files['pits.csv'].replace('1e-7', '6e-7') };
  };
  const OUTLETS: [string, string, string, RegExp][] = [
    // 30 m at 1 % from -0.95 m: the water stands at -0.65 m, the floor lies at -1 m.
    ['too high', 'out,outlet,30,9.05\nd,ditch,30.5,8.9\nf,flood,30.5,9\n', 'fall', /not enough fall/],
    // 18 m at 1 % from -1.7 m is low enough; the ditch in flood stands at -0.5 m.
    [
      'flooded',
      'out,outlet,18,8.3\nd,ditch,18.5,8.15\nf,flood,18.5,9.5\n',
      'outlet-flood',
      /in flood stands/,
    ],
  ];
  test.each(sweep(OUTLETS, 1))('outlet %s', (_, rows, governs, words) => {
    const r = run(lawful(open(), rows));
    expect(r.recommendation.option).toBe('no-drain');
    expect(option(r, 'drain-to-outlet')).toMatchObject({ possible: true, governs });
    expect(r.recommendation.reason).toMatch(words);
  });

  test('flooded, and a pump is accepted: the reason does not say that no lower ground is there', () => {
    const rows = 'out,outlet,18,8.3\nd,ditch,18.5,8.15\nf,flood,18.5,9.5\n';
    const pumped = ['mains_power', 'pump_acceptable'].reduce(
      (files, item) => withItem(files, 'site.csv', item, 'yes'),
      lawful(open(), rows),
    );
    const { option: advised, reason } = run(pumped).recommendation;
    expect(advised).toBe('drain-to-sump');
    expect(reason).toMatch(
      /The water is pumped from a sump.* A drain to out would not serve .*in flood stands/,
    );
  });

  test('low enough and free it serves', () => {
    const r = run(lawful(open(), 'out,outlet,18,8.3\nd,ditch,18.5,8.15\nf,flood,18.5,8.8\n'));
    expect(r.recommendation.option).toBe('drain-to-outlet');
  });
});

describe('a pond that is there already', () => {
  const there = () => {
    const files = seasonal({ state: 'existing' });
    files['pits.csv'] = files['pits.csv'].replace('1e-7', '6e-7');
    return lawful(files, 'out,outlet,18,8.3\nd,ditch,18.5,8.15\nf,flood,18.5,8.8\n');
  };

  test('is kept full in the wet months rather than rebuilt for a drain', () => {
    const r = run(there());
    expect(r.recommendation.option).toBe('no-drain');
    expect(rule(r, 'do-not-lower')!.months).toContain(3);
    expect(rule(r, 'rebuild')).toBeUndefined();
  });

  test('is rebuilt where even the full one lifts, with the liner out', () => {
    const r = run(withPond(there(), { water_above_rim_ground: '-0.4 m', emptied_in: 'never' }));
    expect(r.recommendation.option).toBe('drain-to-outlet');
    expect(rule(r, 'rebuild')!.text).toMatch(/liner comes out/);
  });

  test('has the water that a dip pipe shows under its liner, not a ring full to the brim', () => {
    const files = there();
    files['levels.csv'] += 'pipe,dip-pipe,1,10\n';
    files['water.csv'] = 'pit,date,reading,depth_m\ndip-pipe,2024-02-10,level,0.31\n';
    // 0.10 - 0.08 above the rim's ground, the water 0.30 below it.
    expect(option(run(files), 'no-drain').full!.net_head_m.p50).toBeCloseTo(0.32, 1);
  });

  test('and a bulge over water that stands lower than the pond is gas', () => {
    const files = withPond(there(), { bulge: 'yes' });
    files['levels.csv'] += 'pipe,dip-pipe,1,10\nsurface,pond,0,10\n';
    files['water.csv'] =
      'pit,date,reading,depth_m\npond,2024-02-10,level,-0.08\ndip-pipe,2024-02-10,level,0.31\n';
    const r = run(files);
    expect(r.recommendation).toMatchObject({ option: 'relieve-and-keep-full', governs: 'gas' });
    expect(rule(r, 'vent-high-point')).toBeDefined();
  });
});

test('no rule asks for more water than the pond holds', () => {
  const files = baseSurvey({ level: -0.1, drawdown: 0.05 });
  delete files['heads.csv'];
  const r = run(files);
  expect(r.recommendation.option).toBe('measure-first');
  const kept = rule(r, 'keep-above-level');
  expect(kept?.level_m ?? Number.NEGATIVE_INFINITY).toBeLessThanOrEqual(-0.1);
  // At the ground in the wet months and 0.3 m down in the others, give or take 0.25 m, with 0.1 m of margin.
  expect(rule(r, 'full-may-lift')!.months).toHaveLength(12);
});

test('sides that meet before the wish is reached are told as that, and not as too steep', () => {
  const r = run(withPond(baseSurvey({ depth: 2.4, level: 0 }), { depth: '1.8 m' }));
  expect(r.recommendation.option).toBe('shallower');
  expect(r.recommendation.reason).toMatch(/1\.80 m cannot be dug: at this slope the sides meet at 1\.50 m/);
  expect(rule(r, 'batter-sides')).toBeUndefined();
});

test('no option is said to slump where its sides only meet, and what fails above that is what is told', () => {
  // Water deep down: only the sides limit it.
  const deep = run(withPond(baseSurvey({ depth: 2.4, level: 0 }), { depth: '1.8 m' }));
  expect(deep.recommendation).toMatchObject({ governs: 'sides-meet' });
  expect(deep.recommendation.reason).toContain('wider, or its sides steeper');
  const bare = (r: typeof deep) => r.options.find(({ option }) => option === 'no-drain')!;
  expect(bare(deep)).toMatchObject({ safe_depth_m: null, governs: 'sides-meet' });
  // Narrow, on a wet slope: emptied, the liner lifts long before.
  const narrow = run(withPond(briefDemo('clay-slope'), { depth: '1.2 m', width: '1.5 m' }));
  expect(narrow.recommendation).toMatchObject({ governs: 'sides-meet' });
  expect(bare(narrow)).toMatchObject({ safe_depth_m: 0, governs: 'lift-emptied' });
});

test('a depth that the usual drawdown empties is not searched', () => {
  const files = withPond(baseSurvey({ depth: 1.6, level: 0, drawdown: 0.35 }), {});
  const { curves } = assess(siteModel(surveyOf(files), { samples: 16 }));
  expect(curves[0].depth_m[0]).toBeCloseTo(0.4, 9);
});

describe('another spot', () => {
  /** Low and wet here, 0.6 m of ground more over the water there. */
  const spots = (raise: string, there: number) => {
    const files = withPond(baseSurvey({ level: -0.1, drawdown: 0.1 }), { highest_raise: raise });
    const rows = (pit: string, depth: number) =>
      Array.from({ length: 12 }, (_, m) => `${pit},${m + 1},${depth},0.03,six winters\n`).join('');
    files['pits.csv'] += 'P2,0,2,clay,blocky,,stiff,1e-7,60\nP3,0,2,clay,blocky,,stiff,1e-7,60\n';
    files['levels.csv'] =
      'point,role,x_m,y_m,level_m\nhere,spot,0,0,10\nhigh,spot,-4,24,10.2\nP1,pit,0,0,10\nP2,pit,3,12,10.1\nP3,pit,-4,24,10.2\n';
    files['heads.csv'] =
      `place,month,depth_m,spread_m,source\n${rows('P1', 0.05)}${rows('P2', there / 2)}${rows('P3', there)}`;
    return run(
      withItem(withItem(files, 'site.csv', 'mains_power', 'yes'), 'site.csv', 'discharge_allowed', 'yes'),
    );
  };

  test('spares the concrete: move there', () => {
    const r = spots('0 m', 1.3);
    expect(r.recommendation.option).toBe('move');
    expect(r.recommendation.reason).toMatch(/At the spot high the water stands 1\.\d+ m below the ground/);
    expect(r.recommendation.rules.map((one) => one.code)).not.toContain('keep-above-level');
    expect(r.spots[0]).toMatchObject({ spot: 'high', option: 'no-drain' });
  });

  test('is not asked for where the rim may rise, nor where the water is as near', () => {
    expect(spots('0.6 m', 1.3).recommendation.option).toBe('raise-pond');
    expect(spots('0 m', 0.06).recommendation.option).toBe('ballast');
  });
});
