/** The water behind the uphill wall above that in the dip pipe, which lies at the low side. */
import { quantile } from '../sampling/index.js';
import type { Site } from '../site/index.js';
import type { Measures } from './measures.js';

/** Share of years in which the water rises no more from the low side to the uphill wall than is counted. */
const MOSTLY = 0.9;

/**
 * How much higher the water stands behind the uphill wall than at the low side, where the dip pipe is, m; no less than nought.
 * @param month - 1–12
 */
export function riseUphill({ water: { clayLow, clayHigh } }: Site, month: number): number {
  const rises = Float64Array.from(
    { length: clayLow.month.length / 12 },
    (_, i) => clayHigh.month[i * 12 + month - 1]! - clayLow.month[i * 12 + month - 1]!,
  );
  return Math.max(quantile(rises, MOSTLY), 0);
}

/** The most of it in any month that counts with measures, m: a drain under the floor leads it away. */
export function riseBelow(site: Site, { drain }: Measures): number {
  return drain ? 0 : Math.max(...Array.from({ length: 12 }, (_, month) => riseUphill(site, month + 1)));
}
