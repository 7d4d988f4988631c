import { quantileSorted } from '../sampling/index.js';
import type { Site } from '../site/index.js';
import type { Draws } from './draws.js';
import { headWith, secondsToLift } from './chance.js';
import { floorLevel, type Measures } from './measures.js';

/** Month by month: how low the pond may be let, and how long it may stand empty. */
export interface MonthlyLimits {
  /** m above the datum, January first; null: may be emptied */
  lowestSafeLevel: (number | null)[];
  /** null: no limit */
  hoursEmpty: (number | null)[];
}

/**
 * Limits of measures at a depth: the level that the water outside exceeds in that month only as often as is
 * accepted, with the margin; and the time an emptied liner has then, with ground at the permeable end (90 %).
 */
export function monthlyLimits(site: Site, draws: Draws, m: Measures, depth: number): MonthlyLimits {
  const { water, pond } = site;
  const floor = floorLevel(depth, m);
  const hold = pond.floorBallast + m.ballast;
  const tub = water.tub?.[m.way].month;
  const calm = m.drain?.kind === 'outlet' ? Math.max(m.drain.flood, m.drain.outlet.level) : floor;
  const k = quantileSorted(Float64Array.from(water.conductivity).sort(), 0.9);
  const headOf = headWith(m, floor);
  const n = draws.samples * draws.years;
  const heads = new Float64Array(n);
  const tubs = new Float64Array(n);
  const lowestSafeLevel: (number | null)[] = [];
  const hoursEmpty: (number | null)[] = [];
  for (let month = 0; month < 12; month++) {
    for (let i = 0; i < n; i++) {
      const at = i * 12 + month;
      tubs[i] = tub ? tub[at] : Number.NEGATIVE_INFINITY;
      heads[i] = headOf(water.clayLow.month[at], water.clayHigh.month[at], tubs[i], false, false, calm);
    }
    const high = quantileSorted(heads.slice().sort(), 1 - pond.acceptedRisk);
    const level = high + pond.margin - m.ballast;
    lowestSafeLevel.push(high <= floor + hold ? null : level);
    const standing = Math.min(quantileSorted(tubs.slice().sort(), 1 - pond.acceptedRisk), high);
    const seconds = secondsToLift(site, depth, floor + hold, high, standing, k);
    hoursEmpty.push(Number.isFinite(seconds) ? seconds / 3600 : null);
  }
  return { lowestSafeLevel, hoursEmpty };
}
