import { BED_THICKNESS } from '../drain/index.js';
import { method } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { digRadius, type Site } from '../site/index.js';
import { deepestCut, deepestFloor, HEAVE_FACTOR_WANTED, SIDE_FACTOR_WANTED } from '../uplift/index.js';
import { type Draws, digMonths, highestOf } from './draws.js';
import type { Measures } from './measures.js';
import { Remembered } from './remembered.js';
import type { Governs, PerDig } from './result.js';
import { sayer } from './say.js';
import { type SideHeights, UNIT_WEIGHT } from './sides.js';

export const diggingMethod = method({
  title: 'Chances while digging',
  what:
    'Chance that the floor lacks a factor of 1.25 against heave over a seam, that the sides lack 1.5 against ' +
    'slumping, and that more water comes in than can be bailed.',
  assumptions: [
    'the seam at its highest known pressure; unit weight of clay 18.5 ± 0.7 kN/m³',
    'sides wet and cracked to half their height',
    'a floor counts as wet when more than 1 m³ a day seeps in, a hundred buckets (our choice), in the months of digging or, where none ' +
      'is named, in the driest month',
  ],
  source: 'formulas cited; limits common practice and our choice',
});

/** Inflow that makes a dig wet, m³/s: 1 m³ a day, a hundred buckets. Our choice. */
export const WET_INFLOW = 1 / 86400;

/** How deep is dug for a depth on the axis of the wish, m below the datum. */
export function dugDepth(site: Site, m: Measures, depth: number): number {
  return depth - m.raise + (m.drain ? BED_THICKNESS : site.pond.bedding.thickness);
}

/** A hole to be dug, drawn often: when its floor heaves, its sides slump and it is wet. */
export interface DigDraws {
  /** depths below the ground at which the floor lacks its factor over a seam, and the sides theirs, m; ascending, one a sample */
  heaves: Float64Array;
  slumps: Float64Array;
  /** highest level in the clay in the months of digging, m above the datum; each sample's years ascending */
  water: Float32Array;
}

const holes = new Remembered<DigDraws>();

/** @param sides - absent where no clay was logged */
export function digDraws(site: Site, draws: Draws, sides?: SideHeights): DigDraws {
  const { ground, pond } = site;
  const each = (f: (s: number) => number) =>
    Float64Array.from({ length: draws.samples }, (_, s) => f(s)).sort();
  return holes.of(sides ?? draws, JSON.stringify([pond.shape, ground.seams, pond.builtIn]), () => ({
    heaves: each((s) => {
      const weight = UNIT_WEIGHT.mean + UNIT_WEIGHT.spread * draws.unitWeight[s];
      const limits = ground.seams.map(({ top, headDepth, headSpread }) => {
        const pressure = top - (headDepth + headSpread * draws.seamHead[s]);
        return pressure > 0
          ? deepestCut.compute(top, HEAVE_FACTOR_WANTED, pressure, weight)
          : Number.POSITIVE_INFINITY;
      });
      return Math.min(...limits);
    }),
    slumps: each((s) => (sides ? sides.dug[s] / SIDE_FACTOR_WANTED : Number.POSITIVE_INFINITY)),
    water: waterWhileDug(site, draws),
  }));
}

function waterWhileDug(site: Site, { samples, years }: Draws): Float32Array {
  const water = highestOf(site.water.clayLow.month, digMonths(site));
  for (let s = 0; s < samples; s++) water.subarray(s * years, (s + 1) * years).sort();
  return water;
}

const perDigs = new Remembered<PerDig>();

/** Chances per dig at a depth. */
export function perDig(site: Site, dig: DigDraws, m: Measures, depth: number): PerDig {
  const dug = dugDepth(site, m, depth);
  // Measures that are dug alike share their chances.
  return perDigs.of(dig, `${depth} ${dug}`, () => chancesPerDig(site, dig, depth, dug));
}

function chancesPerDig({ water, pond }: Site, dig: DigDraws, depth: number, dug: number): PerDig {
  const radius = digRadius(pond.shape, depth);
  const { samples, years } = water;
  let wet = 0;
  for (let s = 0; s < samples; s++) {
    // Seepage is in proportion to the head, so the head that makes it wet is known.
    const limit = WET_INFLOW / discInflow.compute(water.conductivity[s], radius, 1) - dug;
    const end = (s + 1) * years;
    for (let i = end - 1; i >= s * years && dig.water[i] > limit; i--) wet++;
  }
  return {
    heave: shareBelow(dig.heaves, dug),
    slump: dug > 0 ? shareBelow(dig.slumps, dug) : 0,
    wet_floor: wet / (samples * years),
    factor: { heave: HEAVE_FACTOR_WANTED, slump: SIDE_FACTOR_WANTED },
  };
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

/** Depth of dig at which the 45° line from a footing is reached, m; Infinity where sides lean back as far. */
export function footingLimit(site: Site): { depth: number; name: string } {
  const { footings } = site.places;
  const { sideSlope } = site.pond.shape;
  let limit = { depth: Number.POSITIVE_INFINITY, name: '' };
  for (const f of footings) {
    // The side leans away from the footing by its slope, and the line falls at 45°.
    const edge = -f.level + f.distance - site.pond.ring.width;
    const depth = sideSlope >= 1 ? Number.POSITIVE_INFINITY : Math.max(edge, 0) / (1 - sideSlope);
    if (depth < limit.depth) limit = { depth, name: f.name };
  }
  return limit;
}

/** Levelling error on a limit, m; two of it make a condition doubtful. */
const LEVELLING_ERROR = 0.015;

/** A condition of a dig: met, not met, or doubtful within the levelling error. */
export interface Condition {
  governs: Governs;
  met: 'yes' | 'no' | 'doubtful';
  text: string;
}

/** Conditions of the dig itself at a depth. */
export function digConditions(site: Site, m: Measures, depth: number): Condition[] {
  const conditions: Condition[] = [];
  const limit = footingLimit(site);
  if (Number.isFinite(limit.depth)) {
    const spare = limit.depth - dugDepth(site, m, depth);
    conditions.push({
      governs: 'footing',
      met: spare > 2 * LEVELLING_ERROR ? 'yes' : spare < -2 * LEVELLING_ERROR ? 'no' : 'doubtful',
      text: `the 45° line from the footing ${limit.name} allows a dig of ${sayer(site).length(limit.depth)}`,
    });
  }
  if (depth > deepestFloor(site.pond.shape))
    conditions.push({
      governs: 'side-slump',
      met: 'no',
      text: `at this slope the sides meet at ${sayer(site).length(deepestFloor(site.pond.shape))}`,
    });
  return conditions;
}
