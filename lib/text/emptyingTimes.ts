import type { Briefly } from '../contract/index.js';
import { duringMonths } from './monthWords.js';
import { timeWords } from './situationWords.js';

/**
 * Months in which a pond may stand empty, and for how long where that ends.
 * @param spells - months, 1–12, that end after so many days for one reason; none ends that has 0
 * @returns such as `from July to September, or in June for at most 45 hours`
 */
export function emptyingTimes(...spells: Pick<Briefly, 'months' | 'days'>[]): string {
  return spells
    .filter(({ months }) => months.length > 0)
    .map(
      ({ months, days }) =>
        `${duringMonths(months)}${days > 0 ? ` for at most ${timeWords(24 * days)}` : ''}`,
    )
    .join(', or ');
}
