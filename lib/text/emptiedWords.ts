import { MONTHS } from '../climate/index.js';
import type { Failing, Rule } from '../contract/index.js';
import { emptyingTimes } from './emptyingTimes.js';
import { duringMonths } from './monthWords.js';
import { TELLING } from './usingRules.js';

interface Ruled {
  rules: readonly Rule[];
}

/**
 * When a pond as recommended may be emptied, as an order begun small; by the dip pipe alone where no month is free.
 * @param recommendation - with its rules
 * @param months - in which it may be, 1–12
 * @returns such as `emptied only from July to September, or in June for at most 45 hours`
 */
export function emptiedWords(recommendation: Ruled, months: readonly number[]): string {
  const only = emptiedOnly(recommendation, months);
  return only ? `emptied ${only}` : 'never emptied';
}

/** The same from `only` on; undefined where it may never be. */
export function emptiedOnly(recommendation: Ruled, months: readonly number[]): string | undefined {
  if (months.length > 0) return `only ${whenEmptied(recommendation, months)}`;
  const bound = recommendation.rules.filter(({ code }) => code === 'do-not-lower');
  if (!bound.some(({ subject }) => subject === 'unread')) return undefined;
  const never = bound.flatMap(({ subject, months = [] }) => (subject === 'barred' ? months : []));
  const others = MONTHS.filter((month) => !never.includes(month));
  // A few months left are easier found than a year with a gap.
  const but =
    never.length === 0
      ? ''
      : never.length > 6
        ? `, and then only ${duringMonths(others)}`
        : `, never ${duringMonths(never)}`;
  const below = recommendation.rules
    .map((rule) => (rule.code === 'do-not-lower' && rule.subject === 'unread' ? rule.values.below_m : 0))
    .reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
  const where =
    below <= -TELLING
      ? 'no higher over the floor than the slab holds'
      : below >= TELLING
        ? 'well below the floor'
        : 'below the floor';
  return `only when the dip pipe shows the water ${where}${but}`;
}

/**
 * The months themselves, with how long it may stand empty where that ends.
 * @param recommendation - with its rules
 * @param months - in which it may be emptied, 1–12
 * @returns such as `from July to September for at most 3 days, or in June for at most 45 hours`
 */
export function whenEmptied(ruled: Ruled, months: readonly number[]): string {
  const brief = briefly(ruled);
  const short = months.filter((month) => brief?.months.includes(month));
  const free = months.filter((month) => !short.includes(month));
  const freeFor = { months: free, days: freely(ruled) ?? 0 };
  return emptyingTimes(freeFor, { months: short, days: brief?.days ?? 0 });
}

/** Months in which time alone keeps it down, and that time; undefined where there are none. */
function briefly({ rules }: Ruled): { months: number[]; days: number } | undefined {
  const found = rules.map((rule) =>
    rule.code !== 'empty-only-in' ? null : rule.subject === 'briefly' ? rule.values : rule.values.briefly,
  );
  return found.find((each) => each !== null) ?? undefined;
}

/** Days that it may stand empty in the months that are free; undefined where it may stand so all of them. */
function freely({ rules }: Ruled): number | undefined {
  const days = rules.map((rule) =>
    rule.code === 'empty-only-in' && rule.subject === 'free' ? rule.values.days : 0,
  );
  return days.find((each) => each > 0);
}

/** Whether the time that it may stand empty is told with the months. */
export const isTimed = (ruled: Ruled) => briefly(ruled) !== undefined || freely(ruled) !== undefined;

/** What is to be done to the pond that it holds, after that it does. */
export const HOW_EMPTIED: Record<Failing['emptied'], string> = {
  planned: '',
  ruled: ', emptied only in the months given',
  never: ', never emptied',
};
