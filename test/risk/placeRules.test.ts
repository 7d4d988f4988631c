import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Two years of days whose temperature swings round a mean, °C, lowest in January. */
function weather(mean: number): string {
  const rows = Array.from({ length: 731 }, (_, d) => {
    const at = mean - 10 * Math.cos((2 * Math.PI * (d - 15)) / 365.25);
    const date = new Date(Date.UTC(2020, 0, 1 + d)).toISOString().slice(0, 10);
    return `${date},2,${(at - 4).toFixed(1)},${(at + 4).toFixed(1)}`;
  });
  return `date,rain_mm,tmin_c,tmax_c\n${rows.join('\n')}\n`;
}

const rules = (files: Record<string, string>) =>
  recommend(judge(siteModel(surveyOf(files), { samples: 32 }))).rules.map(({ code }) => code);

test('ice is spoken of where the mean of a month lies below freezing', () => {
  const at = (mean: number) => ({ ...baseSurvey({ depth: 1.2 }), 'weather.csv': weather(mean) });
  expect(rules(at(9))).toContain('ice');
  expect(rules(at(11))).not.toContain('ice');
  expect(rules(baseSurvey({ depth: 1.2 }))).not.toContain('ice');
});

test('trees where the clay shrinks', () => {
  const files = baseSurvey({ depth: 1.2 });
  expect(rules(withItem(files, 'site.csv', 'shrinkable_clay', 'yes'))).toContain('trees');
  expect(rules(files)).not.toContain('trees');
});

describe('the trench of a cut-off drain', () => {
  /** Kept full and never emptied, on ground that rises by 0.12 m: the trench is 1 m deep, its far edge 0.8 m from the wall. */
  const withFooting = (distance: number, level = 10.1) => {
    let files = withItem(briefDemo('clay-slope'), 'pond.csv', 'emptied_in', 'never');
    files = withItem(files, 'pond.csv', 'water_above_rim_ground', '0.1', 'm');
    // Uphill of the long side.
    files['levels.csv'] += `wall,footing,0,${1.7 + distance},${level},\n`;
    const { options } = resultOf(judge(siteModel(surveyOf(files), { samples: 32 })));
    return options.find(({ option }) => option === 'cutoff-drain')!;
  };

  test('is none where it would lie below the 45° line from a footing', () => {
    // Underside of the footing 0.1 m above the lowest rim, bottom of the trench 0.88 m below: 0.98 m of way are wanted.
    const near = withFooting(0.8 + 0.9);
    expect(near.possible).toBe(false);
    expect(JSON.stringify(near)).toContain('45° line from the footing wall');
    expect(withFooting(0.8 + 1.1).possible).toBe(true);
  });
});
