/** What stands against a depth of the dig itself: sides that must be laid back, a footing, sides that meet. */
import type { Condition } from '../contract/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import { layersInSide, type Site, strengthAt } from '../site/index.js';
import {
  deepestFloor,
  isProtectionDue,
  PROTECTION_DEPTH,
  type WorkingSlope,
  workingSlope,
} from '../uplift/index.js';
import { bestDig, type DigDraws, dugDepth } from './digging.js';
import { sideUphill } from './sides.js';

/** Depth of dig at which the 45° line from a footing is reached, m; Infinity where sides lean back as far. */
export interface FootingLimit {
  depth: number;
  name: string;
  /** the footing is taken as shallow because nobody has seen it */
  assumed?: true;
}

/** The footing that limits the dig most. */
export function footingLimit(site: Site): FootingLimit {
  const { footings } = site.places;
  const { sideSlope } = site.pond.shape;
  let limit: FootingLimit = { depth: Number.POSITIVE_INFINITY, name: '' };
  for (const f of footings) {
    // The side leans away from the footing by its slope, and the line falls at 45°.
    const edge = -f.level + f.distance - site.pond.ring.width;
    const depth = sideSlope >= 1 ? Number.POSITIVE_INFINITY : Math.max(edge, 0) / (1 - sideSlope);
    if (depth < limit.depth) limit = { depth, name: f.name, assumed: f.assumed };
  }
  return limit;
}

/** Levelling error on a limit, m; two of it make a condition doubtful. */
const LEVELLING_ERROR = 0.015;

/** The published working slope for the ground in the side uphill of a dig; water there in a wet year m above the datum. */
export function workingSlopeAt(site: Site, wetWater: number, dug: number): WorkingSlope {
  const { ground } = site;
  const height = sideUphill(site, dug);
  const sides = layersInSide(ground.sides, height);
  return workingSlope({ strength: strengthAt(ground, height)?.median, sides, wet: wetWater > -dug }, height);
}

/** Conditions of the dig itself at a depth. */
export function digConditions(site: Site, dig: DigDraws, m: Measures, depth: number): Condition[] {
  const conditions: Condition[] = [];
  const dug = dugDepth(site, m, depth);
  const { slope } = workingSlopeAt(site, bestDig(site, dig, m, depth).plan.wetWater, dug);
  if (
    isProtectionDue(sideUphill(site, dug)) &&
    site.pond.wall === 'none' &&
    site.pond.shape.sideSlope < slope
  )
    conditions.push({
      governs: 'side-slump',
      met: 'no',
      code: 'laid-back',
      values: { from_m: PROTECTION_DEPTH, slope },
    });
  const limit = footingLimit(site);
  if (Number.isFinite(limit.depth)) {
    const spare = limit.depth - dug;
    conditions.push({
      governs: 'footing',
      met: spare > 2 * LEVELLING_ERROR ? 'yes' : spare < -2 * LEVELLING_ERROR ? 'no' : 'doubtful',
      code: 'footing-line',
      values: { name: limit.name, assumed: limit.assumed ?? false, depth_m: limit.depth },
    });
  }
  if (depth > deepestFloor(site.pond.shape) + LEVEL_RESOLUTION)
    conditions.push({
      governs: 'side-slump',
      met: 'no',
      code: 'sides-meet',
      values: { depth_m: deepestFloor(site.pond.shape) },
    });
  return conditions;
}
