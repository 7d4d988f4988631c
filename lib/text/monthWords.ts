import { listText } from './sentence.js';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/**
 * Months as a person says them: runs joined, round the year.
 * @param months - 1–12, in the order in which the runs are said
 * @returns text; empty for no month
 * @example
 * ```ts
 * monthWords([11, 12, 1, 2]); // 'November to February'
 * ```
 */
export function monthWords(months: readonly number[]): string {
  if (months.length === 12) return 'all year';
  const set = new Set(months);
  const starts = months.filter((m) => !set.has(m === 1 ? 12 : m - 1));
  return starts
    .map((start) => {
      let end = start;
      while (set.has((end % 12) + 1)) end = (end % 12) + 1;
      return end === start ? MONTHS[start - 1] : `${MONTHS[start - 1]} to ${MONTHS[end - 1]}`;
    })
    .join(', ');
}

/**
 * Months in which something is, as it is said in a sentence.
 * @param months - 1–12, in the order in which the runs are said
 * @returns such as `in May`, `from July to September` or `in May and from July to September`; `all year` of all twelve
 * @example
 * ```ts
 * duringMonths([5, 7, 8, 9]); // 'in May and from July to September'
 * ```
 */
export function duringMonths(months: readonly number[]): string {
  if (months.length === 12) return 'all year';
  const runs = monthWords(months).split(', ');
  const isRun = (at: number) => runs[at]?.includes(' to ');
  // `in` is said once for months that follow one another in the list.
  const said = runs.map((run, at) =>
    isRun(at) ? `from ${run}` : at > 0 && !isRun(at - 1) ? run : `in ${run}`,
  );
  return listText(said);
}

/**
 * Name of a month in English.
 * @param month - 1–12
 * @returns such as `March`
 */
export function monthName(month: number): string {
  return monthWords([month]);
}

/**
 * First three letters of a month in English, for axes and table columns.
 * @param month - 1–12
 * @returns such as `Mar`
 */
export function monthShort(month: number): string {
  return monthName(month).slice(0, 3);
}
