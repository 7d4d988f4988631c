import type { BulgeCause } from '../uplift/index.js';
import type { Say } from './say.js';

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

/** What lifts a bulge, with the evidence; the level under the liner less that of the pond, null: one is not known. */
export function bulgeWords(
  { cause, difference_m }: { cause: BulgeCause; difference_m: number | null },
  { length }: Say,
): string {
  switch (cause) {
    case 'groundwater':
      return `The water under the liner stands ${length(difference_m!)} above the pond: it is groundwater or storm water that lifts it, not a leak.`;
    case 'leak':
      return 'The water under the liner stands as high as the pond: the liner leaks, or the two waters happen to be level.';
    case 'gas':
      return difference_m === null
        ? 'No water stands under the liner: what lifts it is gas, not water.'
        : 'The water under the liner stands below the pond: what lifts the liner is gas, not water.';
    case 'unknown':
      return 'A bulge is water or gas under the liner; a dip pipe beside it would tell which.';
  }
}
