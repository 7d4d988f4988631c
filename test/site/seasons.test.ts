/** Which months are wet is told by the climate, however it is written down and wherever on Earth it is. */
import { describe, expect, test } from 'vitest';
import { DAYS_OF_MONTH, dayNumber, isoDate } from '../../lib/climate/index.js';
import { uniforms } from '../../lib/sampling/index.js';
import { type Site, siteModel } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

/** Monthly sums of rain and evaporation, mm. */
interface Climate {
  rain: number[];
  et0: number[];
}

/** A climate of one wet season, its middle, length and strength drawn. */
function drawn(seed: number): Climate {
  const next = uniforms(seed);
  const [middle, length, wettest] = [12 * next(), 2 + 4 * next(), 100 + 200 * next()];
  const months = Array.from({ length: 12 }, (_, m) => m);
  const off = (m: number, from: number) => Math.min((m - from + 24) % 12, (from - m + 24) % 12);
  return {
    rain: months.map((m) => 10 + Math.round(wettest * Math.max(1 - off(m, middle) / length, 0))),
    et0: months.map((m) => 70 + Math.round(30 * Math.cos((Math.PI * off(m, middle + 5)) / 6))),
  };
}

const half = <T>(year: T[]): T[] => [...year.slice(6), ...year.slice(0, 6)];
const shifted = (months: number[]) => months.map((m) => ((m + 5) % 12) + 1).sort((a, b) => a - b);

const asClimate = ({ rain, et0 }: Climate) =>
  `month,rain_mm,et0_mm\n${rain.map((r, m) => `${m + 1},${r},${et0[m]}`).join('\n')}\n`;

/** The same spread evenly over the days of three years. */
function asWeather({ rain, et0 }: Climate): string {
  const rows: string[] = [];
  for (let day = dayNumber(2001, 1, 1); day < dayNumber(2004, 1, 1); day++) {
    const date = isoDate(day);
    const m = Number(date.slice(5, 7)) - 1;
    rows.push(`${date},${(rain[m] / DAYS_OF_MONTH[m]).toFixed(6)},${(et0[m] / DAYS_OF_MONTH[m]).toFixed(6)}`);
  }
  return `date,rain_mm,et0_mm\n${rows.join('\n')}\n`;
}

function site(files: Record<string, string>, latitude = 22.5): Site {
  const survey = read({ ...files, 'site.csv': `item,value,unit,note\nlatitude,${latitude},deg,\n` });
  return siteModel(survey, { samples: 8 });
}

describe.each(Array.from({ length: 12 }, (_, i) => i + 1))('of a climate drawn by %d', (seed) => {
  const climate = drawn(seed);
  const mirrored = { rain: half(climate.rain), et0: half(climate.et0) };
  const byClimate = site({ 'climate.csv': asClimate(climate) });

  test('daily weather and climate.csv give the same wet months', () => {
    expect(site({ 'weather.csv': asWeather(climate) }).wetMonths).toEqual(byClimate.wetMonths);
  });

  test('half a year later on the other side of the equator they are half a year later', () => {
    expect(site({ 'climate.csv': asClimate(mirrored) }, -22.5).wetMonths).toEqual(
      shifted(byClimate.wetMonths),
    );
    expect(site({ 'weather.csv': asWeather(mirrored) }, -22.5).wetMonths).toEqual(
      shifted(byClimate.wetMonths),
    );
  });

  test('the wettest month is among them, where it has more rain than evaporates', () => {
    const { rain, et0 } = climate;
    const wettest = rain.indexOf(Math.max(...rain));
    // The root zone holds 0.15 m at most, which two such months fill.
    if (rain[wettest] - et0[wettest] > 100) expect(byClimate.wetMonths).toContain(wettest + 1);
  });
});

test('weather goes before a climate that says otherwise', () => {
  const monsoon = drawn(3);
  const other = { rain: half(monsoon.rain), et0: half(monsoon.et0) };
  const both = site({ 'weather.csv': asWeather(monsoon), 'climate.csv': asClimate(other) });
  expect(both.wetMonths).toEqual(site({ 'climate.csv': asClimate(monsoon) }).wetMonths);
  expect(both.assumptions.find(({ item }) => item === 'wet months')!.reason).toMatch(/^weather\.csv/);
});
