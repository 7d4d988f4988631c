import { LEVEL_RESOLUTION } from '../formula/index.js';
import { type Measures, undrainedHead } from '../heads/index.js';
import type { Basis } from './basis.js';

/**
 * Years in which the water outside stands above a level at some time of an emptying begun in a month, with no drain
 * working: 1, index sample × years + year.
 * @param month - 1–12
 * @param level - m above the datum
 */
export function standingAbove(
  { site: { water } }: Pick<Basis, 'site'>,
  { way, cutoff }: Pick<Measures, 'way' | 'cutoff'>,
  month: number,
  level: number,
): Float64Array {
  const { samples, years, clayLow, clayHigh, tub } = water;
  const [low, high, ring] = [clayLow.emptied, clayHigh.emptied, tub?.[way].emptied];
  const above = new Float64Array(samples * years);
  for (let of = 0, i = month - 1; of < above.length; of++, i += 12) {
    const standing = ring ? ring[i] : Number.NEGATIVE_INFINITY;
    if (undrainedHead(cutoff, low[i], high[i], standing) > level + LEVEL_RESOLUTION) above[of] = 1;
  }
  return above;
}
