import { describe, expect, test } from 'vitest';
import { calendarOf, dayNumber, referenceEvaporation } from '../../lib/climate/index.js';
import { realDays, realWeather, STATIONS, type Station } from '../weather.js';

/** Yearly sums and the wettest day, mm. */
function byYear(station: Station) {
  const days = realDays(station);
  const record = realWeather(station);
  return [2012, 2013, 2014, 2015].map((year) => {
    const of = days.filter((d) => calendarOf(d.day).year === year);
    const from = dayNumber(year, 1, 1) - record.firstDay;
    const demand = record.demand.slice(from, from + of.length);
    return {
      days: of.length,
      rain: 1000 * of.reduce((sum, d) => sum + d.rain!, 0),
      wettest: 1000 * Math.max(...of.map((d) => d.rain!)),
      demand: 1000 * demand.reduce((a, b) => a + b, 0),
    };
  });
}

describe('real weather, vega-datasets weather.csv (NOAA)', () => {
  test('Seattle: rain, wettest day and evaporation of an independent computation', () => {
    // Computed apart from this library from the same file by FAO-56 eq. 21, 24 and 52, at 47.45° N.
    const expected = [
      { days: 366, rain: 1226.0, wettest: 54.1, demand: 799.09 },
      { days: 365, rain: 828.0, wettest: 43.4, demand: 832.03 },
      { days: 365, rain: 1232.8, wettest: 46.7, demand: 866.23 },
      { days: 365, rain: 1139.2, wettest: 55.9, demand: 898.85 },
    ];
    byYear('Seattle').forEach((year, i) => {
      expect(year.days).toBe(expected[i].days);
      expect(year.rain).toBeCloseTo(expected[i].rain, 6);
      expect(year.wettest).toBeCloseTo(expected[i].wettest, 6);
      expect(Math.abs(year.demand - expected[i].demand)).toBeLessThan(0.06);
    });
  });

  test('New York evaporates more than Seattle, and both sums are plausible', () => {
    const [seattle, newYork] = (['Seattle', 'New York'] as const).map(byYear);
    newYork.forEach((year, i) => {
      expect(year.demand).toBeGreaterThan(seattle[i].demand);
      // Plausible for the north-eastern US: 800 to 1200 mm of reference evaporation, 900 to 1500 mm of rain.
      expect(year.demand).toBeGreaterThan(800);
      expect(year.demand).toBeLessThan(1200);
      expect(year.rain).toBeGreaterThan(900);
      expect(year.rain).toBeLessThan(1500);
    });
  });

  test.each(STATIONS)('%s has every day, none filled', (station) => {
    const days = realDays(station);
    const record = realWeather(station);
    expect(days.length).toBe(4 * 365 + 1);
    expect(record.rain.length).toBe(days.length);
    expect(record.filled).toEqual({ rain: 0, demand: 0 });
    expect(record.years).toBe(3);
  });
});

test('nothing evaporates where the formula would turn negative or the range is nought', () => {
  expect(referenceEvaporation(50, 15, -30, -10)).toBe(0);
  expect(referenceEvaporation(50, 180, 12, 12)).toBe(0);
  expect(referenceEvaporation(50, 180, 12, 24)).toBeGreaterThan(0.003);
});

test('summer evaporates more than winter on either half of the globe', () => {
  expect(referenceEvaporation(50, 172, 8, 18)).toBeGreaterThan(4 * referenceEvaporation(50, 355, 8, 18));
  expect(referenceEvaporation(-50, 355, 8, 18)).toBeGreaterThan(4 * referenceEvaporation(-50, 172, 8, 18));
});
