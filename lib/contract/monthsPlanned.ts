import { MONTHS } from '../climate/index.js';
import type { Report } from './report.js';

/** Months in which it is to be emptied; none: never. */
export function monthsPlanned({ result, pond }: Report): readonly number[] {
  return result.recommendation.change?.emptied_in ?? (pond.emptied_in === 'any' ? MONTHS : pond.emptied_in);
}
