import type { EmptyTime } from '../uplift/index.js';

/** A failure of the emptied pond that the water under its liner tells nothing of. */
export type Barred = 'floor-heave' | 'side-slump';

/** Month by month: how low the pond may be let, and how long it may stand empty. */
export interface MonthlyLimits {
  /** m above the datum, January first; null: may be emptied on any day of it, for as long as planned */
  lowestSafeLevel: (number | null)[];
  /** the shorter of the time to lift and what the sides allow, from the day of the month on which it is shortest */
  empty: EmptyTime[];
  /** what keeps an emptied pond from standing, however low the water under its liner is found; null: nothing does */
  barred: (Barred | null)[];
  /** seconds until 10, 20 and 50 mm of water have come under the floor; Infinity never */
  liftTimes: { depth: number; seconds: number }[][];
}
