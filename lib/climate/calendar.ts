import { SECONDS_PER_DAY } from '../formula/index.js';

/** The months of a year, January = 1. */
export const MONTHS: readonly number[] = Array.from({ length: 12 }, (_, at) => at + 1);

/**
 * Calendar of a day counted from 1970-01-01 (UTC).
 * @param day - days since 1970-01-01, whole
 * @returns year, month 1–12, date 1–31, day of the year 1–366
 */
export function calendarOf(day: number): { year: number; month: number; date: number; dayOfYear: number } {
  const d = new Date(Math.floor(day) * SECONDS_PER_DAY * 1000);
  const year = d.getUTCFullYear();
  return {
    year,
    month: d.getUTCMonth() + 1,
    date: d.getUTCDate(),
    dayOfYear: Math.floor(day) - Date.UTC(year, 0, 1) / (SECONDS_PER_DAY * 1000) + 1,
  };
}

/**
 * Days since 1970-01-01 of a calendar date.
 * @param year - of the Gregorian calendar
 * @param month - 1–12
 * @param date - day of the month, 1–31
 * @returns days since 1970-01-01, whole; before it negative
 * @example
 * ```ts
 * dayNumber(2024, 2, 29); // 19782
 * ```
 */
export function dayNumber(year: number, month: number, date: number): number {
  return Date.UTC(year, month - 1, date) / (SECONDS_PER_DAY * 1000);
}

/**
 * ISO 8601 date of a day number.
 * @param day - days since 1970-01-01, whole
 * @returns `YYYY-MM-DD`
 * @example
 * ```ts
 * isoDate(19782); // '2024-02-29'
 * ```
 */
export function isoDate(day: number): string {
  return new Date(Math.floor(day) * SECONDS_PER_DAY * 1000).toISOString().slice(0, 10);
}

/**
 * November to April in the north, May to October in the south: when clay ground stands wet. Common practice.
 * @param month - 1–12
 * @param latitude - degrees, south negative; 0 counts as north
 * @returns true in those months
 */
export function isWetHalf(month: number, latitude: number): boolean {
  const winter = month >= 11 || month <= 4;
  return latitude >= 0 ? winter : !winter;
}

/**
 * The month in which a season begins: the first after the longest time without it, round the year.
 * @param months - of the season, 1–12, at least one
 * @returns 1–12; where the season never ends, or two pauses are as long, the earliest in the calendar
 * @example
 * ```ts
 * firstOfSeason([1, 2, 3, 4, 11, 12]); // 11
 * ```
 */
export function firstOfSeason(months: readonly number[]): number {
  const pauseBefore = (month: number) => {
    let pause = 0;
    while (pause < 12 && !months.includes(((month - pause + 10) % 12) + 1)) pause++;
    return pause;
  };
  return months.reduce((first, month) => (pauseBefore(month) > pauseBefore(first) ? month : first));
}
