import type { Recommendation, Situation } from '../contract/index.js';
import { emptiedWords } from './emptiedWords.js';
/** Months in which it may be emptied. */
export function emptyOrder(rows: Situation[], recommendation: Recommendation): string {
  const free = rows.filter(({ allowed }) => allowed).map(({ month }) => month!);
  const order = emptiedWords(recommendation, free);
  return order === 'never emptied' ? 'Never empty it.' : `Empty it ${order.replace(/^emptied /, '')}.`;
}
