import type { Report } from '../contract/index.js';
import { chanceText } from './say.js';

/**
 * What chances are counted over.
 * @param report - from {@link reportOf}
 * @returns sentences
 */
export function countedWords({ accepted_risk, life_years }: Report): string {
  return (
    `Chances are counted over draws of everything unknown and all years of the weather; accepted is ${chanceText(accepted_risk)} a year; its life is counted as ${life_years} years. ` +
    'Chances per dig are counted for one excavation and not added to those per year.'
  );
}
