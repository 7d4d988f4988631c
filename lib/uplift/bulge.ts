import { method } from '../formula/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

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
export const LEVELS_EQUAL = 0.02;

/** What may lift a bulge. */
export type BulgeCause = 'groundwater' | 'leak' | 'gas' | 'unknown';

/** Cause of a bulge, with the evidence in words. */
export interface Bulge {
  cause: BulgeCause;
  /** level under the liner − pond level, m; positive lifts; null where one is not known */
  difference: number | null;
  words: string;
}

/** Never with a bulge, whatever its cause. */
export const BULGE_NEVER = [
  'Never cut the bulge or weigh it down: the water comes through and the soil follows.',
  'Never lower or empty the pond to look: every bit taken out adds to the lift.',
];

/** What to do, by cause. */
export const BULGE_REMEDY: Record<BulgeCause, string> = {
  groundwater:
    'Top the pond up above the level in the dip pipe, let the water under the liner out slowly at the edge or by pumping the dip pipe, and keep rain and run-off away.',
  leak: 'Keep the pond full and watch a bucket of water beside it for a day: if the pond falls faster than the bucket, it leaks. Mend it when the ground is dry.',
  gas: 'Push the gas gently towards the edge and let it out under the lifted rim of the liner; then lay a vent at the high point.',
  unknown: 'Put a dip pipe to the low point beside the liner and read it and the pond on the same day.',
};

/**
 * Tells apart what lifts a bulge.
 * @param pond - pond level, m above any mark; undefined: not known
 * @param under - level in the dip pipe, m above the same mark; `dry` where the pipe is dry to the floor
 * @param units - of the words
 * @returns what lifts it, the difference of the levels, m, and the evidence in words; what to do is in
 *   {@link BULGE_REMEDY}
 */
export function bulgeCause(
  pond: number | undefined,
  under: number | 'dry' | undefined,
  units: UnitSystem = 'metric',
): Bulge {
  if (under === 'dry')
    return {
      cause: 'gas',
      difference: null,
      words: 'No water stands under the liner: what lifts it is gas, not water.',
    };
  if (pond === undefined || under === undefined)
    return {
      cause: 'unknown',
      difference: null,
      words: 'A bulge is water or gas under the liner; a dip pipe beside it would tell which.',
    };
  const difference = under - pond;
  if (difference > LEVELS_EQUAL)
    return {
      cause: 'groundwater',
      difference,
      words: `The water under the liner stands ${formatQuantity(difference, 'length', units)} above the pond: it is groundwater or storm water that lifts it, not a leak.`,
    };
  if (difference >= -LEVELS_EQUAL)
    return {
      cause: 'leak',
      difference,
      words:
        'The water under the liner stands as high as the pond: the liner leaks, or the two waters happen to be level.',
    };
  return {
    cause: 'gas',
    difference,
    words: 'The water under the liner stands below the pond: what lifts the liner is gas, not water.',
  };
}
