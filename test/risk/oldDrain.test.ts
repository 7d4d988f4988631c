import { describe, expect, test } from 'vitest';
import type { Recommendation, Result } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { oldDrainOf } from '../../lib/heads/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Looks into the dip pipe, whose mark is the ground at the rim: month of the winter of 2023 and depth, m. */
type Looks = [month: string, depth: number][];

const LOW: Looks = [
  ['2023-11', 1.17],
  ['2023-12', 1.16],
  ['2024-01', 1.18],
  ['2024-02', 1.17],
  ['2024-03', 1.16],
];

/** A pond that is there, 1.1 m deep in clay whose water stands at the ground, with a ditch below and looks into its pipe. */
function there(looks: Looks, facts: Record<string, string> = {}, outlet = true): Record<string, string> {
  let files: Record<string, string> = baseSurvey({ depth: 0.05, level: 0, drawdown: 0.05 });
  for (const [item, value] of Object.entries({
    state: 'existing',
    depth: '1.1',
    highest_raise: '0.1',
    emptied_in: '3',
    days_empty: '3',
    ...facts,
  }))
    files = withItem(
      files,
      'pond.csv',
      item,
      value,
      /^[\d.]+$/.test(value) && item !== 'emptied_in' ? (item === 'days_empty' ? 'd' : 'm') : '',
    );
  files = withItem(files, 'site.csv', 'discharge_allowed', 'yes');
  files['levels.csv'] += 'pipe,dip-pipe,1,10\n';
  if (outlet) files['levels.csv'] += 'mouth,outlet,18,8.4\nbeck,ditch,19,8.2\nhigh,flood,19,8.6\n';
  if (looks.length > 0)
    files['water.csv'] =
      `pit,date,reading,depth_m\n${looks.map(([month, depth]) => `dip-pipe,${month}-15,level,${depth}`).join('\n')}\n`;
  return files;
}

const judged = (files: Record<string, string>) => judge(siteModel(surveyOf(files), { samples: 64 }));
const ruleOf = ({ rules }: Recommendation) => rules.find(({ code }) => code === 'old-drain')?.text;

describe('an old drain under a pond that is there', () => {
  test('that held the water down through a winter is kept, and nothing is built', () => {
    const files = there(LOW);
    const told = judged(files);
    const { recommendation, options } = resultOf(told);
    expect(recommendation).toMatchObject({ option: 'drain-to-outlet', raise_m: 0, as_built: true });
    expect(recommendation.reason).toMatch(
      /^The old drain works: in 5 readings .* no higher than 1\.16 m below the lowest ground at the rim\. Nothing is rebuilt/,
    );
    expect(ruleOf(recommendation)).toMatch(/higher than 1\.10 m below .* the old drain has begun to stop/);
    expect(recommendation.rules.map(({ code }) => code)).not.toContain('rebuild');
    expect(options.find(({ option }) => option === 'drain-to-outlet')!.work!.quantities).toEqual([]);
    // Nobody knows its bed: it blocks oftener than one that is laid anew.
    const chance = ({ options }: Result) =>
      options.find(({ option }) => option === 'drain-to-outlet')!.risk_at_wish!;
    const [old, anew] = [chance(resultOf(told)), chance(resultOf(judged(there([]))))];
    expect(old.upkeep).toBeGreaterThan(1.5 * anew.upkeep);
    expect(old.per_year).toBeGreaterThan(anew.per_year);
  });

  test.each<[string, Looks, Record<string, string>]>([
    ['that nobody looked at in four wet months', LOW.slice(0, 3), {}],
    ['that a survey says is not there', LOW, { old_drain: 'no' }],
    ['of a pond that is planned', LOW, { state: 'planned' }],
    ['that nobody looked at', [], { old_drain: 'yes' }],
    [
      'over which the water once stood above the floor',
      [['2023-10', 1.17], ['2023-11', 0.9], ...LOW.slice(1)],
      {},
    ],
  ])('%s is not counted on', (_, looks, facts) => {
    const told = judged(there(looks, facts));
    expect(oldDrainOf(told.site)?.state).not.toBe('works');
    expect(recommend(told).as_built).toBe(false);
  });

  test('that stopped is told, and not counted on', () => {
    for (const facts of [{}, { old_drain: 'yes' }] as Record<string, string>[]) {
      const told = recommend(judged(there([...LOW, ['2024-04', 0.4]], facts)));
      expect(told.as_built).toBe(false);
      expect(ruleOf(told)).toMatch(
        /on 2024-04-15 the water under the liner stood 0\.40 m below .* flush it before anything is rebuilt/,
      );
    }
  });

  test.each<[string, Looks, Record<string, string>, boolean, RegExp]>([
    [
      'whose mouth nobody found',
      LOW,
      {},
      false,
      /Look for the mouth of an old drain before anything is built/,
    ],
    ['that stopped', [...LOW, ['2024-04', 0.4]], {}, true, /flush it before anything is rebuilt/],
    ['that nobody looked at', [], { old_drain: 'yes' }, true, /nobody has read the dip pipe in wet months/],
    [
      'that was once high and is low now',
      [['2023-10', 0.6], ['2023-11', 0.8], ...LOW.slice(1)],
      { old_drain: 'yes' },
      true,
      /some stood above the floor/,
    ],
    ['that was looked at twenty years ago', [...LOW, ['2044-07', 1.2]], {}, true, /too old/],
  ])('%s: looked up before any works', (_, looks, facts, outlet, words) => {
    // A look in July is of no wet month, but tells what day it is.
    const told = recommend(judged(there(looks, facts, outlet)));
    expect(told).toMatchObject({ option: 'measure-first', as_built: false });
    expect(told.reason).toMatch(words);
    expect(ruleOf(told)).toMatch(words);
  });

  test('is not read out of dry ground, whoever says that it is there', () => {
    const files = { ...there(LOW), 'heads.csv': baseSurvey({ depth: 1.2 })['heads.csv']! };
    expect(oldDrainOf(judged(files).site)).toBeUndefined();
    expect(oldDrainOf(judged(withItem(files, 'pond.csv', 'old_drain', 'yes')).site)).toMatchObject({
      state: 'untold',
    });
  });
});
