import { monthWords } from './monthWords.js';

/** Months in which something holds: `all year`, `in May`. */
export function inMonths(months: number[]): string {
  return months.length === 12 ? 'all year' : `in ${monthWords(months)}`;
}

/** Months in which something may be: `in any month`, `in May`. */
export function anyMonth(months: number[]): string {
  return months.length === 12 ? 'in any month' : `in ${monthWords(months)}`;
}

/** A time that is had at least, in whole hours or days; `short` where it is less than an hour. */
export function hoursDown(hours: number, short: string, about = ''): string {
  return hours < 1
    ? short
    : `${about}${hours < 72 ? `${Math.floor(hours)} hours` : `${Math.floor(hours / 24)} days`}`;
}
