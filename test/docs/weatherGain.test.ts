/** What weather would settle is told by how the water of the survey is known; the README has the figures that were measured. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { WEATHER_GAIN, weatherGainWords } from '../../lib/text/weatherGain.js';
import { surveyOf } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';
import { bandOf, type Given, gardenOf, reported } from './gained.js';

const README = readFileSync(join(PROJECT, 'README.md'), 'utf8');
const row = (begins: string) =>
  README.match(new RegExp(`^\\| ${begins}.*$`, 'm'))![0]
    .split('|')
    .slice(2, 5)
    .map((cell) => cell.trim());
const GIVEN: Given[] = ['neither', 'months', 'days'];
const SAMPLES = 64;

/** A garden of ours with the water of every month, and no weather. */
function byMonth() {
  const folder = join(PROJECT, 'test', 'surveys', 'T01-full-pond-above-the-water');
  const names = readdirSync(folder).filter((name) => name.endsWith('.csv'));
  return surveyOf(Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')])));
}

test('the README tells what was measured', () => {
  expect(row('looks through a winter')).toEqual(
    GIVEN.map((given) => `${WEATHER_GAIN.band_m[given].toFixed(2)} m`),
  );
  expect(row('holes alone')).toEqual(
    GIVEN.map((given) => `${WEATHER_GAIN.answered[given]} of ${WEATHER_GAIN.demos}`),
  );
  const known = byMonth();
  const { weather, climate } = {
    ...gardenOf('clay-slope', 'days', true),
    climate: gardenOf('clay-slope', 'months', true).climate,
  };
  expect(row('the water of every month')).toEqual(
    [known, { ...known, climate }, { ...known, weather }].map(
      (survey) => `${bandOf(survey, 512).toFixed(2)} m`,
    ),
  );
});

test.each(['metric', 'us'] as const)('it is said by how the water is known, in %s', (units) => {
  const said = (looks: boolean, given: Given) =>
    weatherGainWords(reported(gardenOf('clay-slope', given, looks), SAMPLES), units);
  expect(said(true, 'days')).toBe('');
  const survey = gardenOf('clay-slope', 'neither', true);
  const { p10, p90 } = reported(survey, SAMPLES).result.water.seasonal_high_depth_m;
  const [, width] = /known within (\S.*?)\. Ten/.exec(said(true, 'neither'))!;
  expect(width).toMatch(units === 'us' ? /^1 ft/ : /^0\.\d\d m$/);
  if (units === 'metric') expect(Number.parseFloat(width!)).toBeCloseTo(p90 - p10, 2);
  expect(said(true, 'months')).toContain('The twelve months that you gave');
  expect(said(false, 'neither')).toMatch(
    /^What was looked at so far does not tell.* three of our five .* none did\./,
  );
  expect(weatherGainWords(reported(byMonth(), SAMPLES), units)).toContain(
    'heads.csv tells it month by month',
  );
});

test('levels of the summer alone stand before any weather, so none is asked for', () => {
  const survey = gardenOf('clay-slope', 'neither', false);
  const summer = byMonth().heads.filter(({ month }) => month === 7 || month === 8);
  expect(summer.length).toBeGreaterThan(0);
  const report = reported({ ...survey, heads: summer }, SAMPLES);
  expect(report.result.recommendation.option).toBe('measure-first');
  expect(weatherGainWords(report)).toBe('');
});
