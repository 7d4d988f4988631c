/** An emptying starts on any day of its month, lasts as long as it lasts, and runs into the next ones. */
import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { chancesOf, monthlyLimits } from '../../lib/reliability/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const DEPTHS = [0.4, 0.7, 1, 1.3];
const LOW = [0.3, 0.3, 0.35, 0.5, 0.8, 1.1, 1.4, 1.5, 1.5, 1.2, 0.7, 0.4];

/** Water month by month, high in winter; half a year later south of the equator. */
function seasons(south = false): Files {
  const files = baseSurvey({ spread: 0.08 });
  const months = LOW.map((_, m) => `site,${m + 1},${LOW[south ? (m + 6) % 12 : m]},0.08,six years in a pipe`);
  return {
    ...files,
    'site.csv': south ? files['site.csv'].replace('latitude,52', 'latitude,-52') : files['site.csv'],
    'heads.csv': `place,month,depth_m,spread_m,source\n${months.join('\n')}\n`,
  };
}

/** A demo in whose holes nobody looked: nothing is to be fitted. */
function unread(name: string): Files {
  const { 'water.csv': _, ...files } = briefDemo(name);
  return files;
}

const emptied = (files: Files, months: string, days: number) =>
  withItem(withItem(files, 'pond.csv', 'emptied_in', months), 'pond.csv', 'days_empty', `${days}`, 'd');
const basis = (files: Files) => basisOf(siteModel(surveyOf(files), { samples: 16 }));
const chances = (files: Files) => chancesOf(basis(files), NOTHING, DEPTHS).map(({ perYear }) => perYear);

const WATERS: [string, Files][] = [
  ['by weather, with a ring', unread('clay-hollow')],
  ['known month by month', seasons()],
  ['by weather', unread('clay-slope')],
];

describe.each(sweep(WATERS, 2))('%s', (_, files) => {
  test('a longer emptying is never safer, whatever the month', () => {
    for (const month of ['8', '3;9']) {
      const byDays = [1, 3, 40, 200].map((days) => chances(emptied(files, month, days)));
      for (let k = 1; k < byDays.length; k++)
        DEPTHS.forEach((_, d) => {
          expect(byDays[k][d]).toBeGreaterThanOrEqual(byDays[k - 1][d] - 1e-9);
        });
    }
  });

  test('begun in August for 200 days it is as wet as in December for five', () => {
    const [long, short] = [chances(emptied(files, '8', 200)), chances(emptied(files, '12', 5))];
    DEPTHS.forEach((_, d) => {
      expect(long[d]).toBeGreaterThanOrEqual(short[d] - 1e-9);
    });
  });

  test('for a year it is about the same whatever month it begins in', () => {
    const all = ['2', '5', '8', '11'].map((month) => chances(emptied(files, month, 365)));
    DEPTHS.forEach((_, d) => {
      const at = all.map((chance) => chance[d]);
      expect(Math.max(...at) - Math.min(...at)).toBeLessThan(0.08);
    });
  });

  test('a month that may be emptied may be for as long as planned, from any of its days', () => {
    for (const days of [2, 60]) {
      const of = basis(emptied(files, '8', days));
      for (const depth of DEPTHS) {
        const { lowestSafeLevel, liftTimes } = monthlyLimits(of, NOTHING, depth);
        lowestSafeLevel.forEach((level, m) => {
          if (level !== null) expect(level).toBeGreaterThan(-depth);
          else expect(liftTimes[m][1].seconds).toBeGreaterThanOrEqual(days * 86_400);
        });
      }
    }
  });
});

test('fewer months may be emptied the longer it lasts, and none for a year where a month is wet', () => {
  const free = [1, 20, 60, 120, 365].map((days) => {
    const { lowestSafeLevel } = monthlyLimits(basis(emptied(seasons(), '8', days)), NOTHING, 1);
    return lowestSafeLevel.flatMap((level, m) => (level === null ? [m + 1] : []));
  });
  expect(free[0]).toContain(8);
  expect(free.at(-1)).toEqual([]);
  for (let k = 1; k < free.length; k++) expect(free[k - 1]).toEqual(expect.arrayContaining(free[k]));
});

test('how long it may stand empty from a dry month on ends when the wet ones have come', () => {
  const { empty, lowestSafeLevel } = monthlyLimits(basis(emptied(seasons(), '8', 3)), NOTHING, 1);
  expect(lowestSafeLevel[7]).toBeNull();
  const days = empty[7].seconds / 86_400;
  // From the last of August: September and October below the floor, and November's water above it.
  expect(days).toBeGreaterThan(30);
  expect(days).toBeLessThan(120);
});

test('south of the equator half a year later it is the same', () => {
  const [north, south] = [emptied(seasons(), '9', 10), emptied(seasons(true), '3', 10)];
  chances(north).forEach((chance, d) => {
    // The months are not quite as long.
    expect(Math.abs(chances(south)[d] - chance)).toBeLessThan(0.02);
  });
});
