import { BED_THICKNESS } from '../drain/index.js';
import { method } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { digRadius, type Site } from '../site/index.js';
import { logValue } from '../soil/index.js';
import {
  deepestFloor,
  HEAVE_FACTOR_WANTED,
  heaveFactor,
  SIDE_FACTOR_WANTED,
  standingHeight,
} from '../uplift/index.js';
import type { Draws } from './draws.js';
import type { Measures } from './measures.js';
import type { Governs, PerDig } from './result.js';
import { sayer } from './say.js';

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

/** Unit weight of wet clay, N/m³. Common practice. */
export const UNIT_WEIGHT = { mean: 18500, spread: 700 };
/** Inflow that makes a dig wet, m³/s: 1 m³ a day, a hundred buckets. Our choice. */
export const WET_INFLOW = 1 / 86400;

/** How deep is dug for a depth on the axis of the wish, m below the datum. */
export function dugDepth(site: Site, m: Measures, depth: number): number {
  return depth - m.raise + (m.drain ? BED_THICKNESS : site.pond.bedding.thickness);
}

/** Chances per dig at a depth. */
export function perDig(site: Site, draws: Draws, m: Measures, depth: number): PerDig {
  const dug = dugDepth(site, m, depth);
  const { ground, water, pond } = site;
  const n = draws.samples;
  let heave = 0;
  let slump = 0;
  let wet = 0;
  const radius = digRadius(pond.shape, depth);
  for (let s = 0; s < n; s++) {
    const weight = UNIT_WEIGHT.mean + UNIT_WEIGHT.spread * draws.unitWeight[s];
    const lifts = ground.seams.some((seam) => {
      const left = seam.top - dug;
      const pressure = seam.top - (seam.headDepth + seam.headSpread * draws.seamHead[s]);
      return pressure > 0 && (left <= 0 || heaveFactor.compute(weight, left, pressure) < HEAVE_FACTOR_WANTED);
    });
    if (lifts) heave++;
    if (ground.strength && dug > 0) {
      const stands = standingHeight(
        logValue(ground.strength, draws.strength[s]),
        weight,
        pond.shape.sideSlope,
        pond.edgingLoad,
      );
      if (stands < SIDE_FACTOR_WANTED * dug) slump++;
    }
    for (let y = 0; y < water.years; y++) {
      const head = draws.digHead[s * water.years + y] + dug;
      if (head > 0 && discInflow.compute(water.conductivity[s], radius, head) > WET_INFLOW) wet++;
    }
  }
  return {
    heave: heave / n,
    slump: slump / n,
    wet_floor: wet / (n * water.years),
    factor: { heave: HEAVE_FACTOR_WANTED, slump: SIDE_FACTOR_WANTED },
  };
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
      text: 'at this slope the sides meet before this depth',
    });
  return conditions;
}
