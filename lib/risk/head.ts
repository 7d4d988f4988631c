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

/**
 * What a drain leaves of the undrained head.
 * @param floor - liner's lowest point, m above the datum
 * @param receiver - water at the outlet; a sump has none
 */
export function relievedBy(
  { drain }: Measures,
  floor: number,
  state: DrainState,
  receiver: number,
  use: Use = unrecorded,
): (undrained: number) => number {
  if (!drain || state === 'blocked') return (undrained) => undrained;
  const level = drainLevel(drain, floor);
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
): { least: number; most: number } {
  const head = relievedBy(m, floor, state, receiver);
  return { least: head(Number.NEGATIVE_INFINITY), most: head(Number.POSITIVE_INFINITY) };
}
