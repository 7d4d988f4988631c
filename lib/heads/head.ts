import { BED_LOSS } from '../drain/index.js';
import { type Use, unrecorded } from '../formula/index.js';
import { relievedHead, unflappedHead } from '../groundwater/index.js';
import { drainLevel, type Measures } from './measures.js';

/** What a drain is found to be when the water comes. */
export type DrainState = 'works' | 'flap-stuck' | 'blocked';

/**
 * Highest of the waters at the worst place, without a drain under the floor; all m above the datum.
 * @param cutoff - level that a drain uphill keeps behind the uphill wall; undefined: there is none
 * @param low - in the clay at the low side, and `high` behind the uphill wall
 * @param tub - in the ring
 * @returns m above the datum
 */
export function undrainedHead(cutoff: number | undefined, low: number, high: number, tub: number): number {
  const uphill = cutoff === undefined ? high : Math.min(high, Math.max(cutoff, low));
  return Math.max(uphill, low, tub);
}

/** Waters nearer to each other than this are one, m: what a tape can tell. */
export const ALIKE = 1e-3;

/** The highest of three waters, the ring where it stands as high as the clay, which touches the liner: index 0 ring, 1 uphill wall, 2 low side. */
export function highestOfThree(low: number, uphill: number, ring: number): 0 | 1 | 2 {
  if (ring >= Math.max(low, uphill) - ALIKE) return 0;
  return uphill > low + ALIKE ? 1 : 2;
}

/**
 * What a drain leaves of the undrained head.
 * @param floor - liner's lowest point, m above the datum
 * @param receiver - water at the outlet; a sump has none
 */
export function relievedBy(
  m: Measures,
  floor: number,
  state: DrainState,
  receiver: number,
  use: Use = unrecorded,
): (undrained: number) => number {
  const { drain } = m;
  if (!drain || state === 'blocked') return (undrained) => undrained;
  const level = drainLevel(m, floor, use);
  if (drain.kind === 'sump') return (undrained) => use(relievedHead, undrained, level, level, BED_LOSS);
  const formula = state === 'works' ? relievedHead : unflappedHead;
  return (undrained) => use(formula, undrained, level, receiver, BED_LOSS);
}

/** Least and greatest head a drain leaves: {@link relievedBy} of no water and of water without end. */
export function reliefBounds(
  m: Measures,
  floor: number,
  state: DrainState,
  receiver: number,
  use?: Use,
): { least: number; most: number } {
  const head = relievedBy(m, floor, state, receiver);
  return {
    least: head(Number.NEGATIVE_INFINITY),
    most: relievedBy(m, floor, state, receiver, use)(Number.POSITIVE_INFINITY),
  };
}
