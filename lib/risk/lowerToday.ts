import { isoDate } from '../climate/index.js';
import type { Judged } from './assess.js';
import { lowestLevel } from './monthlyLimits.js';
import { lastReading } from './readings.js';

/** What the last look into the dip pipe under the liner allows. Levels m above the datum. */
export interface LowerToday {
  date: string;
  /** 1–12 */
  month: number;
  /** water under the liner; for a dry pipe the floor of the pipe, below which it stands */
  water_m: number;
  dry: boolean;
  /** lowest pond level on that day; null: may be emptied */
  lowest_m: number | null;
  /** lowest level of that month without a dip; null: may be emptied */
  month_lowest_m: number | null;
}

/**
 * May the pond be lowered on the day of the last dip: to the water found under the liner and the margin, as long as
 * the pipe is read again before the next lowering. Pressure in a seam and sides that slip when bared stand against it:
 * the pipe shows neither.
 * @returns null where the dip pipe has not been read, or was found dry without saying how deep it is
 */
export function lowerToday({ site, basis, decision, limits }: Judged): LowerToday | null {
  const look = lastReading(site, 'dip-pipe');
  const water = look?.level;
  if (!look || water === undefined) return null;
  const date = isoDate(Math.floor(look.day));
  const month = Number(date.slice(5, 7));
  const depth = decision.depth || site.pond.depth;
  return {
    date,
    month,
    water_m: water,
    dry: look.dry,
    lowest_m: lowestLevel(basis, decision.measures, depth, month, { high: water, emptied: water }).level,
    month_lowest_m: limits.lowestSafeLevel[month - 1] ?? null,
  };
}
