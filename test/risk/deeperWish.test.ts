import { describe, expect, test } from 'vitest';
import { isOption } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const set = (files: Files, items: Record<string, string>) =>
  Object.entries(items).reduce((all, [item, cell]) => {
    const [value, unit = ''] = cell.split(' ');
    return withItem(all, 'pond.csv', item, value!, unit);
  }, files);
const monthly = (levels: number[], more = '') => ({
  'heads.csv': `place,month,depth_m,spread_m,source\n${levels.map((z, m) => `site,${m + 1},${z},0.05,pipe`).join('\n')}\n${more}`,
});
const HEADER =
  'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa\nP1,0,0.25,clay loam,rooted,none,firm,,\n';

/** What a pond so deep is answered with, m; 0 where none may be dug. */
function answer(files: Files, wish: number) {
  const { decision } = judge(
    siteModel(surveyOf(set(files, { depth: `${wish.toFixed(2)} m` })), { samples: 32 }),
  );
  const { option, depth, change, measures } = decision;
  return { deep: option === 'shallower' ? depth : isOption(option) ? wish : 0, change, measures };
}

/** Clay over sand under pressure, the rim may be raised: less is dug. */
const SEAM: Files = {
  ...set(baseSurvey({ level: 0.1 }), {
    length: '5 m',
    width: '3.5 m',
    side_slope: '0.5',
    highest_raise: '0.9 m',
    emptied_in: '8;9',
    days_empty: '3 d',
    built_in: '8;9',
  }),
  ...monthly([0.2, 0.15, 0.2, 0.5, 0.9, 1.3, 1.6, 1.8, 1.75, 1.3, 0.8, 0.4], 'below:P1,high,0.2,0.1,pipe\n'),
  'pits.csv': `${HEADER}P1,0.25,2.2,clay,massive,few,stiff,5e-9,60\nP1,2.2,3,sand,,,,1e-4,\n`,
};
/** Sandy loam planned to be dug in its wet season. */
const WET_DIG: Files = {
  ...set(baseSurvey({ level: 0.1 }), { length: '7 m', width: '5 m', emptied_in: 'never', built_in: '2;3' }),
  ...monthly([0.3, 0.25, 0.35, 0.6, 0.9, 1.1, 1.25, 1.4, 1.35, 1.1, 0.7, 0.4]),
  'pits.csv': `${HEADER}P1,0.25,3,sandy loam,,,,2e-5,\n`,
};
/** Cracked clay with water half a metre down all year, emptied for a day in a wet month. */
const SHALLOW_WATER: Files = {
  ...set(baseSurvey({ level: 0 }), {
    length: '4.9 m',
    width: '3.4 m',
    side_slope: '0.75',
    emptied_in: '3',
    days_empty: '7 d',
    built_in: '8;9',
  }),
  ...monthly([0.5, 0.5, 0.5, 0.52, 0.55, 0.57, 0.6, 0.6, 0.6, 0.57, 0.55, 0.52]),
  'pits.csv': `${HEADER}P1,0.25,2.5,clay,cracked,many,stiff,1e-6,60\n`,
};
const WISHES = [0.5, 0.65, 0.8, 0.95, 1.1, 1.25, 1.3, 1.4, 1.55, 1.6, 1.8, 2];

describe('a deeper wish', () => {
  test.each([
    ['a seam', SEAM, 1],
    ['a wet dig', WET_DIG, 1],
    // Less that may be emptied in another month comes before more that may not.
    ['shallow water', SHALLOW_WATER, 0.7],
  ] as const)('is answered by no less depth: %s', (_, site, share) => {
    let [most, full] = [0, 0];
    for (const wish of WISHES) {
      const { deep } = answer(site, wish);
      expect(deep, `${wish} m`).toBeGreaterThanOrEqual(share * most - 1e-9);
      expect(deep).toBeLessThanOrEqual(wish);
      most = Math.max(most, deep);
      full += Number(deep === wish);
    }
    // Some are had and some are not.
    expect(full).toBeGreaterThan(0);
    expect(full).toBeLessThan(WISHES.length);
  });

  test('than can be dug in any month is dug less deep in a better one, before another spot', () => {
    const { deep, change } = answer(WET_DIG, 1.4);
    expect(change?.built_in).toEqual([8]);
    // What is told can be had: that depth wished for is had in that month.
    expect(answer(set(WET_DIG, { built_in: '8' }), deep)).toMatchObject({ deep, change: undefined });
  });

  test('is met as far as the rim may be raised, where without it less than nearly as much is safe', () => {
    const { deep, measures } = answer(set(SEAM, { highest_raise: '0.7 m' }), 1.4);
    // What may be dug below the old ground, and 0.70 m above it.
    const dug = answer(set(SEAM, { highest_raise: '0 m' }), 1.4);
    expect(measures.raise).toBeCloseTo(0.7, 9);
    expect(deep).toBeCloseTo(dug.deep + 0.7, 9);
    expect(dug.measures.raise).toBe(0);
  });
});
