import { method, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import { dupuitWell, loweringAt, sichardtRadius } from '../seepage/index.js';
import type { Ends } from './inflowBySource.js';

export const effectOnOthers = method({
  title: 'What the drain does to others',
  what:
    'Lowering of the water in the ground at the boundary and at houses; flow out of the outlet beside what ran off ' +
    'before; flow for ever where the pond stands in a sand seam.',
  assumptions: [
    'steady, fed by 1 mm of rain a day that gets down (our choice); the same ground goes on below the drain, without end ' +
      'where no tighter layer was logged; at the low end the drain stands on tight ground',
    'below 20 mm nobody can tell the lowering from the weather; our choice',
    'before: the same ground without pond, shedding as wet lawn',
  ],
  source: 'Dupuit with recharge; rational method',
});

/** Recharge in the wet half-year, m/s: 1 mm a day. Our choice. */
const RECHARGE = 0.001 / SECONDS_PER_DAY;
/** Lowering that can be told from the weather, m. Our choice. */
export const NOTICEABLE = 0.02;
/** Lowering that clay shrinks noticeably with, m. Our choice. */
export const SHRINKING = 0.1;

/** Lowering at a place. */
export interface Lowering {
  name: string;
  /** from the drain, m */
  distance: number;
  /** of the water table, m, 0 and more */
  lowered: Ends;
  /** the clay may shrink there: an engineer is asked first */
  caution: boolean;
  /** too little to be told from the weather */
  unnoticed: boolean;
}

/** Ground that a drain lowers, SI. */
export interface LoweredGround {
  /** permeability at its low, likely and high end, m/s */
  permeability: Ends;
  /** thickness of the same ground below the drain, m; Infinity where no tighter layer was logged */
  below: number;
  /** of the circle as large as the pond, m */
  radius: number;
}

/**
 * Lowering at a distance for the spread of the permeability, by {@link loweringAt} with 1 mm of rain a day (our choice).
 * @param place - its name, and its distance from the pond's edge, m
 * @param s - water lowered at the drain, m, 0 and more
 * @param ground - permeability, what lies below the drain, and the radius of the pond, SI
 * @param shrinkable - whether the clay shrinks (yes also where nobody knows)
 * @param use - what evaluates the formulas at the likely and the high end, for a record
 * @returns at each end of the permeability, m, and whether the clay may shrink or nobody notice
 */
export function loweringOf(
  place: { name: string; distance: number },
  s: number,
  { permeability: k, below, radius }: LoweredGround,
  shrinkable: boolean,
  use: Use = unrecorded,
): Lowering {
  const at = (permeability: number, thickness: number, use?: Use) =>
    loweringAt(
      { lowered: s, permeability, recharge: RECHARGE, below: thickness, radius },
      place.distance,
      use,
    );
  const lowered = { low: at(k.low, 0), likely: at(k.likely, below, use), high: at(k.high, below, use) };
  const caution = shrinkable && lowered.high > SHRINKING;
  return {
    name: place.name,
    distance: place.distance,
    lowered,
    caution,
    unnoticed: lowered.high < NOTICEABLE,
  };
}

/** Flow out of the outlet beside what ran off the same ground before, m³/s. */
export interface Discharge {
  ordinary: number;
  storm: number;
  /** run-off of the same storm without the pond */
  before: number;
}

/**
 * Flow for ever out of a seam of sand, and how far it is felt, by {@link dupuitWell} and {@link sichardtRadius}.
 * @param k - permeability of the sand, m/s
 * @param thickness - of the water above the base of the seam, m
 * @param s - water lowered at the pond, m
 * @param radius - of the circle as large as the pond, m
 * @returns flow, m³/s, and distance from the middle of the pond, m
 */
export function endlessFlow(
  k: number,
  thickness: number,
  s: number,
  radius: number,
): { flow: number; felt: number } {
  const felt = sichardtRadius.compute(s, k) + radius;
  return {
    flow: dupuitWell.compute(k, thickness, Math.max(thickness - s, 0), Math.max(felt / radius, 1.05)),
    felt,
  };
}
