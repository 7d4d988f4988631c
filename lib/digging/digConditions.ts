/** What stands against a depth of the dig itself: sides that must be laid back, a footing, sides that meet. */
import type { Condition, Governs } from '../contract/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import { layersInSide, SHALLOW_FOOTING, type Site, strengthAt } from '../site/index.js';
import {
  deepestFloor,
  isProtectionDue,
  PROTECTION_DEPTH,
  type WorkingSlope,
  workingSlope,
} from '../uplift/index.js';
import { bestDig, type DigDraws, dugDepth } from './digging.js';
import { sideUphill } from './sides.js';
import { isCastable } from './slabCast.js';

/** Depth of dig at which the 45° line from a footing is reached, m; Infinity where no depth reaches it. */
interface FootingLimit {
  depth: number;
  name: string;
  /** the footing is taken as shallow because nobody has seen it */
  assumed?: true;
}

/** The footing that limits the dig most. */
export function footingLimit(site: Site): FootingLimit {
  let limit: FootingLimit = { depth: Number.POSITIVE_INFINITY, name: '' };
  for (const { level, distance, name, assumed } of site.places.footings) {
    const depth = deepestBeside(site, level, distance - site.pond.ring.width);
    if (depth < limit.depth) limit = { depth, name, assumed };
  }
  return limit;
}

/** How deep may be dug so that no cut comes below the line that falls at 45° from a footing's underside, m. */
function deepestBeside(site: Site, level: number, away: number): number {
  const { pond, places } = site;
  const { sideSlope } = pond.shape;
  // Behind a wall the cut is laid back from its foot, as far as ground like this asks when wet.
  if (pond.wall !== 'none') {
    const { slope } = workingSlopeAt(site, Number.POSITIVE_INFINITY, pond.depth);
    return Math.max(away, 0) / Math.max(slope, 1) - level;
  }
  // Where the ground at the footing is higher than the rim, the side goes on up to it: never as far as the wall.
  const ground = Math.min(Math.max(level + SHALLOW_FOOTING, 0), places.highRim);
  const out = sideSlope * ground;
  if (out > Math.max(away, 0) + LEVEL_RESOLUTION) return 0;
  // A steep side leans away from the footing less than the line: its toe meets it first; a flat one meets it at its top.
  if (sideSlope < 1) return Math.max(away - level, 0) / (1 - sideSlope);
  return away - level >= out * (1 - 1 / sideSlope) - LEVEL_RESOLUTION ? Number.POSITIVE_INFINITY : 0;
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
      governs: 'working-slope',
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
  if (m.ballast > 0 && !isCastable(site, dug))
    conditions.push({ governs: 'wet-dig', met: 'no', code: 'slab-cast', values: {} });
  if (depth > deepestFloor(site.pond.shape) + LEVEL_RESOLUTION)
    conditions.push({
      governs: 'sides-meet',
      met: 'no',
      code: 'sides-meet',
      values: { depth_m: deepestFloor(site.pond.shape) },
    });
  return conditions;
}

/**
 * What stands against a dig: a condition that no slope mends, then what goes wrong too often, then sides too steep to work beside.
 * @param worst - of its chances, from `worstDig`
 * @param acceptedRisk - 0–1
 * @returns `none` where nothing does
 */
export function againstDig(
  worst: { chance: number; governs: Governs },
  conditions: readonly Condition[],
  acceptedRisk: number,
): Governs {
  const broken = conditions.filter(({ met }) => met !== 'yes').map(({ governs }) => governs);
  const firm = broken.find((governs) => governs !== 'working-slope');
  return firm ?? (worst.chance > acceptedRisk ? worst.governs : (broken[0] ?? 'none'));
}
