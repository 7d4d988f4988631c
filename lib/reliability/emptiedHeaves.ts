import type { Basis } from '../basis/index.js';
import { deepestFloorOver, monthsEmpty } from '../digging/index.js';
import { emptiedSlab, type Measures } from '../heads/index.js';

/**
 * First of ascending depths at which the emptied floor heaves, by plan of emptying and sample, their count where none
 * does; undefined without a seam.
 */
export function emptiedHeaves(
  { site, draws, emptyings }: Basis,
  m: Measures,
  depths: ArrayLike<number>,
): Uint16Array[] | undefined {
  if (site.ground.seams.length === 0) return undefined;
  const ballast = site.pond.floorBallast + emptiedSlab(m);
  return emptyings.plans.map((places) => {
    const first = new Uint16Array(draws.samples).fill(depths.length);
    if (places.length === 0) return first;
    const months = places.flatMap((q) => monthsEmpty(emptyings.months[q]! + 1, site.pond.daysEmpty));
    return first.map((_, s) => {
      const deepest = deepestFloorOver(site, draws, s, months, ballast);
      let j = 0;
      while (j < depths.length && depths[j]! - m.raise <= deepest) j++;
      return j;
    });
  });
}
