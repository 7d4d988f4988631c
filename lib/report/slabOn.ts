/** The slab that an answer casts on the liner: how thick it is, and what it leaves of the pond. */
import type { SlabLaid } from '../contract/index.js';
import type { Decision } from '../decision/index.js';
import { monthsToCast } from '../digging/index.js';
import { pondStage } from '../pond/index.js';
import type { Site } from '../site/index.js';
import {
  CONCRETE_UNIT_WEIGHT,
  deepestFloor,
  facingOf,
  type PondShape,
  slabThickness,
  widened,
} from '../uplift/index.js';

/** Null where nothing is cast. */
export function slabOn(
  {
    water,
    pond: { shape, fullLevel },
  }: Pick<Site, 'water'> & { pond: Pick<Site['pond'], 'shape' | 'fullLevel'> },
  { measures, depth }: Pick<Decision, 'measures' | 'depth'>,
): SlabLaid | null {
  if (measures.ballast <= 0) return null;
  const thickness = slabThickness.compute(1, measures.ballast, CONCRETE_UNIT_WEIGHT);
  const facing = facingOf(thickness, shape.sideSlope);
  const across = (facing ?? thickness) * Math.hypot(1, shape.sideSlope);
  const held = (of: PondShape, deep: number) =>
    fullLevel + Math.min(deep, deepestFloor(of)) > 0 ? pondStage(of, fullLevel, deep).volume : 0;
  return {
    thickness_m: thickness,
    facing_m: facing,
    across_m: across,
    volume_m3: held(shape, depth),
    left_m3: held(within(shape, thickness, across), depth - thickness),
    cast_in: monthsToCast({ water }, depth - measures.raise),
  };
}

/** What is left inside the slab; its shelf lies as much higher as the floor does. */
function within(shape: PondShape, thickness: number, across: number): PondShape {
  const { shelf } = shape;
  const inner = widened(shape, -across);
  return shelf ? { ...inner, shelf: { ...shelf, depth: Math.max(shelf.depth - thickness, 0) } } : inner;
}
