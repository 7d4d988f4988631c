import { expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { recommend } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
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
