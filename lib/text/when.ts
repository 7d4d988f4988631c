import { duringMonths } from './monthWords.js';

/** Months in which something may be: `in any month`, `in May`, `from May to July`. */
export function anyMonth(months: readonly number[]): string {
  return months.length === 12 ? 'in any month' : duringMonths(months);
}

/** A time that is had at least, in whole hours or days; `short` where it is less than an hour. */
export function hoursDown(hours: number, short: string, about = ''): string {
  return hours < 1
    ? short
    : `${about}${hours < 72 ? `${Math.floor(hours)} hours` : `${Math.floor(hours / 24)} days`}`;
}
