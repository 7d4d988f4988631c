import type { Advice } from './optionNames.js';
import type { SpotResult } from './result.js';

/** {@link SpotResult} before it is put into words. */
export type RankedSpot = Omit<SpotResult, 'reason'> & {
  /** the planned spot, against which the others are told */
  against: string;
  /** water higher below the ground of the spot than below that of the planned one, m; negative: deeper */
  higher_m: number;
  /** how its water was found */
  by: 'plane' | 'nearest hole';
  /** the answer with the water higher by its spread; null: the same */
  if_higher: Advice | null;
};
