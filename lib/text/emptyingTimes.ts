import type { Briefly } from '../contract/index.js';
import { duringMonths } from './monthWords.js';
import { timeWords } from './situationWords.js';

/**
 * Months in which a pond may stand empty, and for how long where that ends.
 * @param spells - months, 1–12, that alike end after so many days; none ends that has 0
 * @returns such as `from July to September, or in June for at most 45 hours`; what ends alike is told together
 */
export function emptyingTimes(...spells: Pick<Briefly, 'months' | 'days'>[]): string {
  const byEnd = new Map<string, number[]>();
  for (const { months, days } of spells) {
    const end = days > 0 ? ` for at most ${timeWords(24 * days)}` : '';
    if (months.length > 0) byEnd.set(end, [...(byEnd.get(end) ?? []), ...months]);
  }
  return [...byEnd]
    .map(([end, months]) => `${duringMonths(months.sort((a, b) => a - b))}${end}`)
    .join(', or ');
}
