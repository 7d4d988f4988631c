import type { Recommendation } from '../contract/index.js';
import { monthWords } from './monthWords.js';

/**
 * When a pond as recommended may be emptied, as an order begun small; by the dip pipe alone where no month is free.
 * @param recommendation - with its rules
 * @param months - in which it may be, 1–12
 * @returns such as `emptied only in July to September`
 */
export function emptiedWords({ rules }: Pick<Recommendation, 'rules'>, months: number[]): string {
  if (months.length > 0) return `emptied only in ${monthWords(months)}`;
  const bound = rules.filter(({ code }) => code === 'do-not-lower');
  if (!bound.some(({ subject }) => subject === 'unread')) return 'never emptied';
  const never = bound.flatMap(({ subject, months = [] }) => (subject === 'barred' ? months : []));
  const but = never.length > 0 ? `, never in ${monthWords(never)}` : '';
  return `emptied only when the dip pipe shows the water below the floor${but}`;
}
