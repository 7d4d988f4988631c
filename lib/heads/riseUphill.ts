/** The water behind the uphill wall above that in the dip pipe, which lies at the low side. */
import { quantile, Remembered } from '../sampling/index.js';
import { monthValues, type Site } from '../site/index.js';
import type { Measures } from './measures.js';

/** Share of years in which the water rises no more from the low side to the uphill wall than is counted. */
export const MOSTLY = 0.9;

const rises = new Remembered<number>();

/**
 * How much higher the water stands behind the uphill wall than at the low side, where the dip pipe is, m; no less than nought.
 * @param month - 1–12
 */
export function riseUphill({ water }: Site, month: number): number {
  // Asked for every reading and at every step of the what-if.
  return rises.of(water, `${month}`, () => Math.max(quantile(risesOf(water, month), MOSTLY), 0));
}

/** How much higher the highest water of a month stands behind the uphill wall, m; index sample × years + year. */
export function risesOf({ clayLow, clayHigh }: Site['water'], month: number): Float64Array {
  const low = monthValues(clayLow.month, month);
  return monthValues(clayHigh.month, month).map((high, i) => high - low[i]!);
}

/** The most of it in any month that counts with measures, m: a drain under the floor leads it away. */
export function riseBelow(site: Site, { drain }: Measures): number {
  return drain ? 0 : Math.max(...Array.from({ length: 12 }, (_, month) => riseUphill(site, month + 1)));
}
