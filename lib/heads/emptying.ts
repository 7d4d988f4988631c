import { LEVEL_RESOLUTION, type Use, unrecorded } from '../formula/index.js';
import { tubVolume } from '../groundwater/index.js';
import type { Site } from '../site/index.js';
import { clayArrival, LEAST_FLOOR, LIFT_VOLUME_DEPTH, planArea, secondsToFill } from '../uplift/index.js';
import { floorLevel, type Measures } from './measures.js';

/** Level below which water does not lift an emptied liner: its lowest point and what lies on it, m above the datum. */
export function emptiedHold(site: Site, m: Measures, depth: number): number {
  return floorLevel(depth, m) + site.pond.floorBallast + m.ballast;
}

/**
 * Seconds until an emptied liner lifts; 0 at once, Infinity never.
 * @param hold - level from which water lifts it, m above the datum
 * @param head - of the clay, which gives water by it, and `tub` in the ring
 * @param lifted - depth of water over the floor that counts as lifted, m
 */
export function secondsToLift(
  site: Site,
  depth: number,
  hold: number,
  head: number,
  tub: number,
  conductivity: number,
  lifted = LIFT_VOLUME_DEPTH,
  use: Use = unrecorded,
): number {
  if (Math.max(head, tub) <= hold + LEVEL_RESOLUTION) return Number.POSITIVE_INFINITY;
  const { shape } = site.pond;
  const ring = site.tub && tub > hold ? tubVolume(site.tub, tub) - tubVolume(site.tub, hold) : 0;
  if (ring >= lifted * Math.max(planArea(shape, depth), LEAST_FLOOR)) return 0;
  const clay = clayArrival(shape, depth, head - hold, conductivity, use);
  return secondsToFill(planArea(shape, depth), { clay, ring, storm: 0 }, lifted, use);
}
