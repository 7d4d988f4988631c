import { MONTHS } from '../climate/index.js';
import type { Governs, PerDig } from '../contract/index.js';
import { BED_THICKNESS, strokeTo, sumpDug } from '../drain/index.js';
import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { type Draws, drainLevel, floorLevel, highestOf, type Measures } from '../heads/index.js';
import { quantile, Remembered } from '../sampling/index.js';
import { discInflow } from '../seepage/index.js';
import { digRadius, permeabilityBySample, type Site } from '../site/index.js';
import { HEAVE_FACTOR_WANTED, SIDE_FACTOR_WANTED } from '../uplift/index.js';
import { beddingLaid } from './gravelLeftOut.js';
import { deepestFloorOver } from './heave.js';
import { type Sides, sideUphill, sideWithBank, slipLevel } from './sides.js';
import { boilingHead, takenOut } from './wetDig.js';

export const diggingMethod = method({
  title: 'Chances while digging',
  what:
    'Chance that the floor lacks a factor of 1.25 against heave over a seam, that the sides lack 1.5 against ' +
    'slumping, and that more water comes in than can be taken out.',
  assumptions: [
    'seams at their highest level in the months of digging; unit weight of clay 18.5 ± 0.7 kN/m³',
    'the pit of a sump is the deepest of a hole, and as deep in every month since its water is kept low: it counts by the seams of the whole year',
    'the side uphill is higher by the rise of the ground along the rim, and meets the water of that side; either side may slip; ' +
      'water comes in by the mean of both',
    'sides of clay wet and cracked to half their height; of other ground by its kind, see the sides by the kind of ground',
    'from 1.5 m (5 ft) the sides are no steeper than the class of the ground in 29 CFR 1926 Subpart P, or an engineer designs what holds them',
    'a floor counts as wet when more seeps in than can be taken out, or it boils, see the water in the hole',
    'where no month of digging is named, each depth is dug in the month in which least goes wrong',
  ],
  source: 'formulas cited; limits common practice and our choice',
});

/** How deep is dug. */
export const dugTo = formula({
  title: 'Depth that is dug',
  symbol: 'D',
  unit: 'm',
  expression: 'd - r + b',
  parameters: {
    d: { meaning: 'depth below the rim', unit: 'm', min: 0, max: 10 },
    r: { meaning: 'rim raised by', unit: 'm', min: 0, max: 2 },
    b: { meaning: 'thickness of the bed under the liner', unit: 'm', min: 0, max: 1 },
  },
  compute: (d: number, r: number, b: number) => d - r + b,
  validity: 'below the lowest natural ground at the rim',
  source: 'geometry',
});

/** How deep is dug for a depth on the axis of the wish, m below the datum. */
export function dugDepth(site: Site, m: Measures, depth: number, use: Use = unrecorded): number {
  return use(dugTo, depth, m.raise, m.drain ? BED_THICKNESS : beddingLaid(site, m));
}

/** Months whose water below the clay counts while it is dug: a sump, whose water stays low, stays as deep all year. */
export function pressedMonths(m: Measures, months: readonly number[]): readonly number[] {
  return m.drain?.kind === 'sump' ? MONTHS : months;
}

/** How deep the deepest of what is dug lies: the pit of a sump, else the hole, m below the datum. */
export function deepestDug(site: Site, m: Measures, depth: number, use: Use = unrecorded): number {
  const { drain } = m;
  if (drain?.kind !== 'sump') return dugDepth(site, m, depth, use);
  const floor = floorLevel(depth, m, use);
  return use(sumpDug, BED_THICKNESS, floor, strokeTo(drainLevel(m, floor, use), drain.to, use).stroke);
}

/** A hole to be dug, drawn often. */
export interface DigDraws {
  /** the months named; where none is, every month by itself, and the best counts */
  plans: DigPlan[];
  /** depths below the ground at which a floor lacks its factor over a seam in some month, m; ascending, one a sample */
  pits: Float64Array;
  /** heights at which sides so high lack their factor, m; ascending, one a sample; absent where they meet no clay */
  slumps(height: number): Float64Array | undefined;
}

/** When it is dug: how its floor heaves then, and where the water stands. */
export interface DigPlan {
  /** 1–12 */
  months: number[];
  /** depths below the ground at which the floor lacks its factor over a seam, m; ascending, one a sample */
  heaves: Float64Array;
  /** highest level in the clay in the months of digging, m above the datum: at the low side, uphill, and the mean of both, of that each sample's years ascending */
  low: Float32Array;
  uphill: Float32Array;
  mean: Float32Array;
  /** level uphill that one year in ten exceeds then, m above the datum */
  wetWater: number;
}

const holes = new Remembered<DigDraws>();

const slumping = new Remembered<Float64Array>();

/** A site's hole, drawn as often as everything else. */
export function digDraws(site: Site, draws: Draws, sides: Sides): DigDraws {
  const { ground, pond, places } = site;
  const each = (f: (s: number) => number) =>
    Float64Array.from({ length: draws.samples }, (_, s) => f(s)).sort();
  const { shape, wall, edgingLoad, builtIn } = pond;
  const key = JSON.stringify([
    shape,
    wall,
    edgingLoad,
    ground.strengths,
    ground.sides,
    ground.seams,
    builtIn,
    places.highRim,
  ]);
  return holes.of(draws, key, () => ({
    plans: (builtIn ? [builtIn] : EACH_MONTH).map((months) => {
      const water = waterWhileDug(site, draws, months);
      return {
        months,
        heaves: each((s) => deepestFloorOver(site, draws, s, months)),
        ...water,
        wetWater: quantile(Float64Array.from(water.uphill), WET_YEAR),
      };
    }),
    pits: each((s) => deepestFloorOver(site, draws, s, MONTHS)),
    slumps: (height) => {
      const stands = sides(height);
      return stands && slumping.of(stands, '', () => each((s) => stands.dug[s] / SIDE_FACTOR_WANTED));
    },
  }));
}

const EACH_MONTH = MONTHS.map((month) => [month]);
/** One year in ten is wetter. */
const WET_YEAR = 0.9;

function waterWhileDug(
  { water }: Site,
  { samples, years }: Draws,
  months: number[],
): Pick<DigPlan, 'low' | 'uphill' | 'mean'> {
  const [low, uphill] = [highestOf(water.clayLow.month, months), highestOf(water.clayHigh.month, months)];
  const mean = low.map((level, i) => (level + uphill[i]!) / 2);
  for (let s = 0; s < samples; s++) mean.subarray(s * years, (s + 1) * years).sort();
  return { low, uphill, mean };
}

/** A plan of a dig, and its chances. */
interface PlannedDig {
  plan: DigPlan;
  chances: PerDig;
}

const digs = new Remembered<PlannedDig[]>();

/** A depth dug in the months named; where none is, in each by itself. */
export function plannedDigs(site: Site, dig: DigDraws, m: Measures, depth: number): PlannedDig[] {
  const dug = dugDepth(site, m, depth);
  // Measures that are dug alike share their chances.
  const pit = m.drain?.kind === 'sump' ? deepestDug(site, m, depth) : undefined;
  return digs.of(dig, `${depth} ${dug} ${m.raise} ${pit}`, () =>
    dig.plans.map((plan) => ({ plan, chances: chancesPerDig(site, dig, plan, depth, dug, m.raise, pit) })),
  );
}

/** When a depth is best dug; of months alike the driest. */
export function bestDig(site: Site, dig: DigDraws, m: Measures, depth: number): PlannedDig {
  const worse = (a: PlannedDig, b: PlannedDig) =>
    worstDig(a.chances).chance - worstDig(b.chances).chance || a.plan.wetWater - b.plan.wetWater;
  return plannedDigs(site, dig, m, depth).reduce((a, b) => (worse(a, b) > 0 ? b : a));
}

/** Months in which a depth may be dug, where none was named and it is not all one. */
interface MonthsToDig {
  months: number[];
  /** what stands against most of the others */
  against: Governs;
}

/** Months in which a depth is dug with no more than the accepted risk; absent where one is named, and where all or none will do. */
export function monthsToDig(site: Site, dig: DigDraws, m: Measures, depth: number): MonthsToDig | undefined {
  if (site.pond.builtIn) return undefined;
  const worst = plannedDigs(site, dig, m, depth).map(({ chances }) => worstDig(chances));
  const fails = worst.filter(({ chance }) => chance > site.pond.acceptedRisk);
  if (fails.length === 0 || fails.length === worst.length) return undefined;
  const often = (what: Governs) => fails.filter(({ governs }) => governs === what).length;
  return {
    months: dig.plans.flatMap(({ months }, i) => (fails.includes(worst[i]) ? [] : months)),
    against: fails.map(({ governs }) => governs).reduce((a, b) => (often(b) > often(a) ? b : a)),
  };
}

/** Chances per dig at a depth. */
export function perDig(site: Site, dig: DigDraws, m: Measures, depth: number): PerDig {
  return bestDig(site, dig, m, depth).chances;
}

function chancesPerDig(
  site: Site,
  dig: DigDraws,
  { heaves, low, uphill, mean }: DigPlan,
  depth: number,
  dug: number,
  raise: number,
  pit: number | undefined,
): PerDig {
  const { samples, years } = site.water;
  const { side, banked, slips, slipsUphill, wetAt } = holeLimits(site, depth, dug, raise);
  const slumps = dig.slumps(side);
  const slipping = shareEither(low, slips, uphill, slipsUphill);
  let wet = 0;
  for (let s = 0; s < samples; s++) {
    const limit = wetAt(s);
    const end = (s + 1) * years;
    for (let i = end - 1; i >= s * years && mean[i]! > limit; i--) wet++;
  }
  return {
    heave: pit === undefined ? shareBelow(heaves, dug) : shareBelow(dig.pits, pit),
    slump: dug > 0 ? Math.max(slumps ? shareBelow(slumps, banked) : 0, slipping) : 0,
    wet_floor: wet / (samples * years),
    factor: { heave: HEAVE_FACTOR_WANTED, slump: SIDE_FACTOR_WANTED },
  };
}

/** What ground and water are held against in a hole. */
interface HoleLimits {
  /** height of its highest side, m */
  side: number;
  /** the same with the bank that a raised rim puts on it, m */
  banked: number;
  /** level of the water at the low side, and uphill, above which a side slips, m above the datum */
  slips: number;
  slipsUphill: number;
  /** mean level of the water above which the floor is wet, by sample, m above the datum */
  wetAt: (sample: number) => number;
}

/** The limits of a hole dug so deep. */
export function holeLimits(site: Site, depth: number, dug: number, raise: number): HoleLimits {
  const side = sideUphill(site, dug);
  const radius = digRadius(site.pond.shape, depth);
  const permeability = permeabilityBySample(site, depth);
  const boils = boilingHead(site, depth, dug);
  const most = takenOut(site);
  return {
    side,
    banked: sideWithBank(site, raise, dug),
    slips: slipLevel(site, dug),
    slipsUphill: slipLevel(site, side) + site.places.highRim,
    // Seepage is in proportion to the head, so the head that makes it wet is known.
    wetAt: (s) => Math.min(most / discInflow.compute(permeability(s), radius, 1), boils) - dug,
  };
}

/** Share of years in which one of two levels is above its limit. */
function shareEither(low: Float32Array, limit: number, uphill: Float32Array, limitUphill: number): number {
  if (Math.min(limit, limitUphill) === Number.POSITIVE_INFINITY) return 0;
  let above = 0;
  for (let i = 0; i < low.length; i++) if (low[i]! > limit || uphill[i]! > limitUphill) above++;
  return above / low.length;
}

/** Share of ascending values below a limit. */
function shareBelow(values: Float64Array, limit: number): number {
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle] < limit) low = middle + 1;
    else high = middle;
  }
  return low / values.length;
}

/** The chance per dig that stands out, and what it is. */
export function worstDig(dig: PerDig): { chance: number; governs: Governs } {
  const all: [number, Governs][] = [
    [dig.heave, 'floor-heave'],
    [dig.slump, 'side-slump'],
    [dig.wet_floor, 'wet-dig'],
  ];
  const [chance, governs] = all.reduce((a, b) => (b[0] > a[0] ? b : a));
  return { chance, governs };
}
