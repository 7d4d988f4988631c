/** What weather gains is said by figures, and they are worked out again here. */
import { expect, test } from 'vitest';
import { WEATHER_GAIN } from '../../lib/text/weatherGain.js';
import { adviceOf, bandOf, DEMOS, type Given, gardenOf, middle } from './gained.js';

const SAMPLES = 512;
const GIVEN: Given[] = ['neither', 'months', 'days'];

test.each(GIVEN)('how closely the yearly high is known after a winter of looks: %s', (given) => {
  const bands = DEMOS.map((name) => bandOf(gardenOf(name, given, true), SAMPLES));
  expect(middle(bands)).toBeCloseTo(WEATHER_GAIN.band_m[given], 2);
});

test.each(GIVEN)('how many get an answer from their holes alone: %s', (given) => {
  const advice = DEMOS.map((name) => adviceOf(gardenOf(name, given, false), SAMPLES));
  expect(advice.filter((option) => option !== 'measure-first')).toHaveLength(WEATHER_GAIN.answered[given]);
  expect(DEMOS).toHaveLength(WEATHER_GAIN.demos);
});
