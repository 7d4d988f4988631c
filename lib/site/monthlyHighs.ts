import { type ClimateRecord, calendarOf } from '../climate/index.js';
import { quantileSorted } from '../sampling/index.js';

/** Highest levels, m above the datum; index (sample × years + year) × 12 + month − 1. */
export interface MonthlyLevels {
  month: Float32Array;
  /** over the days a pond emptied on the first of the month stands empty */
  window: Float32Array;
}

/** Room for so many months, without a level yet. */
export function noLevels(n: number): MonthlyLevels {
  const nothing = Number.NEGATIVE_INFINITY;
  return { month: new Float32Array(n).fill(nothing), window: new Float32Array(n).fill(nothing) };
}

/** For each day: year × 12 + month − 1, or −1; and the same where the day lies in the window of emptying. */
export interface Slots {
  month: Int16Array;
  window: Int16Array;
}

/** The slots of a record's days. */
export function slotsOf(record: ClimateRecord, daysEmpty: number): Slots {
  const n = record.rain.length;
  const slots = { month: new Int16Array(n).fill(-1), window: new Int16Array(n).fill(-1) };
  for (let d = 0; d < n; d++) {
    if (record.year[d] < 0) continue;
    const c = calendarOf(record.firstDay + d);
    slots.month[d] = record.year[d] * 12 + record.month[d] - 1;
    if (c.date <= Math.max(daysEmpty, 1)) slots.window[d] = slots.month[d];
  }
  return slots;
}

/**
 * Keeps the highest level of each month.
 * @param offset - place of the first year's January
 */
export function keepHighest(out: MonthlyLevels, offset: number, slots: Slots, series: Float64Array): void {
  for (let d = 0; d < series.length; d++) {
    const m = slots.month[d];
    if (m < 0) continue;
    if (series[d] > out.month[offset + m]) out.month[offset + m] = series[d];
    const w = slots.window[d];
    if (w >= 0 && series[d] > out.window[offset + w]) out.window[offset + w] = series[d];
  }
}

/**
 * Middle of the highest levels of the deepest month, m above the datum.
 * @param n - samples × years
 */
export function deepestMonth({ month }: MonthlyLevels, n: number): number {
  const middles = Array.from({ length: 12 }, (_, m) =>
    quantileSorted(Float64Array.from({ length: n }, (_, i) => month[i * 12 + m]).sort(), 0.5),
  );
  return Math.min(...middles);
}
