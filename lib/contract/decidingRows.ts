import type { Report } from './report.js';
import type { Situation } from './situation.js';

/** Rows of what is recommended, else of the wish with nothing done. */
export function decidingRows({ result }: Report): Situation[] {
  const advised = result.situations.filter(({ of }) => of === 'recommended');
  return advised.length > 0 ? advised : result.situations.filter(({ of }) => of === 'no-drain');
}
