import { isoDate } from '../climate/index.js';
import type { LowerByReading, LowerToday } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { floorLevel, fullLevel, lastReading } from '../heads/index.js';
import { lowestLevel } from '../reliability/index.js';

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

/** Spacing of the readings told of, m. */
const STEP = 0.05;

/**
 * The same for every reading from under the floor to above the full pond; between two the higher one holds.
 */
export function lowerByReading({ site, basis, decision }: Judged): LowerByReading {
  const { measures, changed = basis } = decision;
  const depth = decision.depth || site.pond.depth;
  const floor = floorLevel(depth, measures);
  const steps = Math.ceil((fullLevel(site, measures) - floor) / STEP - 1e-9) + 4;
  const water = Array.from({ length: steps }, (_, i) => floor + (i - 1) * STEP);
  return {
    water_m: water,
    lowest_m: Array.from({ length: 12 }, (_, month) =>
      water.map((z) => lowestLevel(changed, measures, depth, month + 1, { high: z, emptied: z }).level),
    ),
  };
}
