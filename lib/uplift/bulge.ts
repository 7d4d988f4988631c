import { method } from '../formula/index.js';

export const bulgeSigns = method({
  title: 'What lifts an existing bulge',
  what: 'Tells groundwater, a leak and gas apart by the level in a dip pipe beside the level of the pond.',
  assumptions: [
    'the dip pipe reaches the low point under the liner and was left long enough to fill',
    'levels within 20 mm of each other count as equal: reading error of a tape and a wet pipe',
    'water that stands under the liner but lower than the pond holds it down; what lifts it then is gas',
  ],
  source: 'level against level; common practice',
});

/** Difference of levels that a tape can tell, m. Our choice. */
const LEVELS_EQUAL = 0.02;

/** What may lift a bulge. */
export type BulgeCause = 'groundwater' | 'leak' | 'gas' | 'unknown';

/** Cause of a bulge, with the evidence. */
export interface Bulge {
  cause: BulgeCause;
  /** level under the liner − pond level, m; positive lifts; null where one is not known */
  difference: number | null;
}

/**
 * Tells apart what lifts a bulge.
 * @param pond - pond level, m above any mark; undefined: not known
 * @param under - level in the dip pipe, m above the same mark; `dry` where the pipe is dry to the floor
 * @returns what lifts it, and the difference of the levels, m
 */
export function bulgeCause(pond: number | undefined, under: number | 'dry' | undefined): Bulge {
  if (under === 'dry') return { cause: 'gas', difference: null };
  if (pond === undefined || under === undefined) return { cause: 'unknown', difference: null };
  const difference = under - pond;
  if (difference > LEVELS_EQUAL) return { cause: 'groundwater', difference };
  return { cause: difference >= -LEVELS_EQUAL ? 'leak' : 'gas', difference };
}
