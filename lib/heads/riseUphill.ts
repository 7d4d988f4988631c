/** The water behind the uphill wall above that in the dip pipe, which lies at the low side. */
import { quantile, Remembered } from '../sampling/index.js';
import { monthValues, type Site } from '../site/index.js';
import type { Measures } from './measures.js';

/** Share of years in which the water rises no more from the low side to the uphill wall than is counted. */
const MOSTLY = 0.9;

const rises = new Remembered<number>();

/**
 * How much higher the water stands behind the uphill wall than at the low side, where the dip pipe is, m; no less than nought.
 * @param month - 1–12
 */
export function riseUphill({ water }: Site, month: number): number {
  // Asked for every reading and at every step of the what-if.
  return rises.of(water, `${month}`, () => {
    const low = monthValues(water.clayLow.month, month);
    const rise = monthValues(water.clayHigh.month, month).map((high, i) => high - low[i]!);
    return Math.max(quantile(rise, MOSTLY), 0);
  });
}

/** The most of it in any month that counts with measures, m: a drain under the floor leads it away. */
export function riseBelow(site: Site, { drain }: Measures): number {
  return drain ? 0 : Math.max(...Array.from({ length: 12 }, (_, month) => riseUphill(site, month + 1)));
}
