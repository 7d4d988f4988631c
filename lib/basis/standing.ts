import { LEVEL_RESOLUTION } from '../formula/index.js';
import { type Measures, undrainedHead } from '../heads/index.js';
import type { Basis } from './basis.js';

/**
 * Share of years in which the water outside stands above a level at some time of an emptying begun in a month, with no
 * drain working; one a sample.
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
  return Float64Array.from({ length: samples }, (_, s) => {
    let above = 0;
    for (let y = 0; y < years; y++) {
      const i = (s * years + y) * 12 + month - 1;
      const standing = ring ? ring[i] : Number.NEGATIVE_INFINITY;
      if (undrainedHead(cutoff, low[i], high[i], standing) > level + LEVEL_RESOLUTION) above++;
    }
    return above / years;
  });
}
