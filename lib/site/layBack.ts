import type { LogEstimate } from '../soil/index.js';
import {
  FISSURED_SLOPE,
  PROTECTION_DEPTH,
  SIDE_FACTOR_WANTED,
  SLOPE_RESOLUTION,
  SOFTENED_SHARE,
  standingHeight,
  steepestByGround,
} from '../uplift/index.js';
import type { Assumptions } from './assumptions.js';
import { type Ground, type SideLayer, strengthAt } from './ground.js';
import type { Places } from './places.js';
import type { Pond } from './pond.js';
import { COVER_WEIGHT } from './seam.js';

/** A layer that reaches this far into a side is part of it, m. */
const IN_SIDE = 0.05;
/** Slopes are told in steps of this. */
const STEP = 0.05;
/** 2.5 % end of a normal score. */
const LOW = -1.96;

/** Layers in a side of some height below the topsoil. */
export function layersInSide(layers: readonly SideLayer[], height: number): SideLayer[] {
  return layers.filter(({ top }) => top < height - IN_SIDE);
}

/**
 * The pond with its sides laid back where the ground it is dug in does not stand as steep as drawn: by the kind of every
 * layer in the side, dry, and to 0.5 to 1 where clay at the weak end of its strength lacks the factor at the depth a
 * garden dig may have with steep sides. A pond that is there, or whose sides are walls, stays as it is.
 */
export function laidBack(
  pond: Pond,
  ground: Pick<Ground, 'sides' | 'strengths'>,
  { highRim }: Pick<Places, 'highRim'>,
  assume: Assumptions,
): Pond {
  if (pond.existing || pond.wall !== 'none') return pond;
  const { sideSlope } = pond.shape;
  // Of the side uphill.
  const height = pond.depth + pond.bedding.thickness + highRim;
  const layers = layersInSide(ground.sides, height).map(({ texture, structure }) => ({
    name: structure ? `${structure} ${texture}` : texture,
    slope: steepestByGround(texture, structure),
  }));
  const steep = Math.min(height, PROTECTION_DEPTH);
  const strength = strengthAt(ground, pond.depth);
  if (strength && isTooWeak(strength, sideSlope, steep, pond.edgingLoad))
    layers.push({ name: 'clay so weak', slope: FISSURED_SLOPE });
  if (layers.length === 0) return pond;
  const worst = layers.reduce((a, b) => (b.slope > a.slope ? b : a));
  const slope = Number((Math.ceil((worst.slope - SLOPE_RESOLUTION) / STEP) * STEP).toFixed(2));
  if (slope <= sideSlope + SLOPE_RESOLUTION) return pond;
  assume.add(
    'side_slope',
    slope,
    'horizontal to 1 vertical',
    `${worst.name} does not stand at ${sideSlope} to 1 as drawn: everything here is for sides laid back`,
  );
  return { ...pond, shape: { ...pond.shape, sideSlope: slope }, drawnSlope: sideSlope };
}

function isTooWeak({ median, spread }: LogEstimate, slope: number, height: number, load: number): boolean {
  const weak = median * Math.exp(LOW * spread);
  const dug = standingHeight(weak, COVER_WEIGHT.mineral, slope, load) / SIDE_FACTOR_WANTED;
  const soft = standingHeight(SOFTENED_SHARE * weak, COVER_WEIGHT.mineral, slope, load);
  return Math.min(dug, soft) < height;
}
