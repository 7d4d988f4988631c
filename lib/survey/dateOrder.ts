/** Days as people and spreadsheets write them, and the order of day and month that a column leaves. */

/** The order of a date in numbers. */
export type DateOrder = 'day first' | 'month first' | 'year first';

/** A day of the calendar as written, before it is known to exist. */
export interface Calendar {
  year: number;
  month: number;
  day: number;
}

/** English names, of which three letters are enough. */
const MONTHS = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

/** The month of an English name or the beginning of one, with or without a full stop; undefined for other words. */
export function namedMonth(word: string): number | undefined {
  const name = word.toLowerCase().replace(/\.$/, '');
  const at = name.length < 3 ? -1 : MONTHS.findIndex((month) => month.startsWith(name));
  return at === -1 ? undefined : at + 1;
}

/** Years of two figures: 1950 to 2049; the last half century and what is to come. */
const century = (year: number) => (year < 50 ? 2000 + year : 1900 + year);
const yearOf = (figures: string) => (figures.length === 2 ? century(Number(figures)) : Number(figures));

/** A date whose form says which number is which, or every order in which its numbers make a day. */
type Written = { sure: Calendar } | { open: ReadonlyMap<DateOrder, Calendar> };

/**
 * What a text means as a day. A month's name, points, and a year in four figures at the front leave one order of day
 * and month; strokes and hyphens leave several: so are dates written in the locales of the Unicode CLDR (short and
 * medium forms, looked up through `Intl`, and held by a test).
 * @param text without a time of day
 * @returns undefined where it is in none of these forms
 */
export function writtenDate(text: string): Written | undefined {
  const match = (form: RegExp) =>
    (form.exec(text)?.groups ?? undefined) as Record<'y' | 'm' | 'd', string> | undefined;
  const sure =
    match(/^(?<y>\d{4})(?<s>[-/.])(?<m>\d{1,2})\k<s>(?<d>\d{1,2})$/) ??
    match(/^(?<y>\d{4})\. (?<m>\d{1,2})\. (?<d>\d{1,2})\.?$/) ??
    match(/^(?<y>\d{4})(?<m>\d{2})(?<d>\d{2})$/) ??
    match(/^(?<d>\d{1,2})\. ?(?<m>\d{1,2})\. ?(?<y>\d{4}|\d{2})\.?$/) ??
    match(/^(?<d>\d{1,2})(?:st|nd|rd|th|\.)?[- ]?(?<m>[a-z]{3,9}\.?)[-, ]{0,2}(?<y>\d{4}|\d{2})$/i) ??
    match(/^(?<m>[a-z]{3,9}\.?)[- ]?(?<d>\d{1,2})(?:st|nd|rd|th)?[-, ]{1,2}(?<y>\d{4})$/i);
  if (sure) {
    const month = /^\d/.test(sure.m) ? Number(sure.m) : namedMonth(sure.m);
    return month === undefined ? undefined : { sure: { year: yearOf(sure.y), month, day: Number(sure.d) } };
  }
  const numbers = /^(\d{1,2})([-/])(\d{1,2})\2(\d{4}|\d{2})$/.exec(text);
  if (!numbers) return undefined;
  const [, one = '', , two = '', three = ''] = numbers;
  const orders: [DateOrder, string, string, string][] = [
    ['day first', three, two, one],
    ['month first', three, one, two],
    ...(three.length === 2 && one.length === 2 ? [['year first', one, two, three] as never] : []),
  ];
  const open = new Map<DateOrder, Calendar>();
  for (const [order, y, m, d] of orders) {
    const day = { year: yearOf(y), month: Number(m), day: Number(d) };
    if (isDay(day)) open.set(order, day);
  }
  return { open };
}

/** Does the calendar have that day? */
export function isDay({ year, month, day }: Calendar): boolean {
  const date = new Date(Date.UTC(year, month - 1, day));
  return month >= 1 && month <= 12 && date.getUTCFullYear() === year && date.getUTCDate() === day;
}

/** A reading that scatters the rows over more years than this is none where another keeps them within so many. */
const SCATTERED = 4;
const TOGETHER = 2;

/**
 * The order that fits every date of a column whose form leaves one open. Years of two figures read as days, and days
 * as such years, scatter the looks of a winter over decades.
 * @returns undefined where none or several do
 */
export function commonOrder(texts: readonly string[]): DateOrder | undefined {
  const rows = texts.flatMap((text) => {
    const written = writtenDate(text);
    return written && 'open' in written && written.open.size > 0 ? [written.open] : [];
  });
  const [first] = rows;
  const fitting = [...(first?.keys() ?? [])].filter((order) => rows.every((row) => row.has(order)));
  const years = (order: DateOrder) => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const row of rows) {
      const { year } = row.get(order) as Calendar;
      least = Math.min(least, year);
      most = Math.max(most, year);
    }
    return most - least;
  };
  const spans = fitting.map((order) => ({ order, span: years(order) }));
  const together = spans.some(({ span }) => span <= TOGETHER);
  const left = spans.filter(({ span }) => !together || span <= SCATTERED);
  return left.length === 1 ? left[0]?.order : undefined;
}
