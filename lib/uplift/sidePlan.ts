import { SECONDS_PER_DAY } from '../formula/index.js';
import { SIDE_FACTOR_WANTED, standingHeight } from './sideStability.js';
import { HALF_DONE, infiniteSlopeFactor, softeningTime } from './slopeFactors.js';

/** A side of clay. */
export interface ClaySide {
  /** undrained strength as dug, Pa */
  strength: number;
  /** of the wet clay, N/m³ */
  unitWeight: number;
  /** of paving or stones at the edge, Pa; 0 where there is none */
  edgingLoad: number;
  /** effective angle of friction once softened, rad; absent: {@link SOFTENED_FRICTION} */
  friction?: number;
}

/** Share of its fresh strength left in a fissured clay that has stood wet behind a liner. Our choice; half to two thirds is common practice. */
export const SOFTENED_SHARE = 0.6;
/** Friction of softened clay, rad: 24°. Common practice: 20 to 28°. */
export const SOFTENED_FRICTION = (24 * Math.PI) / 180;
/** Way of the water into a cracked side, and how fast it goes (1 m² a year). Our choice; common practice 0.3 to 10. */
const CRACK_SPACING = 0.3;
const SWELLING = 1 / (365.25 * SECONDS_PER_DAY);
/** Narrowest shelf worth digging, m. Our choice: a plant basket. */
const LEAST_SHELF = 0.2;
/** Flattest side by Taylor's numbers that still gains by lying back: 53°. */
const FLATTEST_THAT_HELPS = 1 / Math.tan((53 * Math.PI) / 180);

/**
 * Steepest side that stands undrained, with a crack full of water.
 * @param clay - its strength, weight and load at the edge
 * @param height - of the side, m, 0 and more
 * @param factor - of safety, 1 or more
 * @returns horizontal to 1 vertical, 0 (upright) to about 0.75; null where no slope gives the factor: the clay is too soft for
 *   height and load
 */
export function steepestSide(clay: ClaySide, height: number, factor = SIDE_FACTOR_WANTED): number | null {
  const stands = (slope: number) =>
    standingHeight(clay.strength, clay.unitWeight, slope, clay.edgingLoad) >= factor * height;
  if (stands(0)) return 0;
  if (!stands(FLATTEST_THAT_HELPS)) return null;
  let [steep, flat] = [0, FLATTEST_THAT_HELPS];
  for (let i = 0; i < 50; i++) {
    const middle = (steep + flat) / 2;
    if (stands(middle)) flat = middle;
    else steep = middle;
  }
  return flat;
}

/**
 * Steepest side for years without a pond's support: softened, without cohesion; the load at the edge is left out.
 * @param clay - its weight and friction
 * @param wetShare - share of its height below the water outside, which seeps out of it, 0–1
 * @param factor - of safety, 1 or more
 * @returns horizontal to 1 vertical
 */
export function steepestLeftEmpty(clay: ClaySide, wetShare = 1, factor = SIDE_FACTOR_WANTED): number {
  const friction = clay.friction ?? SOFTENED_FRICTION;
  return factor / infiniteSlopeFactor.compute(0, clay.unitWeight, 1, wetShare, friction, Math.PI / 4);
}

/**
 * The same clay after it has stood wet behind a liner.
 * @param clay - as dug
 * @returns as it is then
 */
export function softened(clay: ClaySide): ClaySide {
  return { ...clay, strength: clay.strength * SOFTENED_SHARE };
}

/** How the sides of a pond may be cut; slopes horizontal to 1 vertical, null where no slope does. */
export interface SidePlan {
  /** while it is dug */
  digging: number | null;
  /** when a pond that has stood is emptied fast */
  emptied: number | null;
  /** when it stays empty for years, or the water outside stands above the pond for long */
  leftEmpty: number;
  /** the one to dig: the flatter of digging and emptied, rounded up to 0.05 */
  slope: number | null;
  /** upright steps with shelves instead, lying back as far: height of a riser, width of a shelf and of all together, m */
  steps: { count: number; riser: number; shelf: number; run: number } | null;
}

/**
 * Steepest safe side for a depth, and steps that may be dug instead.
 * @param clay - its strength, weight and load at the edge
 * @param depth - height of the side, m, above 0
 * @param factor - of safety, 1 or more
 * @returns slopes while dug, emptied and left empty, the one to dig, horizontal to 1 vertical, and steps instead
 */
export function sidePlan(clay: ClaySide, depth: number, factor = SIDE_FACTOR_WANTED): SidePlan {
  const digging = steepestSide(clay, depth, factor);
  const emptied = steepestSide(softened(clay), depth, factor);
  const slope =
    digging === null || emptied === null ? null : Math.ceil(Math.max(digging, emptied) / 0.05 - 1e-9) * 0.05;
  return {
    digging,
    emptied,
    leftEmpty: steepestLeftEmpty(clay, 1, factor),
    slope: slope === null ? null : Number(slope.toFixed(2)),
    steps: slope === null ? null : stepsFor(softened(clay), depth, factor),
  };
}

/** Upright risers that each stand, with shelves so wide that any run of them lies back as far as its height asks. */
function stepsFor(clay: ClaySide, depth: number, factor: number): SidePlan['steps'] {
  const tallest = standingHeight(clay.strength, clay.unitWeight, 0, clay.edgingLoad) / factor;
  if (tallest <= 0) return null;
  const count = Math.ceil(depth / tallest - 1e-9);
  const riser = depth / count;
  let shelf = count > 1 ? LEAST_SHELF : 0;
  for (let k = 2; k <= count; k++) {
    const slope = steepestSide(clay, k * riser, factor);
    if (slope === null) return null;
    shelf = Math.max(shelf, (slope * k * riser) / (k - 1));
  }
  return { count, riser, shelf, run: shelf * (count - 1) };
}

/**
 * Seconds the sides of an emptied pond may be left without its water: 0 where softened clay lacks the factor at once,
 * Infinity where they would stand for years or no water reaches them, else until the clay beside the cut has half taken
 * up its water, longer in proportion as less of the side stands in water (our choice).
 * @param clay - its strength, weight and load at the edge
 * @param height - of the side that is bared, m, 0 and more
 * @param sideSlope - horizontal to 1 vertical, 0 and more
 * @param wetShare - share of that height below the water outside, 0–1
 * @param factor - of safety, 1 or more
 * @returns s
 * @throws InputError for a side that overhangs
 */
export function secondsSidesAllow(
  clay: ClaySide,
  height: number,
  sideSlope: number,
  wetShare = 1,
  factor = SIDE_FACTOR_WANTED,
): number {
  const soft = softened(clay);
  if (standingHeight(soft.strength, soft.unitWeight, sideSlope, soft.edgingLoad) < factor * height) return 0;
  if (wetShare <= 0 || sideSlope >= steepestLeftEmpty(clay, wetShare, factor))
    return Number.POSITIVE_INFINITY;
  return softeningTime.compute(HALF_DONE, CRACK_SPACING, SWELLING) / Math.min(wetShare, 1);
}

/** What ends the time that a pond may stand empty. */
export interface EmptyTime {
  seconds: number;
  governs: 'lift' | 'sides' | 'heave' | 'none';
}

/**
 * The shorter of the time to lift and what the sides allow; Infinity and `none` where neither ends it.
 * @param lift - time until the liner lifts, s; Infinity: never
 * @param sides - time the sides allow, s; Infinity: no limit
 * @param heaves - the floor heaves over a seam as soon as the pond is empty
 * @returns s, and which it is
 */
export function emptyTime(lift: number, sides: number, heaves = false): EmptyTime {
  if (heaves) return { seconds: 0, governs: 'heave' };
  const seconds = Math.min(lift, sides);
  return {
    seconds,
    governs: seconds === Number.POSITIVE_INFINITY ? 'none' : lift <= sides ? 'lift' : 'sides',
  };
}
