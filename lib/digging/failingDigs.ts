import type { Draws, Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { SIDE_FACTOR_WANTED } from '../uplift/index.js';
import { type DigPlan, deepestDug, dugDepth, holeLimits, pressedMonths } from './digging.js';
import { deepestFloorOver } from './heave.js';
import type { Sides } from './sides.js';

/** Simulated years in which a dig goes wrong, 1 where it does; index sample × years + year. */
interface FailingDigs {
  heave: Float64Array;
  /** the clay's strength is too small, or water slips ground that is no clay: whichever is oftener */
  slump: Float64Array;
  wet_floor: Float64Array;
}

/**
 * The years behind the chances of a dig, one by one: what {@link plannedDigs} counts.
 * @param m - measures; `raise` m
 * @param depth - from the rim to the liner's lowest point, m
 */
export function failingDigs(
  { site, draws, sides }: { site: Site; draws: Draws; sides: Sides },
  { months, low, uphill }: DigPlan,
  m: Measures,
  depth: number,
): FailingDigs {
  const { samples, years } = draws;
  const dug = dugDepth(site, m, depth);
  const deepest = deepestDug(site, m, depth);
  const { side, banked, slips, slipsUphill, wetAt } = holeLimits(site, depth, dug, m.raise);
  const stands = sides(side)?.dug;
  const count = (fails: (sample: number, year: number) => boolean) =>
    Float64Array.from({ length: samples * years }, (_, i) => Number(fails(Math.floor(i / years), i)));
  const weak = count((s) => dug > 0 && stands !== undefined && stands[s]! / SIDE_FACTOR_WANTED < banked);
  const slipping = count((_, i) => dug > 0 && (low[i]! > slips || uphill[i]! > slipsUphill));
  const total = (all: Float64Array) => all.reduce((a, b) => a + b, 0);
  // Nothing in the sample changes from year to year.
  const floors = Float64Array.from({ length: samples }, (_, s) =>
    deepestFloorOver(site, draws, s, pressedMonths(m, months)),
  );
  const wet = Float64Array.from({ length: samples }, (_, s) => wetAt(s));
  return {
    heave: count((s) => floors[s]! < deepest),
    slump: total(slipping) > total(weak) ? slipping : weak,
    // In the precision in which the mean of both sides is kept.
    wet_floor: count((s, i) => Math.fround((low[i]! + uphill[i]!) / 2) > wet[s]!),
  };
}
