/** A drain uphill of the pond, that keeps the water behind the uphill wall down. */
import type { Basis } from '../basis/index.js';
import type { Obstacle } from '../contract/index.js';
import { formula, LEVEL_RESOLUTION, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import { NOTHING } from '../heads/index.js';
import { permeabilityAround, type Site } from '../site/index.js';
import { permeabilityAt, SCORE_90 } from '../soil/index.js';
import type { Option } from './option.js';
import { outletsOf } from './outlets.js';

/** Water that a drain leaves at a distance from it. */
export const cutoffHead = formula({
  title: 'Water left beside a drain under steady rain',
  symbol: 'h',
  unit: 'm',
  expression: 'd*min(sqrt(N/K), 1)',
  parameters: {
    d: { meaning: 'distance from the drain', unit: 'm', min: 0, max: 10 },
    N: { meaning: 'what sinks in', unit: 'm/s', min: 0, max: 1e-6 },
    K: { meaning: 'permeability', unit: 'm/s', min: 1e-12, max: 1e-2 },
  },
  compute: (d: number, N: number, K: number) => d * Math.min(Math.sqrt(N / K), 1),
  validity: 'level flow to a drain on a tight layer, the divide at that distance; never steeper than 1 to 1',
  source: 'Dupuit with even recharge: h² = N d²/K',
});

/** Level that a drain uphill keeps behind the uphill wall. */
export const cutoffLevel = formula({
  title: 'Water kept behind the uphill wall by a cut-off drain',
  symbol: 'c',
  unit: 'm',
  expression: 'g - D + h',
  parameters: {
    g: { meaning: 'highest ground at the rim', unit: 'm', min: 0, max: 10 },
    D: { meaning: 'depth of the trench', unit: 'm', min: 0, max: 10 },
    h: { meaning: 'water left beside it', unit: 'm', min: 0, max: 10 },
  },
  compute: (g: number, D: number, h: number) => g - D + h,
  validity: 'above the lowest natural ground at the rim',
  source: 'geometry',
});

/** Rise of the ground at the rim that makes an uphill side, m. Our choice. */
const UPHILL = 0.1;
/** It stands half a metre off the wall and as deep as the pond, at most 1 m. Common practice. */
export const CUTOFF = { distance: 0.5, depth: 1 };
/** Far edge of its trench from the wall, m: as wide as a spade. Common practice. */
const TRENCH_AWAY = CUTOFF.distance + 0.3;
/** Steady winter recharge, m/s: mean 2 mm/d. Our choice. */
const WINTER_RECHARGE = 0.002 / SECONDS_PER_DAY;

/**
 * The drain uphill, by ground as tight as it is once in ten.
 * @param unlawful - why no water may be led away; absent: it may
 */
export function cutoffDrain(basis: Basis, unlawful: Obstacle | undefined): Option {
  const name = 'cutoff-drain';
  const { site } = basis;
  const { highRim } = site.places;
  if (highRim < UPHILL) return { name, why: { governs: 'none', code: 'level-ground', values: {} } };
  if (unlawful) return { name, why: unlawful };
  const invert = highRim - trenchDepth(site);
  // The side of a footing may not be known: the trench is held against every one, by the 45° line from its underside.
  const undermined = site.places.footings.find(
    ({ level, distance }) => invert < level - Math.max(distance - TRENCH_AWAY, 0) - LEVEL_RESOLUTION,
  );
  if (undermined)
    return {
      name,
      why: { governs: 'footing', code: 'trench-near-footing', values: { name: undermined.name } },
    };
  const outlet = outletsOf(basis).find(
    (o) => o.level + 0.01 * (o.distance + site.pond.shape.length) <= invert,
  );
  if (!outlet) return { name, why: { governs: 'fall', code: 'no-low-outlet-uphill', values: {} } };
  return { name, measures: { ...NOTHING, cutoff: keptByCutoff(site), cutoffTo: outlet } };
}

const trenchDepth = ({ places, pond }: Site) => Math.min(CUTOFF.depth, pond.depth + places.highRim);

/** The level that the drain keeps behind the uphill wall, m above the datum, in ground as tight as it is once in ten. */
export function keptByCutoff(site: Site, use: Use = unrecorded): number {
  const { median, spread } = permeabilityAround(site.ground, site.pond.depth);
  const tight = use(permeabilityAt, median, spread, -SCORE_90);
  const left = use(cutoffHead, CUTOFF.distance, WINTER_RECHARGE, tight);
  return use(cutoffLevel, site.places.highRim, trenchDepth(site), left);
}
