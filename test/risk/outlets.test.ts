import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { judge } from '../../lib/decision/index.js';
import { drainLevel, type Measures } from '../../lib/heads/index.js';
import { outletsOf } from '../../lib/options/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';

type Files = Record<string, string>;
const slope = briefDemo('clay-slope');
const OPTIONS = { samples: 32 };
const base = siteModel(surveyOf(slope), OPTIONS);
const site = (files: Files) => siteModel(surveyOf(files), { ...OPTIONS, before: base });
const judged = (files: Files) => judge(site(files));
const BENEATH = /,(outlet|ditch|flood|discharge|boundary),/;
/** The slope with other ends of a drain: rows of point, role, x, y, level, distance. */
const ending = (...rows: string[]): Files =>
  edited(slope, 'levels.csv', (t) => {
    const kept = t.split('\n').filter((row) => row.trim() !== '' && !BENEATH.test(row));
    const [, ...points] = kept.map((row) => row.replace(/[^,]*$/, ''));
    return `${['point,role,x_m,y_m,level_m,distance_m', ...points, ...rows].join('\n')}\n`;
  });
const outcome = (files: Files) => {
  const { options, recommendation, drain } = resultOf(judged(files));
  return { options, recommendation, drain };
};
const option = (files: Files, name: string) => outcome(files).options.find((o) => o.option === name)!;

/** Two brooks: the one lies deeper and floods above the floor, the other is a little higher and does not. */
const FLOODING = ['A,outlet,0,-15,8.2,', 'A-bed,ditch,0,-15.5,8.1,', 'A-high,flood,0,-15.5,9.9,'];
const FREE = ['B,outlet,15,0,8.35,', 'B-bed,ditch,15.5,0,8.2,', 'B-high,flood,15.5,0,8.4,'];

describe('the choice of an outlet', () => {
  test('by the chance it gives, in any order of the rows: one that floods above the floor is not taken', () => {
    const ab = outcome(ending(...FLOODING, ...FREE));
    expect(ab).toEqual(outcome(ending(...FREE, ...FLOODING)));
    expect(ab).toEqual(outcome(ending(...[...FLOODING, ...FREE].reverse())));
    expect(ab.drain?.outlet).toBe('B');
    expect(outcome(ending(...FLOODING)).recommendation.option).not.toBe('drain-to-outlet');
  });

  test('an outlet that is worse than the one chosen changes nothing', () => {
    const one = outcome(ending(...FREE));
    expect(one.recommendation.option).toBe('drain-to-outlet');
    for (const worse of [FLOODING, ['C,outlet,15,-1,8.36,'], ['C,outlet,40,0,8.35,'], ['C,outlet,0,-2,9.9,']])
      expect(outcome(ending(...worse, ...FREE))).toEqual(one);
  });

  test.each([0.5, 1, 2])('the fall is asked for over all of the pipe, sides at %s', (sides) => {
    const files = withItem(ending(...FREE), 'pond.csv', 'side_slope', `${sides}`);
    const assessed = judged(withItem(files, 'pond.csv', 'depth', '0.6', 'm'));
    const { drain, options } = resultOf(assessed);
    const { measures } = assessed.options.find(({ name }) => name === 'drain-to-outlet')!;
    const work = options.find((o) => o.option === 'drain-to-outlet')!.work!;
    const pipe = work.quantities.find(({ item }) => /^solid pipe/.test(item))!.amount / 1.05;
    // Where the fall to the outlet is short it decides the level that is held.
    const { drain: to } = measures!;
    if (to?.kind !== 'outlet') throw new Error('no outlet');
    const short: Measures = { ...measures!, drain: { ...to, outlet: { ...to.outlet, level: -0.61 } } };
    expect(drainLevel(short, -0.6)).toBeCloseTo(-0.61 + 0.01 * pipe, 6);
    if (drain && assessed.decision.depth === 0.6) expect(drain.fall_needed_m).toBeCloseTo(0.01 * pipe, 6);
    expect(pipe).toBeCloseTo(to.outlet.distance + assessed.site.pond.shape.sideSlope * 0.6, 6);
  });

  test('farther away never takes less pipe, and never gives a lower chance', () => {
    const at = [4, 8, 15, 22, 30].map((x) => option(ending(`end,outlet,${x},0,8.35,`), 'drain-to-outlet'));
    const pipes = at.map(({ work }) => work?.quantities.find(({ item }) => /^solid pipe/.test(item))?.amount);
    expect(pipes.filter((p) => p === undefined)).toEqual([]);
    for (let i = 1; i < at.length; i++) {
      expect(pipes[i]).toBeGreaterThan(pipes[i - 1]!);
      expect(at[i].risk_at_wish!.per_year).toBeGreaterThanOrEqual(at[i - 1].risk_at_wish!.per_year);
    }
  });

  test('a cut-off drain ends where it can, not at the nearest of all', () => {
    const high = 'step,outlet,3,0,10.2,';
    const run = (files: Files) =>
      option(files, 'cutoff-drain').work!.quantities.find(({ item }) => /^solid pipe/.test(item))!.amount;
    expect(run(ending(high, ...FREE))).toBe(run(ending(...FREE)));
    expect(run(ending(high, ...FREE))).toBeGreaterThan(10);
  });

  test('water is pumped to the place the pump moves most to, in any order', () => {
    const near = 'gully,discharge,14,9,10.75,';
    const far = 'drain,discharge,60,40,13.5,';
    const to = (files: Files) => judged(files).options.find(({ name }) => name === 'drain-to-sump')!.measures;
    expect(to(ending(near, far))).toEqual(to(ending(far, near)));
    expect(to(ending(far, near))?.drain).toMatchObject({ kind: 'sump', to: { name: 'gully' } });
  });

  test('of many outlets those that another beats are not judged', () => {
    const many = Array.from({ length: 20 }, (_, i) => `o${i},outlet,${15 + i * 0.1},0,${8.35 + i * 0.001},`);
    expect(outletsOf(basisOf(site(ending(...many)))).map(({ name }) => name)).toEqual(['o0']);
  });
});

describe('a way that is not said', () => {
  test('an outlet without a distance: no pipe of no length, but a question', () => {
    const files = ending('end,outlet,,,8.35,');
    const drain = option(files, 'drain-to-outlet');
    expect(drain).toMatchObject({ possible: false, governs: 'fall' });
    expect(drain.why_not).toContain('how far end is from the pond');
    const { warnings, recommendation } = resultOf(judged(files));
    expect(warnings).toContainEqual(
      expect.objectContaining({ code: 'missing-distance', file: 'levels.csv' }),
    );
    // Cleaned in another month it needs no drain: nothing has to be asked.
    expect(recommendation).toMatchObject({ option: 'no-drain', change: { emptied_in: [8] } });
    // A pond that its water lifts full has no such way.
    const flush = withItem(files, 'pond.csv', 'water_above_rim_ground', '-0.15', 'm');
    const asked = recommend(judged(withItem(flush, 'pond.csv', 'highest_raise', '0', 'm')));
    expect(asked.option).toBe('measure-first');
    expect(asked.reason).toContain('how far end is from the pond');
    expect(asked.rules.find(({ code }) => code === 'measure-first')?.text).toContain('how far end');
  });

  test('one whose distance is said beside it serves', () => {
    expect(outcome(ending('end,outlet,,,8.2,', ...FREE)).drain?.outlet).toBe('B');
  });

  test('footings and houses without a distance stand at the edge, and that is listed', () => {
    const rows = (distance: string) => [`wall,footing,,,9.6,${distance}`, `home,house,,,10.5,${distance}`];
    const { assumptions, warnings } = resultOf(judged(ending(...FREE, ...rows(''))));
    expect(assumptions.map(({ item }) => item)).toEqual(
      expect.arrayContaining(['distance of wall', 'distance of home']),
    );
    expect(warnings.filter(({ code }) => code === 'missing-distance')).toHaveLength(2);
    expect(outcome(ending(...FREE, ...rows('')))).toEqual(outcome(ending(...FREE, ...rows('0'))));
  });
});

describe('a boundary of which only the distance is known', () => {
  const taped = (setback?: string) => {
    const files = ending('end,outlet,,,8.35,15', 'end-high,flood,,,8.4,15', 'hedge,boundary,,,10,9');
    return setback ? withItem(files, 'site.csv', 'outlet_setback', setback, 'm') : files;
  };
  const said = (files: Files, word: string) => withItem(files, 'site.csv', 'outlet_within_boundary', word);

  test('rules nothing out, and what to ask comes first', () => {
    const { recommendation, assumptions, warnings } = resultOf(judged(taped()));
    expect(recommendation.option).toBe('drain-to-outlet');
    expect(recommendation.reason).toMatch(
      /^Ask first whether the way from the pond to end crosses the boundary/,
    );
    expect(recommendation.rules.map(({ code }) => code)).toContain('ask-way');
    expect(assumptions.map(({ item }) => item)).toContain('outlet_within_boundary');
    expect(warnings.map(({ code }) => code)).toContain('way-not-known');
  });

  test('one word settles it', () => {
    const yes = resultOf(judged(said(taped(), 'yes')));
    expect(yes.recommendation.option).toBe('drain-to-outlet');
    expect(yes.recommendation.reason).not.toContain('Ask first');
    expect(yes.warnings.map(({ code }) => code)).not.toContain('way-not-known');
    expect(option(said(taped(), 'no'), 'drain-to-outlet')).toMatchObject({
      possible: false,
      governs: 'discharge',
    });
    expect(recommend(judge(site(said(taped(), 'unknown'))))).toEqual(recommend(judge(site(taped()))));
  });

  test('so with the distance an outlet must keep from it', () => {
    const near = ending('end,outlet,,,8.35,15', 'end-high,flood,,,8.4,15', 'hedge,boundary,,,10,17');
    const within = (m: string) => judged(withItem(near, 'site.csv', 'outlet_setback', m, 'm'));
    expect(recommend(within('1.9')).reason).not.toContain('Ask first');
    expect(recommend(within('3')).option).toBe('drain-to-outlet');
    expect(recommend(within('3')).reason).toMatch(/^Ask first .* comes nearer to it than 3\.00 m/);
  });

  test('the same points on the plan leave nothing to ask', () => {
    const fence = (y: number) => [`f-a,boundary,-40,${y},10,`, `f-b,boundary,40,${y},10,`];
    const drawn = (y: number) =>
      ending('end,outlet,0,-16.7,8.35,', 'end-high,flood,0,-16.7,8.4,', ...fence(y));
    expect(option(drawn(9), 'drain-to-outlet').possible).toBe(true);
    expect(outcome(drawn(9)).recommendation.reason).not.toContain('Ask first');
    expect(option(drawn(-9), 'drain-to-outlet').possible).toBe(false);
  });
});
