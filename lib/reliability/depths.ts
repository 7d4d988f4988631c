import { LEVEL_RESOLUTION } from '../formula/index.js';
import { letFall, type Site } from '../site/index.js';
import { deepestFloor, type PondShape } from '../uplift/index.js';

/** Spacing of the depths searched, and the deepest of them, m. Our choice. */
const DEPTH_STEP = 0.05;
const DEEPEST = 3;

/**
 * Depths searched: from 0.2 m, or where its habit still leaves water, to twice the wish, at least to 1.5 m,
 * while the sides leave a floor.
 */
export function depthsOf({ pond }: Site): number[] {
  const drained = letFall(pond.kept) - pond.fullLevel;
  const all = depthsTo(Math.min(Math.max(2 * pond.depth, 1.5), DEEPEST), pond.shape);
  const wet = all.filter((depth) => depth > drained + LEVEL_RESOLUTION);
  return wet.length > 0 ? wet : all.slice(-1);
}

/** All depths that may be searched for a shape, whatever is wished. */
export function searchable(shape: PondShape): number[] {
  return depthsTo(DEEPEST, shape);
}

/** Number of a depth: two that no spade can tell apart have the same. */
export function micrometres(depth: number): number {
  return Math.round(depth * 1e6);
}

function depthsTo(end: number, shape: PondShape): number[] {
  const deepest = Math.min(end, deepestFloor(shape));
  const count = Math.max(Math.floor((deepest - 0.2 + LEVEL_RESOLUTION) / DEPTH_STEP) + 1, 1);
  return Array.from({ length: count }, (_, i) => Number((0.2 + i * DEPTH_STEP).toFixed(4)));
}
