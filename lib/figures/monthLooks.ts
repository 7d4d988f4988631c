import type { Report } from '../contract/index.js';

/** A look into a hole; `at` counts months from the start of January. */
export interface MonthLook {
  at: number;
  level_m: number;
  says: 'level' | 'below' | 'above';
}

/** A day's length in months, for a look's place. */
const DAYS = 31;

/** Looks of all years laid over one. */
export function monthLooks({ dips }: Report): MonthLook[] {
  return dips.map(({ date, depth_m, says }) => {
    const [, month, day] = date.split('-').map(Number);
    return { at: month! - 1 + (day! - 0.5) / DAYS, level_m: -depth_m, says };
  });
}
