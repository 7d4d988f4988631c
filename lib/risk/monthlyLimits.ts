import { quantileSorted } from '../sampling/index.js';
import type { Site } from '../site/index.js';
import { headWith, secondsToLift } from './chance.js';
import type { Draws } from './draws.js';
import { floorLevel, type Measures } from './measures.js';

/** Month by month: how low the pond may be let, and how long it may stand empty. */
export interface MonthlyLimits {
  /** m above the datum, January first; null: may be emptied */
  lowestSafeLevel: (number | null)[];
  /** null: no limit */
  hoursEmpty: (number | null)[];
}

/** What a month's limits rest on. */
export interface MonthlyDesign {
  /** head outside that the month exceeds only as often as is accepted, m above the datum */
  high: number;
  /** level in the ring by the same measure, at most `high` */
  standing: number;
  /** permeability at the 90 % end, m/s */
  conductivity: number;
  /** liner's lowest point with the head that ballast holds there, m above the datum */
  holds: number;
}

/** Design values of a month (1–12) for measures at a depth. */
export function monthlyDesign(
  site: Site,
  draws: Draws,
  m: Measures,
  depth: number,
  month: number,
): MonthlyDesign {
  const { water, pond } = site;
  const floor = floorLevel(depth, m);
  const tub = water.tub?.[m.way].month;
  const receiver = m.drain?.kind === 'outlet' ? Math.max(m.drain.flood, m.drain.outlet.level) : floor;
  const headOf = headWith(m, floor);
  const n = draws.samples * draws.years;
  const heads = new Float64Array(n);
  const tubs = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const at = i * 12 + month - 1;
    tubs[i] = tub ? tub[at] : Number.NEGATIVE_INFINITY;
    heads[i] = headOf(water.clayLow.month[at], water.clayHigh.month[at], tubs[i], false, false, receiver);
  }
  const high = quantileSorted(heads.sort(), 1 - pond.acceptedRisk);
  return {
    high,
    standing: Math.min(quantileSorted(tubs.sort(), 1 - pond.acceptedRisk), high),
    conductivity: quantileSorted(Float64Array.from(water.conductivity).sort(), 0.9),
    holds: floor + pond.floorBallast + m.ballast,
  };
}

/**
 * Limits of measures at a depth: the level that the water outside exceeds in that month only as often as is
 * accepted, with the margin; and the time an emptied liner has then, with ground at the permeable end (90 %).
 */
export function monthlyLimits(site: Site, draws: Draws, m: Measures, depth: number): MonthlyLimits {
  const limits: MonthlyLimits = { lowestSafeLevel: [], hoursEmpty: [] };
  for (let month = 1; month <= 12; month++) {
    const { high, standing, conductivity, holds } = monthlyDesign(site, draws, m, depth, month);
    limits.lowestSafeLevel.push(high <= holds ? null : high + site.pond.margin - m.ballast);
    const seconds = secondsToLift(site, depth, holds, high, standing, conductivity);
    limits.hoursEmpty.push(Number.isFinite(seconds) ? seconds / 3600 : null);
  }
  return limits;
}
