import { describe, expect, test } from 'vitest';
import { isoDate } from '../../lib/climate/index.js';
import { Assumptions, ordinaryYearOf, recordOf, siteModel, wetMonthsOf } from '../../lib/site/index.js';
import type { Warning } from '../../lib/survey/index.js';
import { read } from '../survey/folder.js';
import { realDays } from '../weather.js';

/** Rain in summer, dry winters. */
const SUMMER_RAIN = [10, 10, 15, 25, 60, 180, 260, 240, 130, 40, 15, 10];
const climate = (rain: number[], demand: number) =>
  `month,rain_mm,et0_mm\n${rain.map((r, m) => `${m + 1},${r},${demand}`).join('\n')}\n`;
const ordinary = (file: string) => {
  const warnings: Warning[] = [];
  const year = ordinaryYearOf(read({ 'climate.csv': file }), 25, 0.1, warnings);
  return { year, codes: warnings.map((w) => w.code), warnings };
};

describe('climate.csv', () => {
  test('tells in which months the ground stands wet, and the month after each', () => {
    const { year, codes } = ordinary(climate(SUMMER_RAIN, 100));
    expect(codes).toEqual([]);
    expect(year!.wetMonths).toEqual([7, 8, 9]);
    const assume = new Assumptions();
    const best = { surplus: year!, file: 'climate.csv' as const };
    expect(wetMonthsOf(best, 25, assume)).toEqual(expect.arrayContaining([7, 8, 9, 10]));
    expect(wetMonthsOf(best, 25, assume)).not.toContain(1);
    expect(assume.list[0].reason).toMatch(/climate\.csv/);
    const site = siteModel(read({ 'climate.csv': climate(SUMMER_RAIN, 100), 'heads.csv': undefined }), {
      samples: 16,
    });
    // Nothing else is known: the water is taken at the ground in those months, in the monsoon and not in January.
    const depth = (month: number) => site.monthly!.low[month - 1];
    expect([depth(8), depth(10)]).toEqual([0, 0]);
    expect(depth(1)).toBeGreaterThan(0.2);
    expect(site.warnings.map((w) => w.code)).not.toContain('not-used');
  });

  test('without it, or where no month has water to spare, the hemisphere decides', () => {
    const assume = new Assumptions();
    expect(wetMonthsOf(undefined, 50, assume)).toEqual([1, 2, 3, 4, 11, 12]);
    expect(wetMonthsOf(undefined, -37, assume)).toEqual([5, 6, 7, 8, 9, 10]);
    expect(assume.list).toEqual([]);
    expect(
      wetMonthsOf({ surplus: ordinary(climate(SUMMER_RAIN, 300)).year!, file: 'climate.csv' }, 50, assume),
    ).toEqual([1, 2, 3, 4, 11, 12]);
    expect(assume.list[0].reason).toMatch(/no month/);
  });

  test.each([
    ['a gap', climate(SUMMER_RAIN, 100).replace('3,15,100', '3,,100'), /missing rain of month 3/],
    [
      'heat beyond the formula',
      `month,rain_mm,tmean_c\n${SUMMER_RAIN.map((r, m) => `${m + 1},${r},41`).join('\n')}\n`,
      /38/,
    ],
  ])('%s is told, not used and not fatal', (_, file, said) => {
    const { year, codes, warnings } = ordinary(file);
    expect(year).toBeUndefined();
    expect(codes).toEqual(['climate-not-used']);
    expect(warnings[0].message).toMatch(said);
  });
});

describe('weather.csv', () => {
  const days = realDays('Seattle');
  const file = (header: string, row: (d: (typeof days)[number]) => string) =>
    `date,rain_mm${header}\n${days.map((d) => `${isoDate(d.day)},${(d.rain! * 1000).toFixed(1)}${row(d)}`).join('\n')}\n`;
  const record = (weather: string, latitude = 47, climateFile?: string) => {
    const warnings: Warning[] = [];
    const survey = read({ 'weather.csv': weather, 'climate.csv': climateFile });
    const year = ordinaryYearOf(survey, latitude, 0.1, warnings);
    return {
      record: recordOf(survey, latitude, year, warnings),
      codes: warnings.map((w) => w.code),
      warnings,
    };
  };
  const sum = (v: Float64Array) => v.reduce((a, b) => a + b, 0);
  const ranged = record(file(',tmin_c,tmax_c', (d) => `,${d.tmin},${d.tmax}`));

  test('mean temperatures alone give evaporation by their months, about as much as daily ranges do', () => {
    const mean = record(
      file(',tmin_c,tmax_c', (d) => `,${(d.tmin! + d.tmax!) / 2},${(d.tmin! + d.tmax!) / 2}`),
    );
    expect(mean.codes).toEqual(['weather-means-only']);
    expect(mean.record!.demandFrom).toMatch(/^Thornthwaite/);
    expect(sum(mean.record!.demand) / sum(ranged.record!.demand)).toBeGreaterThan(0.6);
    expect(sum(mean.record!.demand) / sum(ranged.record!.demand)).toBeLessThan(1);
    expect(sum(mean.record!.tmean)).toBeCloseTo(sum(ranged.record!.tmean), 6);
  });

  test('evaporation alone counts all snow as rain, and says so', () => {
    const wet = record(file(',et0_mm', () => ',1.5'));
    expect(wet.codes).toEqual(['weather-no-temperature']);
    expect(wet.record!.demand[0]).toBeCloseTo(0.0015, 12);
  });

  test('rain alone is not used, unless climate.csv says what evaporates', () => {
    const rain = record(file('', () => ''));
    expect(rain.record).toBeUndefined();
    expect(rain.codes).toEqual(['weather-not-used']);
    expect(rain.warnings[0].message).toMatch(/missing evaporation: no day of month 1/);
    const helped = record(
      file('', () => ''),
      47,
      climate(SUMMER_RAIN, 62),
    );
    expect(helped.codes).toEqual(['weather-no-evaporation']);
    expect(helped.record!.demand[0]).toBeCloseTo(0.002, 12);
  });

  test('near the pole the sun of the last latitude is taken, and said', () => {
    const north = record(
      file(',tmin_c,tmax_c', (d) => `,${d.tmin},${d.tmax}`),
      69,
    );
    expect(north.codes).toEqual(['latitude-polar']);
    expect(north.record!.demand.every((v) => v >= 0)).toBe(true);
  });
});
