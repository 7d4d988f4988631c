import type { Report } from './report.js';

const YEAR = Array.from({ length: 12 }, (_, at) => at + 1);

/** Months in which it is to be emptied; none: never. */
export function monthsPlanned({ result, pond }: Report): number[] {
  return result.recommendation.change?.emptied_in ?? (pond.emptied_in === 'any' ? YEAR : pond.emptied_in);
}
