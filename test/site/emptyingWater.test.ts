/** What an emptying meets, against the days of a series counted one by one. */
import { describe, expect, test } from 'vitest';
import { uniforms } from '../../lib/sampling/index.js';
import {
  daysCounted,
  keepEmptyings,
  keepHighestOf,
  keepMonthlyEmptyings,
  keepRises,
  meanRise,
  monthShares,
  monthsOfRecord,
  noLevels,
  noRises,
  RUNGS,
  rungBelow,
} from '../../lib/site/index.js';
import { realWeather } from '../weather.js';

const record = realWeather('Seattle');
const n = record.rain.length;
const LENGTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const LEVELS = Array.from({ length: 30 }, (_, i) => 0.2 - 0.1 * i);

/** A level that rises with rain and recedes, m above the datum. */
function series(seed: number): Float64Array {
  const next = uniforms(seed);
  const [deep, slow, rise] = [-0.5 - 2 * next(), 5 + 60 * next(), 10 + 20 * next()];
  let level = deep;
  return record.rain.map((rain) => {
    level = Math.min(deep + (level - deep) * (1 - 1 / slow) + rise * rain, 0.1);
    return level;
  });
}

function kept(levels: Float64Array, daysEmpty: number) {
  const water = noLevels(record.years * 12);
  const highest = water.emptied;
  const rises = noRises(highest.length);
  const months = monthsOfRecord(record);
  const empty = daysCounted(daysEmpty);
  keepHighestOf(water.month, 0, months, levels);
  keepEmptyings(water, 0, months, empty, levels);
  keepRises(rises, 0, months, empty, levels);
  return { highest, at: (slot: number, z: number) => meanRise(highest[slot], rises, slot, z, rungBelow(z)) };
}

/** The worst start's highest level, and mean height over a level; the last year again after the end. */
function counted(levels: Float64Array, slot: number, days: number, z: number) {
  const starts = Array.from({ length: n }, (_, d) => d).filter(
    (d) => record.year[d] * 12 + record.month[d] - 1 === slot,
  );
  let [highest, mean] = [-9, 0];
  for (const start of starts) {
    let sum = 0;
    for (let i = start; i < start + days; i++) {
      let d = i;
      while (d >= n) d -= 365;
      highest = Math.max(highest, levels[d]);
      sum += Math.max(levels[d] - z, 0);
    }
    mean = Math.max(mean, sum / days);
  }
  return { highest, mean };
}

describe.each([1, 4, 10, 45, 200])('emptied for %d days', (days) => {
  test('the highest is exact, and the mean height never less than it is: at a rung it is that', () => {
    for (const seed of [1, 2, 3]) {
      const levels = series(seed);
      const { highest, at } = kept(levels, days);
      for (let slot = 0; slot < highest.length; slot += 7) {
        expect(highest[slot]).toBeCloseTo(counted(levels, slot, days, 0).highest, 6);
        for (const z of RUNGS) expect(at(slot, z)).toBeCloseTo(counted(levels, slot, days, z).mean, 6);
        for (const z of LEVELS) {
          const { mean } = counted(levels, slot, days, z);
          expect(at(slot, z)).toBeGreaterThanOrEqual(mean - 1e-6);
          // Between rungs 0.3 to 0.7 m apart the line lies over the curve by no more than a quarter of that.
          expect(at(slot, z)).toBeLessThanOrEqual(mean + 0.7 / 4 + 1e-6);
        }
      }
    }
  });
});

test('a longer emptying meets no less water: in all, and at its highest', () => {
  for (const seed of [4, 5]) {
    const levels = series(seed);
    const lengths = [1, 2, 5, 14, 30, 90, 365];
    const all = lengths.map((days) => ({ days, ...kept(levels, days) }));
    for (let k = 1; k < all.length; k++)
      for (let slot = 0; slot < all[k].highest.length; slot++) {
        expect(all[k].highest[slot]).toBeGreaterThanOrEqual(all[k - 1].highest[slot]);
        for (const z of LEVELS)
          expect(all[k].at(slot, z) * all[k].days).toBeGreaterThanOrEqual(
            all[k - 1].at(slot, z) * all[k - 1].days - 1e-5,
          );
      }
  }
});

test('a year-long emptying meets about the same whatever month it starts in', () => {
  const { highest, at } = kept(series(6), 365);
  for (let month = 1; month < 12; month++) {
    // Of the first year: all of them reach into the second.
    expect(Math.abs(at(month, -1) / at(0, -1) - 1)).toBeLessThan(0.2);
    expect(highest[month]).toBeGreaterThan(-0.6);
  }
});

describe('known month by month', () => {
  const year = Float64Array.of(-0.1, -0.1, -0.3, -0.5, -0.9, -1.3, -1.7, -1.9, -1.8, -1.2, -0.6, -0.2);

  test.each([1, 3.5, 10, 31, 40, 200, 365])('for %d days it is that of the days one by one', (daysEmpty) => {
    const highest = new Float32Array(12);
    const rises = noRises(12);
    keepMonthlyEmptyings({ highest, rises }, 0, monthShares(daysEmpty), year);
    const days = daysCounted(daysEmpty);
    const daily = LENGTH.flatMap((length, m) => Array(length).fill(year[m]) as number[]);
    let first = 0;
    LENGTH.forEach((length, month) => {
      for (const z of RUNGS) {
        let [most, high] = [0, -9];
        for (let start = first; start < first + length; start++) {
          const all = Array.from({ length: days }, (_, i) => daily[(start + i) % 365]);
          most = Math.max(most, all.reduce((sum, level) => sum + Math.max(level - z, 0), 0) / days);
          high = Math.max(high, ...all);
        }
        expect(meanRise(highest[month], rises, month, z, rungBelow(z))).toBeCloseTo(most, 6);
        expect(highest[month]).toBeCloseTo(high, 6);
      }
      first += length;
    });
  });
});
