import type { Report } from './report.js';
import { decidingSituations, type Situation } from './situation.js';

/** Rows of what is recommended, else of the wish with nothing done. */
export function decidingRows({ result }: Report): Situation[] {
  return decidingSituations(result.situations);
}
