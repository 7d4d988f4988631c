import type { Basis } from '../basis/index.js';
import { levelOverSeams, monthsEmpty } from '../digging/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { floorLevel, type Measures } from '../heads/index.js';

/**
 * Pond levels below which the floor over the seams heaves in some months (1–12), m above the datum, one a sample; −Infinity:
 * may be empty. Seam and plug are of one sample, as where heaves are counted: both at their worst together is rarer than either.
 */
function levelsWanted(
  { site, draws }: Basis,
  m: Measures,
  depth: number,
  months: readonly number[],
): Float64Array {
  const wanted = levelOverSeams(site, m, floorLevel(depth, m), months);
  return Float64Array.from({ length: draws.samples }, (_, s) => {
    const scores = { head: draws.seamHead[s]!, weight: draws.unitWeight[s]! };
    return wanted(scores) ?? Number.NEGATIVE_INFINITY;
  });
}

/**
 * Lowest pond level of a month (1–12) at which the floor over the seams heaves no more often than is accepted, m above
 * the datum; null: may be emptied.
 * @param days - that it stands so from any day of the month; 0: in that month only
 */
export function seamLevel(
  basis: Basis,
  m: Measures,
  depth: number,
  month: number,
  days = basis.site.pond.daysEmpty,
): number | null {
  if (basis.site.ground.seams.length === 0) return null;
  const levels = levelsWanted(basis, m, depth, monthsEmpty(month, days)).sort();
  // As many samples as are accepted may want more.
  const accepted = Math.floor(basis.site.pond.acceptedRisk * levels.length + 1e-9);
  const level = levels[levels.length - 1 - accepted] ?? Number.NEGATIVE_INFINITY;
  return level === Number.NEGATIVE_INFINITY ? null : level;
}

/** Share of years in which the floor heaves with the pond at a level in some months (1–12), 0 or 1 a sample. */
export function seamShares(
  basis: Basis,
  m: Measures,
  depth: number,
  months: readonly number[],
  level: number,
): Float64Array {
  return levelsWanted(basis, m, depth, months).map((wanted) => Number(wanted > level + LEVEL_RESOLUTION));
}
