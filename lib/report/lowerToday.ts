import { isoDate, MONTHS } from '../climate/index.js';
import type { LowerByReading, LowerToday } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import {
  floorLevel,
  fullLevel,
  lastReading,
  type Measures,
  NOTHING,
  reliefBounds,
  riseBelow,
  riseUphill,
  undrainedHead,
  withoutDrain,
} from '../heads/index.js';
import { lowestLevel, monthlyLimits } from '../reliability/index.js';

/** Water under the liner above which a drain is found not to work, m above the datum; null where there is none. */
function stoppedAbove(m: Measures, depth: number): number | null {
  const { drain } = m;
  if (!drain) return null;
  const receiver =
    drain.kind === 'outlet' ? Math.max(drain.flood, drain.outlet.level) : Number.NEGATIVE_INFINITY;
  return reliefBounds(m, floorLevel(depth, m), 'works', receiver).most + LEVEL_RESOLUTION;
}

/**
 * Lowest level by a reading: to the water found under the liner, and behind the uphill wall as far above it as it stands
 * there in the month, and the margin. A drain that lets it stand so high has stopped: then the month without it holds too.
 */
function lowestBy({ site, basis, decision }: Judged): (month: number, water: number) => number | null {
  const { measures, changed = basis } = decision;
  const depth = decision.depth || site.pond.depth;
  const stopped = stoppedAbove(measures, depth);
  const blocked = stopped === null ? undefined : monthlyLimits(changed, withoutDrain(measures), depth);
  const { highRim } = site.places;
  return (month, water) => {
    const works = stopped !== null && water <= stopped;
    const uphill = works ? water : Math.max(water, Math.min(water + riseUphill(site, month), highRim));
    const head = undrainedHead(measures.cutoff, water, uphill, water);
    const { level } = lowestLevel(changed, measures, depth, month, { high: head, emptied: head });
    const without = works ? null : (blocked?.lowestSafeLevel[month - 1] ?? null);
    return level === null ? without : Math.max(level, without ?? level);
  };
}

/**
 * May the pond be lowered on the day of the last dip, as long as the pipe is read again before the next lowering.
 * Pressure in a seam and sides that slip when bared stand against it: the pipe shows neither.
 * @returns null where the dip pipe has not been read, or was found dry without saying how deep it is
 */
export function lowerToday(a: Judged): LowerToday | null {
  const look = lastReading(a.site, 'dip-pipe');
  const water = look?.level;
  if (!look || water === undefined) return null;
  const date = isoDate(Math.floor(look.day));
  const month = Number(date.slice(5, 7));
  return {
    date,
    month,
    water_m: water,
    dry: look.dry,
    lowest_m: lowestBy(a)(month, water),
    month_lowest_m: a.limits.lowestSafeLevel[month - 1] ?? null,
  };
}

/** Spacing of the readings told of, m. */
const STEP = 0.05;

/**
 * The same for every reading from so far under the floor that the water uphill is there too, to above the full pond;
 * between two the higher one holds.
 */
export function lowerByReading(a: Judged): LowerByReading {
  const { site, decision } = a;
  const { measures } = decision;
  const depth = decision.depth || site.pond.depth;
  const floor = floorLevel(depth, measures) - riseBelow(site, measures);
  const steps = Math.ceil((fullLevel(site, measures) - floor) / STEP - 1e-9) + 4;
  const water = Array.from({ length: steps }, (_, i) => floor + (i - 1) * STEP);
  const lowest = lowestBy(a);
  return {
    water_m: water,
    lowest_m: MONTHS.map((month) => water.map((z) => lowest(month, z))),
    stopped_above_m: stoppedAbove(measures, depth),
    // Water above the floor says that a drain has stopped: then it counts there too.
    rise_m: riseBelow(site, NOTHING) - measures.ballast,
  };
}
