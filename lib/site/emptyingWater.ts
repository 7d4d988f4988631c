import { DAYS_OF_MONTH } from '../climate/index.js';
import { method } from '../formula/index.js';
import type { MonthlyLevels, MonthsOfRecord } from './monthlyHighs.js';

export const emptyingWater = method({
  title: 'Water outside over an emptying',
  what:
    'For an emptying of so many days from any day of a month: the highest level, and at a ladder of levels the mean ' +
    'height of the water above them, each of the start day at which it is most.',
  assumptions: [
    'which day it starts on is not known, and a month is called safe for any: the worst counts, in every year by itself',
    'an emptying runs on into the months and the water year that follow; after the end of a record its last year is repeated, ' +
      'and where the water is known month by month the same year',
    'known month by month, the highest of a month stands on every day of it',
    'the mean height above a level falls with it along a curve that is nowhere hollow from above, so that the straight ' +
      'line between two rungs, or a rung and the highest level, is never less than it',
  ],
  source: 'exact at the rungs; convexity between them',
});

/** Levels at which the mean height of the water is kept, m above the datum, from the highest down. Our choice. */
export const RUNGS = [0, -0.3, -0.6, -1, -1.5, -2.2];
const COUNT = RUNGS.length;

/** Room for the mean heights of so many months. */
export const noRises = (n: number) => new Float32Array(n * COUNT);

/** A pond is cleaned in a weekend, days. Our choice. */
export const WEEKEND = 2;

/** Days that count for an emptying: each begun day. */
export const daysCounted = (daysEmpty: number) => Math.max(Math.ceil(daysEmpty), 1);

/** A day after the end of a series as one of its last year. */
const dayAfter = (n: number) => (d: number) => d - 365 * Math.ceil((d - n + 1) / 365);

/**
 * Keeps the highest level that an emptying from each month of a record meets: that of the month, or of the days that follow.
 * @param levels - with the highest of the months
 * @param offset - place of the first year's January
 * @param empty - days counted of an emptying
 * @param series - level day by day, m above the datum
 */
export function keepEmptyings(
  { month, emptied }: MonthlyLevels,
  offset: number,
  { from, days }: MonthsOfRecord,
  empty: number,
  series: Float64Array,
): void {
  const n = series.length;
  const day = dayAfter(n);
  for (let slot = 0; slot < from.length; slot++) {
    let high = month[offset + slot];
    const end = from[slot] + days[slot];
    for (let d = end; d < end + empty - 1; d++) {
      const level = series[d < n ? d : day(d)];
      if (level > high) high = level;
    }
    emptied[offset + slot] = high;
  }
}

/** Keeps the mean heights of the same; index month × rungs + rung. */
export function keepRises(
  rises: Float32Array,
  offset: number,
  { from, days }: MonthsOfRecord,
  empty: number,
  series: Float64Array,
): void {
  const n = series.length;
  const day = dayAfter(n);
  // The days that the emptyings of one month meet.
  const met = new Float64Array(31 + empty);
  for (let slot = 0; slot < from.length; slot++) {
    const count = days[slot] + empty - 1;
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < count; i++) {
      const d = from[slot] + i;
      const level = series[d < n ? d : day(d)];
      met[i] = level;
      if (level < low) low = level;
      if (level > high) high = level;
    }
    const first = (offset + slot) * COUNT;
    for (let k = 0; k < COUNT; k++) {
      if (high <= RUNGS[k]) continue;
      // Water that is always above a rung is above the next by their distance more.
      rises[first + k] =
        k > 0 && low >= RUNGS[k - 1]
          ? rises[first + k - 1] + RUNGS[k - 1] - RUNGS[k]
          : highestMeanAbove(met, days[slot], empty, RUNGS[k]);
    }
  }
}

/** Highest mean height over a level of so many days that begin on one of the first. */
function highestMeanAbove(levels: Float64Array, starts: number, empty: number, level: number): number {
  let sum = 0;
  for (let i = 0; i < empty; i++) sum += above(levels[i], level);
  let best = sum;
  for (let i = 1; i < starts; i++) {
    sum += above(levels[i + empty - 1], level) - above(levels[i - 1], level);
    if (sum > best) best = sum;
  }
  return best / empty;
}

/** Height over a level, 0 below it; without a branch, which the seasons would lead astray. */
const above = (z: number, level: number) => 0.5 * (z - level + Math.abs(z - level));

/** For each month the start days that may be the worst: the share of the emptying that lies in each month, in order from it. */
export type MonthShares = Float64Array[][];

/** @param daysEmpty - as planned, days */
export function monthShares(daysEmpty: number): MonthShares {
  const empty = daysCounted(daysEmpty);
  return DAYS_OF_MONTH.map((length, month) => {
    const at = (start: number) => {
      const shares: number[] = [];
      for (let left = empty, m = month, used = start; left > 0; m = (m + 1) % 12, used = 0) {
        const days = Math.min(DAYS_OF_MONTH[m] - used, left);
        shares.push(days / empty);
        left -= days;
      }
      return Float64Array.from(shares);
    };
    // From one start to the next a day of this month is left and one of the last is won: the worst is the first, the
    // last, or one that ends with a month.
    const starts = new Set([0, length - 1]);
    for (let m = month, end = 0; end < length + empty; m = (m + 1) % 12) {
      end += DAYS_OF_MONTH[m];
      if (end >= empty && end - empty < length) starts.add(end - empty);
    }
    return [...starts].map(at);
  });
}

/**
 * The same where the water is known month by month.
 * @param offset - place of the year's January
 * @param levels - of the twelve months, m above the datum
 */
export function keepMonthlyEmptyings(
  { highest, rises }: { highest?: Float32Array; rises?: Float32Array },
  offset: number,
  shares: MonthShares,
  levels: ArrayLike<number>,
): void {
  const sums = new Float64Array(COUNT);
  const most = new Float64Array(COUNT);
  for (let month = 0; month < 12; month++) {
    let high = Number.NEGATIVE_INFINITY;
    most.fill(0);
    for (const start of shares[month]) {
      sums.fill(0);
      for (let i = 0; i < start.length; i++) {
        const level = levels[(month + i) % 12];
        if (level > high) high = level;
        for (let k = 0; k < COUNT && RUNGS[COUNT - 1 - k] < level; k++)
          sums[COUNT - 1 - k] += start[i] * (level - RUNGS[COUNT - 1 - k]);
      }
      for (let k = 0; k < COUNT; k++) if (sums[k] > most[k]) most[k] = sums[k];
    }
    if (highest) highest[offset + month] = high;
    rises?.set(most, (offset + month) * COUNT);
  }
}

/**
 * Mean height of the water above a level over an emptying, never less than it is; see {@link emptyingWater}.
 * @param highest - level of that water, m above the datum
 * @param rises - mean heights above the rungs
 * @param month - which of them
 * @param level - m above the datum
 * @param rung - first that is not above the level; their count where none is
 * @returns m; 0 where the level is not reached
 */
export function meanRise(
  highest: number,
  rises: Float32Array,
  month: number,
  level: number,
  rung: number,
): number {
  if (highest <= level) return 0;
  const first = month * COUNT;
  if (rung === COUNT) return rises[first + COUNT - 1] + RUNGS[COUNT - 1] - level;
  const capped = rung === 0 || highest <= RUNGS[rung - 1];
  const top = capped ? highest : RUNGS[rung - 1];
  const above = capped ? 0 : rises[first + rung - 1];
  const below = rises[first + rung];
  return above + ((below - above) * (top - level)) / (top - RUNGS[rung]);
}

/** First rung that is not above a level; their count where none is. */
export function rungBelow(level: number): number {
  const rung = RUNGS.findIndex((z) => z <= level);
  return rung < 0 ? COUNT : rung;
}
