import { formula, LEVEL_RESOLUTION, type Use, unrecorded } from '../formula/index.js';
import { tubGives, tubVolume } from '../groundwater/index.js';
import type { Site } from '../site/index.js';
import {
  CONCRETE_UNIT_WEIGHT,
  clayArrival,
  depthOver,
  emptiedSlabHead,
  LEAST_FLOOR,
  LIFT_VOLUME_DEPTH,
  planArea,
  secondsToFill,
} from '../uplift/index.js';
import { floorLevel, type Measures } from './measures.js';

/** Level from which water lifts an emptied liner. */
export const holdAt = formula({
  title: 'Level from which water lifts the empty liner',
  symbol: 'p',
  unit: 'm',
  expression: 'z + g + b',
  parameters: {
    z: { meaning: "level of the liner's lowest point", unit: 'm', min: -10, max: 10 },
    g: { meaning: 'head held by what lies on the floor as surveyed', unit: 'm', min: 0, max: 5 },
    b: { meaning: 'head held by a slab with no water over it', unit: 'm', min: 0, max: 5 },
  },
  compute: (z: number, g: number, b: number) => z + g + b,
  validity: 'a level floor',
  source: 'statics',
});

/** Level below which water does not lift an emptied liner: its lowest point and what lies on it, m above the datum. */
export function emptiedHold(site: Site, m: Measures, depth: number, use: Use = unrecorded): number {
  return use(holdAt, floorLevel(depth, m, use), site.pond.floorBallast, emptiedSlab(m, use));
}

/** Head that the slab of some measures holds with no water over it, m. */
export function emptiedSlab({ ballast }: Measures, use: Use = unrecorded): number {
  return ballast > 0 ? use(emptiedSlabHead, ballast, CONCRETE_UNIT_WEIGHT) : 0;
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
  permeability: number,
  lifted = LIFT_VOLUME_DEPTH,
  use: Use = unrecorded,
): number {
  if (Math.max(head, tub) <= hold + LEVEL_RESOLUTION) return Number.POSITIVE_INFINITY;
  const { shape } = site.pond;
  const ring =
    site.tub && tub > hold ? use(tubGives, tubVolume(site.tub, tub, use), tubVolume(site.tub, hold, use)) : 0;
  if (ring >= lifted * Math.max(planArea(shape, depth), LEAST_FLOOR)) return 0;
  const clay = clayArrival(shape, depth, use(depthOver, head, hold, 0), permeability, use);
  return secondsToFill(planArea(shape, depth), { clay, ring, storm: 0 }, lifted, use);
}
