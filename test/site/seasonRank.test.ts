/** Ranks of wet seasons, by hand. */
import { expect, test } from 'vitest';
import { seasonRanks } from '../../lib/site/index.js';

const day = (date: string) => Date.parse(date) / 86_400_000;
const WET = [10, 11, 12, 1, 2, 3];
/** Six winters from October 2015 on, of 1 to 6 mm a day in this order, with summers of 9 mm a day. */
const WINTERS = [3, 1, 6, 2, 5, 4];
const first = day('2015-07-01');
const rain = Float64Array.from({ length: day('2021-07-01') - first }, (_, d) => {
  const date = new Date((first + d) * 86_400_000);
  const [year, month] = [date.getUTCFullYear(), date.getUTCMonth() + 1];
  return WET.includes(month) ? WINTERS[(month >= 10 ? year : year - 1) - 2015]! / 1000 : 0.009;
});
const record = { firstDay: first, rain, filled: { rain: 0, demand: 0 } };

test('the winter looked in is ranked by its rain, whatever the summers were', () => {
  const ranks = seasonRanks(record, WET, [day('2018-12-20'), day('2017-11-02'), day('2018-02-02')]);
  expect(ranks).toEqual([
    { from: { month: 10, year: 2017 }, to: { month: 3, year: 2018 }, rank: 1, of: 6 },
    { from: { month: 10, year: 2018 }, to: { month: 3, year: 2019 }, rank: 5, of: 6 },
  ]);
});

test('looks in summer rank nothing; nor do seasons that the record cuts, too few of them, or much rain filled in', () => {
  expect(seasonRanks(record, WET, [day('2018-06-20')])).toEqual([]);
  const cut = { ...record, rain: rain.subarray(0, day('2021-03-31') - first) };
  expect(seasonRanks(cut, WET, [day('2021-01-10')])).toEqual([]);
  expect(seasonRanks(cut, WET, [day('2018-01-10')])).toMatchObject([{ rank: 1, of: 5 }]);
  expect(seasonRanks({ ...cut, rain: rain.subarray(0, 1500) }, WET, [day('2018-01-10')])).toEqual([]);
  expect(seasonRanks({ ...record, filled: { rain: 300, demand: 0 } }, WET, [day('2018-01-10')])).toEqual([]);
});

test('a wet season within a year: April to September in the south', () => {
  const south = seasonRanks(record, [4, 5, 6, 7, 8, 9], [day('2018-06-20')]);
  expect(south).toMatchObject([{ from: { month: 4, year: 2018 }, to: { month: 9, year: 2018 } }]);
});
