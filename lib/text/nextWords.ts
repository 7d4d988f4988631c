/** What to measure next, in sentences for the page and the end of every notebook. */

import { LEAST_CHANCE, type Recommendation, type Report } from '../contract/index.js';
import { monthName } from './monthWords.js';
import { isRimTaken, LEVEL_THE_RIM } from './rimTaken.js';
import { chanceText } from './say.js';

/** A measurement with its place, its month and what it may do to the answer; no capital, no stop. */
export function measurementWords({
  what,
  where,
  month,
  chance_to_change,
  waits,
}: Recommendation['measure_next'][number]): string {
  return `${what}, at ${where}${month === null ? '' : `, in ${monthName(month)}`}${chance_to_change < LEAST_CHANCE ? '' : `: chance to change the answer ${chanceText(chance_to_change)}`}${waits ? '; it takes a wet half-year' : ''}`;
}

/**
 * What to measure next, the most telling first.
 * @param report what was computed
 * @returns a sentence a measurement; one that says so where none would change the answer
 */
export function nextWords({ result }: Report): string[] {
  const { measure_next } = result.recommendation;
  const rim = isRimTaken(result) ? [`Measure next: ${LEVEL_THE_RIM}.`] : [];
  return measure_next.length + rim.length === 0
    ? [
        'Measure next: nothing that was tried would change the answer; read the dip pipe before the pond is lowered.',
      ]
    : [...rim, ...measure_next.map((next) => `Measure next: ${measurementWords(next)}.`)];
}
