import { MONTHS } from '../climate/index.js';
import type { Recommendation } from './result.js';

/** Months (1–12) with no level to keep to: it may be emptied on any day of them. */
export function monthsFree(lowestSafeLevel: readonly (number | null)[]): number[] {
  return lowestSafeLevel.flatMap((level, i) => (level === null ? [i + 1] : []));
}

/** Months in which a pond as recommended may be emptied, by its rules of use. */
export function monthsToEmpty({ rules }: Pick<Recommendation, 'rules'>): readonly number[] {
  const only = rules.find(({ code }) => code === 'empty-only-in')?.months;
  const bound = rules.some(({ code }) => code === 'do-not-lower');
  return only ?? (bound ? [] : MONTHS);
}
