import { expect, test } from 'vitest';
import { wetWinterShare, wetWinters } from '../../lib/site/index.js';
import { realWeather } from '../weather.js';

const WINTER = [1, 2, 3, 4, 11, 12];
const record = realWeather('Seattle');
const sum = (v: Float64Array, months: number[]) =>
  v.reduce((total, water, d) => total + (months.includes(record.month[d]) ? water : 0), 0);

test('a short record has a wet and a dry twin, whose spread is that of the mean of so few winters', () => {
  const [as, wet, dry] = wetWinters(record, WINTER);
  expect(as).toBe(record);
  const share = wetWinterShare(record.years);
  expect(sum(wet.rain, WINTER) / sum(as.rain, WINTER)).toBeCloseTo(1 + share, 9);
  expect(sum(dry.rain, WINTER) / sum(as.rain, WINTER)).toBeCloseTo(1 - share, 9);
  expect(sum(wet.rain, [6, 7])).toBeCloseTo(sum(as.rain, [6, 7]), 12);
  // Three equal points 0, ±a have the variance 2a²/3: here (0.25)²/3.
  expect((2 * share ** 2) / 3).toBeCloseTo(0.25 ** 2 / record.years, 12);
});

test('ten years stand for themselves', () => {
  expect(wetWinterShare(10)).toBe(0);
  expect(wetWinters({ ...record, years: 10 }, WINTER).length).toBe(1);
});
