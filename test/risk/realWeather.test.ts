import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf } from '../folder.js';
import { baseSurvey } from './base.js';

/**
 * Daily weather that nobody here made: npm `vega-datasets` data/weather.csv, 2012–2015 (NOAA; the latitudes of
 * the two airports are from memory).
 */
const rows = readFileSync(
  new URL('../../node_modules/vega-datasets/data/weather.csv', import.meta.url),
  'utf8',
)
  .trim()
  .split('\n')
  .map((line) => line.split(','));
const at = (name: string) => rows[0].indexOf(name);
const weatherOf = (place: string) =>
  `date,rain_mm,tmin_c,tmax_c\n${rows
    .filter((r) => r[at('location')] === place)
    .map((r) => [r[at('date')], r[at('precipitation')], r[at('temp_min')], r[at('temp_max')]].join(','))
    .join('\n')}\n`;

describe.each([
  ['Seattle', 47.45, [11, 12, 1, 2, 3], [7, 8, 9]],
  ['New York', 40.78, [1, 2, 3, 4], [8, 9]],
] as const)('the whole chain on the weather of %s', (place, latitude, wet, dry) => {
  const files: Record<string, string> = {
    ...baseSurvey({ level: 0.05, drawdown: 0.1 }),
    'weather.csv': weatherOf(place),
  };
  delete files['heads.csv'];
  files['site.csv'] = files['site.csv'].replace('latitude,52', `latitude,${latitude}`);
  const result = resultOf(judge(siteModel(surveyOf(files), { samples: 200 })));
  const depth = (m: number) => result.water.by_month[m - 1].table_depth_m.p50;

  test('has all four years but the cut ends, and closes', () => {
    expect(result.water.model).toBe('daily water balance, from priors');
    expect(Math.abs(result.water.closure_mm)).toBeLessThan(1e-6);
  });

  test('puts the water near the ground in the wet months and deep in the dry ones', () => {
    for (const w of wet) for (const d of dry) expect(depth(w)).toBeLessThan(depth(d) - 0.3);
    expect(result.water.seasonal_high_depth_m.p50).toBeLessThan(0.25);
  });

  test('finds the pond drawn down below winter water unsafe', () => {
    expect(result.options[0].risk_at_wish!.per_year).toBeGreaterThan(0.1);
  });
});
