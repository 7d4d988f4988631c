/** What an option costs, in words. */
import type { PossibleOption } from '../contract/index.js';

/**
 * Cost in the money of prices.csv, and what is missing from it.
 * @param work - of the option
 * @returns text; null without prices
 */
export function costText({
  cost,
  unpriced,
}: Pick<PossibleOption['work'], 'cost' | 'unpriced'>): string | null {
  if (cost === null) return null;
  const missing = unpriced.length > 0 ? `, without ${unpriced.length} items that have no price` : '';
  return `${Math.round(cost)}${missing}`;
}
