import type { Recommendation, Situation } from '../contract/index.js';
import { emptiedWords } from './emptiedWords.js';
import { monthName } from './monthWords.js';
import { WHY_WORDS } from './terms.js';
/** Months in which it may be emptied. */
export function emptyOrder(rows: Situation[], recommendation: Recommendation): string {
  const free = rows.filter(({ allowed }) => allowed).map(({ month }) => month!);
  const order = emptiedWords(recommendation, free);
  return order === 'never emptied' ? 'Never empty it.' : `Empty it ${order.replace(/^emptied /, '')}.`;
}

/** That it fails in the month wished, and when it may be emptied. */
export function notThen(worst: Situation, rows: Situation[], recommendation: Recommendation): string {
  return `Not in ${monthName(worst.month!)}: ${WHY_WORDS[worst.why]} then. ${emptyOrder(rows, recommendation)}`;
}

/** When it may be emptied, and what happens else. */
export function failsEmpty(worst: Situation, rows: Situation[], recommendation: Recommendation): string {
  return `${emptyOrder(rows, recommendation)} In ${monthName(worst.month!)} ${WHY_WORDS[worst.why]} when empty.`;
}
