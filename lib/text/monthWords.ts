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
export function monthWords(months: number[]): string {
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
