import type { Basis } from '../basis/index.js';
import { drawdownOf } from '../basis/index.js';
import type { Barred, MonthlyLimits } from '../contract/index.js';
import { shareAllowed, sideUphill, sideWithBank, UNIT_WEIGHT } from '../digging/index.js';
import { formula, LEVEL_RESOLUTION, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import { emptiedHold, floorLevel, fullLevel, type Measures, relievedBy } from '../heads/index.js';
import { permeabilityAround, type Site, strengthAt } from '../site/index.js';
import { logPercentiles } from '../soil/index.js';
import {
  type EmptyTime,
  emptyTime,
  higherWater,
  LIFT_DEPTHS,
  lowestUsual,
  secondsSidesAllow,
} from '../uplift/index.js';
import { keptLevel, lowestAsKept } from './keptLevel.js';
import { type MonthWater, soonestLift } from './liftByMonth.js';
import { seamLevel } from './seamLevel.js';

/** What a month's limits rest on. */
interface MonthlyDesign extends MonthWater {
  /** head outside that the month exceeds only as often as is accepted, m above the datum */
  high: number;
  /** the same of the emptyings that start in it, which run into the next */
  emptied: number;
  /** permeability at the 90 % end, m/s */
  permeability: number;
  /** liner's lowest point with the head that ballast holds there, m above the datum */
  holds: number;
}

/** Design values of a month (1–12) for measures at a depth; the heads recorded by `use`. */
export function monthlyDesign(
  { site, highs }: Basis,
  m: Measures,
  depth: number,
  month: number,
  use: Use = unrecorded,
): MonthlyDesign {
  const { pond } = site;
  const p = 1 - pond.acceptedRisk;
  const relieved = relievedAt(m, depth);
  const recorded = relievedAt(m, depth, use);
  const high = recorded(highs.monthly(m, month, p));
  return {
    high,
    emptied: use(higherWater, recorded(highs.monthly(m, month, p, 'emptied')), high),
    // What was seen under the liner without a store to come from comes as the clay's.
    clay: site.tub ? relieved(highs.clay(m, month, p)) : high,
    standing: Math.min(highs.ring(m, month, p), high),
    permeability: logPercentiles(permeabilityAround(site.ground, depth)).p90,
    holds: emptiedHold(site, m, depth),
  };
}

/** What a working drain at a depth leaves of a head; it keeps their order, so what it leaves of the design head is the design head. */
function relievedAt(m: Measures, depth: number, use: Use = unrecorded): (head: number) => number {
  const floor = floorLevel(depth, m);
  const receiver = m.drain?.kind === 'outlet' ? Math.max(m.drain.flood, m.drain.outlet.level) : floor;
  return relievedBy(m, floor, 'works', receiver, use);
}

/** Lowest level of the pond over the water outside. */
export const lowestOver = formula({
  title: 'Lowest level of the pond by the water outside and the margin',
  symbol: 'l',
  unit: 'm',
  expression: 'max(h, z) + g - b',
  parameters: {
    h: { meaning: 'level of the water outside', unit: 'm', min: -30, max: 10 },
    z: { meaning: 'level from which water lifts the empty liner', unit: 'm', min: -30, max: 10 },
    g: { meaning: 'margin kept', unit: 'm', min: 0, max: 2 },
    b: { meaning: 'head that a slab on the liner holds', unit: 'm', min: 0, max: 5 },
  },
  compute: (h: number, z: number, g: number, b: number) => Math.max(h, z) + g - b,
  validity: 'where the water comes above what holds the empty liner',
  source: 'water against water; margin our choice',
});

/** The higher of two levels. */
export const higherLevel = formula({
  title: 'The higher of two levels',
  symbol: 'l',
  unit: 'm',
  expression: 'max(a, b)',
  parameters: {
    a: { meaning: 'a level of the pond', unit: 'm', min: -30, max: 10 },
    b: { meaning: 'another', unit: 'm', min: -30, max: 10 },
  },
  compute: (a: number, b: number) => Math.max(a, b),
  validity: 'all that asks for a level counts',
  source: 'definition',
});

/** The lowest level in a month (1–12) as it is recorded: the head that is left, and what asks for a level. */
export function recordLowest(
  basis: Basis,
  m: Measures,
  depth: number,
  month: number,
  use: Use,
): number | null {
  relievedAt(m, depth, use)(basis.highs.monthly(m, month, 1 - basis.site.pond.acceptedRisk));
  return lowestLevel(basis, m, depth, month, monthlyDesign(basis, m, depth, month), use).level;
}

/**
 * Limits of measures at a depth: the level that the water outside exceeds in that month only as often as is
 * accepted, with the margin; and the time an emptied pond has from any day of it on, with ground at the permeable end
 * (90 %) and sides of middling strength with their factor.
 */
export function monthlyLimits(basis: Basis, m: Measures, depth: number): MonthlyLimits {
  const { site } = basis;
  const limits: MonthlyLimits = { lowestSafeLevel: [], empty: [], barred: [], liftTimes: [] };
  const months = Array.from({ length: 12 }, (_, i) => monthlyDesign(basis, m, depth, i + 1));
  const lifts = LIFT_DEPTHS.map((lifted) => soonestLift(site, depth, months, lifted));
  months.forEach((water, i) => {
    const { level, free, sides, barred } = lowestLevel(basis, m, depth, i + 1, water);
    limits.lowestSafeLevel.push(level);
    limits.barred.push(barred);
    const times = LIFT_DEPTHS.map((depth, k) => ({ depth, seconds: lifts[k](i, free) }));
    limits.liftTimes.push(times);
    limits.empty.push(emptyTime(times[COUNTED].seconds, sides, barred === 'floor-heave'));
  });
  return limits;
}

/** Shortest emptying that is any use, days: what a clean-out takes. Our choice. */
const CLEAN_OUT = 0.5;

/**
 * What ends an emptying as planned, in some month planned, before a clean-out is done; undefined where nothing does. Its chance
 * may be accepted all the same: that is of the water and ground drawn, this of their bad ends together.
 */
export function tooBrief(basis: Basis, m: Measures, depth: number): EmptyTime['governs'] | undefined {
  const { emptiedIn, daysEmpty } = basis.site.pond;
  if (emptiedIn === 'any' || emptiedIn.length === 0) return undefined;
  const bound = emptiedIn.filter(
    (month) => lowestLevel(basis, m, depth, month, monthlyDesign(basis, m, depth, month)).level !== null,
  );
  if (bound.length === 0) return undefined;
  const { empty } = monthlyLimits(basis, m, depth);
  const needed = SECONDS_PER_DAY * Math.min(CLEAN_OUT, daysEmpty);
  return bound.map((month) => empty[month - 1]!).find(({ seconds }) => seconds < needed)?.governs;
}

/** How low the pond may be let with some water outside. */
interface LowestLevel {
  /** m above the datum; null: may be emptied */
  level: number | null;
  /** the water outside does not reach what holds the emptied liner */
  free: boolean;
  /** seconds the bared sides stand */
  sides: number;
  /** see {@link MonthlyLimits} */
  barred: Barred | null;
}

/**
 * How low the pond may be let in a month (1–12): to the water outside and the margin, but not above what holds as it is
 * kept, to what the ground over a seam needs, and no lower than usual where the sides slip as soon as they are bared.
 * @param water - head outside, and the highest while it stands empty, m above the datum
 */
export function lowestLevel(
  basis: Basis,
  m: Measures,
  depth: number,
  month: number,
  water: Pick<MonthlyDesign, 'high' | 'emptied'>,
  use: Use = unrecorded,
): LowestLevel {
  const { site } = basis;
  const { margin } = site.pond;
  const floor = floorLevel(depth, m);
  const holds = emptiedHold(site, m, depth);
  const free = water.emptied <= holds + LEVEL_RESOLUTION;
  const sides = sidesAllow(site, m, depth, water.emptied);
  const heaved = seamLevel(basis, m, depth, month);
  const byWater = () => {
    const wanted = use(lowestOver, water.high, holds, margin, m.ballast);
    const kept = keptLevel(basis, m, depth, month, wanted, water.high);
    return kept === undefined ? wanted : use(lowestAsKept, wanted, kept);
  };
  const levels = [
    ...(free ? [] : [byWater()]),
    ...(heaved === null ? [] : [heaved]),
    // A side that slips as soon as it is bared is held by the pond at its usual level.
    ...(sides === 0
      ? [use(higherLevel, use(lowestUsual, fullLevel(site, m), drawdownOf(basis, 0.5)), floor)]
      : []),
  ];
  const slips = sidesAllow(site, m, depth, Number.NEGATIVE_INFINITY) === 0;
  return {
    level: levels.length > 0 ? levels.reduce((a, b) => use(higherLevel, a, b)) : null,
    free,
    sides,
    barred: heaved !== null ? 'floor-heave' : slips ? 'side-slump' : null,
  };
}

/** Place of the depth that counts as lifted. */
const COUNTED = 1;

/** Seconds the bared sides stand with a head outside. */
function sidesAllow(site: Site, m: Measures, depth: number, head: number): number {
  const { pond } = site;
  const low = depth - m.raise;
  if (low <= 0 || pond.wall !== 'none') return Number.POSITIVE_INFINITY;
  // The side uphill is the tallest, and stands in the highest water.
  const height = sideUphill(site, low);
  const wetShare = Math.min(Math.max((head + low) / height, 0), 1);
  if (wetShare > shareAllowed(site, height)) return 0;
  const strength = strengthAt(site.ground, depth);
  if (!strength) return Number.POSITIVE_INFINITY;
  const clay = {
    strength: strength.median,
    unitWeight: UNIT_WEIGHT.mean,
    edgingLoad: pond.edgingLoad,
  };
  return secondsSidesAllow(clay, sideWithBank(site, m.raise, low), pond.shape.sideSlope, wetShare);
}
