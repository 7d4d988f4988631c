import type { Basis } from '../basis/index.js';
import { levelOverSeams, monthsEmpty } from '../digging/index.js';
import { floorLevel, type Measures } from '../heads/index.js';

/**
 * Lowest pond level of a month (1–12) at which the floor over the seams heaves no more often than is accepted, m above
 * the datum; null: may be emptied. Seam and plug are of one sample, as where heaves are counted: both at their worst
 * together is rarer than either.
 * @param days - that it stands so from any day of the month; 0: in that month only
 */
export function seamLevel(
  { site, draws }: Basis,
  m: Measures,
  depth: number,
  month: number,
  days = site.pond.daysEmpty,
): number | null {
  if (site.ground.seams.length === 0) return null;
  const wanted = levelOverSeams(site, m, floorLevel(depth, m), monthsEmpty(month, days));
  const levels = Float64Array.from({ length: draws.samples }, (_, s) => {
    const scores = { head: draws.seamHead[s]!, weight: draws.unitWeight[s]! };
    return wanted(scores) ?? Number.NEGATIVE_INFINITY;
  }).sort();
  // As many samples as are accepted may want more.
  const accepted = Math.floor(site.pond.acceptedRisk * draws.samples + 1e-9);
  const level = levels[draws.samples - 1 - accepted] ?? Number.NEGATIVE_INFINITY;
  return level === Number.NEGATIVE_INFINITY ? null : level;
}
