import { readFileSync } from 'node:fs';
import { withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Daily weather of npm `vega-datasets` (NOAA, 2012–2015). */
const rows = readFileSync(
  new URL('../../node_modules/vega-datasets/data/weather.csv', import.meta.url),
  'utf8',
)
  .trim()
  .split('\n')
  .map((line) => line.split(','))
  .filter((row) => row.includes('Seattle'));
const WEATHER = `date,rain_mm,tmin_c,tmax_c\n${rows.map(([, date, rain, tmax, tmin]) => [date, rain, tmin, tmax].join(',')).join('\n')}\n`;

/** A flush pond in clay under daily weather. */
export function flush(
  item: string,
  value: string,
  { ring = '0', level = '0.15' } = {},
): Record<string, string> {
  const { 'heads.csv': _, ...base } = baseSurvey({});
  let files: Record<string, string> = { ...base, 'weather.csv': WEATHER };
  files['pond.csv'] = files['pond.csv'].replace(/^usual_drawdown.*\n/m, '');
  files = withItem(files, 'pond.csv', 'water_above_rim_ground', level, 'm');
  if (ring !== '0') {
    files = withItem(files, 'pond.csv', 'ring_width', ring, 'm');
    files = withItem(files, 'pond.csv', 'ring_cap', 'no');
  }
  return withItem(files, 'pond.csv', item, value, value === 'never' || item === 'overflow' ? '' : 'm');
}
