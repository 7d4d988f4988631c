import { describe, expect, test } from 'vitest';
import {
  heatExponent,
  monthlyDayLength,
  thornthwaite,
  thornthwaiteHot,
  thornthwaiteYear,
} from '../../lib/climate/index.js';

const TEMPERATE = [4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5];

describe('Thornthwaite', () => {
  test('nothing in frozen months, and none at all in a frozen year', () => {
    const cold = [-8, -6, -1, 4, 9, 14, 16, 15, 10, 5, 0, -5];
    const year = thornthwaiteYear(cold, 60);
    cold.forEach((T, m) => {
      if (T <= 0) expect(year[m]).toBe(0);
      else expect(year[m]).toBeGreaterThan(0);
    });
    expect(thornthwaiteYear(Array(12).fill(-3), 60)).toEqual(Array(12).fill(0));
  });

  test('six months round, the southern half has the north’s year', () => {
    const swapped = [...TEMPERATE.slice(6), ...TEMPERATE.slice(0, 6)];
    const [north, south] = [thornthwaiteYear(TEMPERATE, 45), thornthwaiteYear(swapped, -45)];
    // The halves of the year differ by days of a month and hours of sun.
    north.forEach((mm, m) => {
      expect(Math.abs(south[(m + 6) % 12] / mm - 1)).toBeLessThan(0.11);
    });
  });

  test('all heat indices meet near 135 mm at 26.5 °C, where the hot branch takes over', () => {
    for (const I of [40, 80, 120]) {
      const usual = thornthwaite.compute(12, 30, 26.5, I, heatExponent.compute(I));
      expect(Math.abs(usual / 0.135 - 1)).toBeLessThan(0.01);
      expect(Math.abs(usual / thornthwaiteHot.compute(12, 30, 26.5) - 1)).toBeLessThan(0.02);
    }
  });

  test('refuses half a year, a furnace and the poles', () => {
    expect(() => thornthwaiteYear([1, 2, 3], 50)).toThrow('3 months instead of 12');
    expect(() => thornthwaiteYear(Array(12).fill(40), 10)).toThrow('40 °C is outside');
    expect(() => thornthwaiteYear([...TEMPERATE.slice(1), Number.NaN], 50)).toThrow('month 12 has none');
    expect(() => thornthwaiteYear(TEMPERATE, 80)).toThrow('latitude 80 deg is outside -65 to 65 deg');
  });
});

test('day lengths mirror at the equator, and a year averages about twelve hours', () => {
  const [north, south] = [monthlyDayLength(50), monthlyDayLength(-50)];
  north.forEach((hours, m) => {
    expect(Math.abs(hours + south[m] - 24)).toBeLessThan(1e-9);
  });
  expect(north.reduce((a, b) => a + b, 0) / 12).toBeCloseTo(12, 0);
  expect(north[5]).toBeGreaterThan(16);
  expect(north[11]).toBeLessThan(8.2);
});
