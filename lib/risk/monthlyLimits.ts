import { quantile } from '../sampling/index.js';
import type { Site } from '../site/index.js';
import { type EmptyTime, emptyTime, LIFT_DEPTHS, secondsSidesAllow } from '../uplift/index.js';
import type { Basis } from './basis.js';
import { emptiedHold, secondsToLift } from './emptying.js';
import { relievedBy } from './head.js';
import { floorLevel, type Measures } from './measures.js';
import { UNIT_WEIGHT } from './sides.js';

/** Month by month: how low the pond may be let, and how long it may stand empty. */
export interface MonthlyLimits {
  /** m above the datum, January first; null: may be emptied */
  lowestSafeLevel: (number | null)[];
  /** the shorter of the time to lift and what the sides allow */
  empty: EmptyTime[];
  /** seconds until 10, 20 and 50 mm of water have come under the floor; Infinity never */
  liftTimes: { depth: number; seconds: number }[][];
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
  { site, highs }: Basis,
  m: Measures,
  depth: number,
  month: number,
): MonthlyDesign {
  const { water, pond } = site;
  const floor = floorLevel(depth, m);
  const p = 1 - pond.acceptedRisk;
  const receiver = m.drain?.kind === 'outlet' ? Math.max(m.drain.flood, m.drain.outlet.level) : floor;
  // A drain keeps the order of heads, so the head it leaves of the design head is the design head it leaves.
  const high = relievedBy(m, floor, 'works', receiver)(highs.monthly(m, month, p));
  return {
    high,
    standing: Math.min(highs.ring(m, month, p), high),
    conductivity: quantile(water.conductivity.slice(), 0.9),
    holds: emptiedHold(site, m, depth),
  };
}

/**
 * Limits of measures at a depth: the level that the water outside exceeds in that month only as often as is
 * accepted, with the margin; and the time an emptied pond has then, with ground at the permeable end (90 %) and
 * sides of middling strength with their factor.
 */
export function monthlyLimits(basis: Basis, m: Measures, depth: number): MonthlyLimits {
  const { site } = basis;
  const limits: MonthlyLimits = { lowestSafeLevel: [], empty: [], liftTimes: [] };
  for (let month = 1; month <= 12; month++) {
    const { high, standing, conductivity, holds } = monthlyDesign(basis, m, depth, month);
    limits.lowestSafeLevel.push(high <= holds ? null : high + site.pond.margin - m.ballast);
    const times = LIFT_DEPTHS.map((lifted) => ({
      depth: lifted,
      seconds: secondsToLift(site, depth, holds, high, standing, conductivity, lifted),
    }));
    limits.liftTimes.push(times);
    limits.empty.push(emptyTime(times[COUNTED].seconds, sidesAllow(site, m, depth, high)));
  }
  return limits;
}

/** Place of the depth that counts as lifted. */
const COUNTED = 1;

/** Seconds the bared sides stand with a head outside. */
function sidesAllow({ ground, pond }: Site, m: Measures, depth: number, head: number): number {
  const height = depth - m.raise;
  if (!ground.strength || height <= 0) return Number.POSITIVE_INFINITY;
  const clay = {
    strength: ground.strength.median,
    unitWeight: UNIT_WEIGHT.mean,
    edgingLoad: pond.edgingLoad,
  };
  const wetShare = Math.min(Math.max((head + height) / height, 0), 1);
  return secondsSidesAllow(clay, height, pond.shape.sideSlope, wetShare);
}
