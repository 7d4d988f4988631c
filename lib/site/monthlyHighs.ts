import type { ClimateRecord } from '../climate/index.js';
import { quantileSorted } from '../sampling/index.js';
import { monthValues } from './monthValues.js';

/** Highest levels, m above the datum; index (sample × years + year) × 12 + month − 1. */
export interface MonthlyLevels {
  month: Float32Array;
  /** over an emptying that starts on any day of the month */
  emptied: Float32Array;
}

/** Room for so many months, without a level yet; or for the emptyings of months whose levels are there. */
export function noLevels(n: number, month: Float32Array = nothingYet(n)): MonthlyLevels {
  return { month, emptied: nothingYet(n) };
}

const nothingYet = (n: number) => new Float32Array(n).fill(Number.NEGATIVE_INFINITY);

/** The months of a record, one after another by year: their first day and how many there are. */
export interface MonthsOfRecord {
  from: Int32Array;
  days: Uint8Array;
}

/** The months of the whole hydrological years of a record. */
export function monthsOfRecord(record: ClimateRecord): MonthsOfRecord {
  const from = new Int32Array(record.years * 12);
  const days = new Uint8Array(record.years * 12);
  record.year.forEach((year, d) => {
    if (year < 0) return;
    const slot = year * 12 + record.month[d] - 1;
    if (days[slot] === 0) from[slot] = d;
    days[slot]++;
  });
  return { from, days };
}

/**
 * Keeps the highest of each month.
 * @param highest - of the months of all samples and years
 * @param offset - place of the first year's January
 */
export function keepHighestOf(
  highest: Float32Array,
  offset: number,
  { from, days }: MonthsOfRecord,
  series: Float64Array,
): void {
  for (let slot = 0; slot < from.length; slot++) {
    let high = highest[offset + slot];
    for (let d = from[slot]; d < from[slot] + days[slot]; d++) if (series[d] > high) high = series[d];
    highest[offset + slot] = high;
  }
}

/**
 * The same of the sum of a water outside and what the pond lacks on the same day.
 * @param drawdown - of the pond, m below full
 */
export function keepHighestSum(
  highest: Float32Array,
  offset: number,
  { from, days }: MonthsOfRecord,
  series: Float64Array,
  drawdown: Float64Array,
): void {
  for (let slot = 0; slot < from.length; slot++) {
    let high = highest[offset + slot];
    for (let d = from[slot]; d < from[slot] + days[slot]; d++) {
      const sum = series[d] + drawdown[d];
      if (sum > high) high = sum;
    }
    highest[offset + slot] = high;
  }
}

/**
 * Middle of the highest levels of the deepest month, m above the datum.
 */
export function deepestMonth({ month }: MonthlyLevels): number {
  const middles = Array.from({ length: 12 }, (_, m) => quantileSorted(monthValues(month, m + 1).sort(), 0.5));
  return Math.min(...middles);
}
