import { formula, type Use, unrecorded } from '../formula/index.js';
import { headLeftInPit, type PitMap, pitMap } from '../seepage/index.js';
import { bedHead } from './bedHead.js';
import type { Bed } from './envelope.js';
import { BED_THICKNESS, evenPlaces, levelAtPipe, strataOf } from './layout.js';

/** Head left under an emptied liner, m above the pipe, or above the underside of a bed. */
export interface HeadLeft {
  /** over the middle of the floor */
  middle: number;
  /** midway between pipes, or between pipe and edge */
  between: number;
  /** at nine tenths of the half width */
  edge: number;
  /** behind the sides */
  walls: number;
}

/** Part of the half width up to which the floor is judged: next to the sides the liner hangs in its fold. Our choice. */
export const EDGE = 0.9;

/** Effective radius of pipe in plain clay, m: 8 rows of slots without a sock (Ghane 2022, abstract). */
export const BARE_RADIUS = 0.016;

/**
 * Head left by pipes laid in plain clay without a bed: much at the edge, all of it behind the walls. See
 * {@link drainUnderFloorMethod}; within 0.01 of the head of the numerical section for bare pipes, 0.025 for pipes whose
 * radius is a third of their depth.
 * @param width - of the floor, m
 * @param head - of the water outside above the pipe, m, 0 and more
 * @param count - of pipes side by side, evenly spaced, at least 1
 * @param slope - of the sides, horizontal to 1 vertical; upright sides leave most
 * @param depth - of the pipe's middle below the liner, m
 * @param radius - effective, m; absent: {@link BARE_RADIUS}
 * @returns head above the pipe, m, at four places under and beside the floor
 */
export function pipesInClay(
  width: number,
  head: number,
  count = 1,
  slope = 0,
  depth = BED_THICKNESS,
  radius = BARE_RADIUS,
): HeadLeft {
  return pipesInPit(clayPit(width, head, slope, depth), width, head, count, depth, radius);
}

/** The pit as far as it lies below the water outside. */
function clayPit(width: number, head: number, slope: number, depth: number): PitMap {
  return pitMap({ width, depth: Math.max(head - depth, 0), slope });
}

function pipesInPit(
  pit: PitMap,
  width: number,
  head: number,
  count: number,
  depth: number,
  radius: number,
): HeadLeft {
  const pipes = evenPlaces(width, count).map((x) => ({ x, depth, radius }));
  const left = headLeftInPit(pit, pipes, head);
  const between = count === 1 ? width / 4 : width / 2 - width / count;
  return { middle: left(0), between: left(between), edge: left((EDGE * width) / 2), walls: head };
}

/** Water in a bed, no higher than that outside. */
export const headInBed = formula({
  title: 'Height of the water over the underside of the bed',
  symbol: 'h',
  unit: 'm',
  expression: 'min(H, u + w)',
  parameters: {
    H: { meaning: 'water outside over the underside of the bed', unit: 'm', min: 0, max: 30 },
    u: { meaning: 'what lies below what carries the water', unit: 'm', min: 0, max: 1 },
    w: { meaning: 'water in what carries it', unit: 'm', min: 0, max: 30 },
  },
  compute: (H: number, u: number, w: number) => Math.min(H, u + w),
  validity: 'the water outside as in the wettest year of ten',
  source: 'geometry',
});

/** What presses on an emptied liner. */
export const netOnLiner = formula({
  title: 'Head that presses on the emptied liner; below nought it lies down',
  symbol: 'n',
  unit: 'm',
  expression: 'h - t - b',
  parameters: {
    h: { meaning: 'water over the underside of the bed, or over the pipe', unit: 'm', min: 0, max: 30 },
    t: { meaning: 'height of the liner over that', unit: 'm', min: 0, max: 2 },
    b: { meaning: 'head that lies on the liner', unit: 'm', min: 0, max: 5 },
  },
  compute: (h: number, t: number, b: number) => h - t - b,
  validity: 'the pond empty',
  source: 'water against water',
});

/**
 * Net pressure head on an emptied liner, m: head left above the pipe, less the height of the liner over it and less what
 * ballast holds. Above 0 it lifts.
 * @param left - from {@link pipesInClay} or {@link bedUnderFloor}
 * @param held - head that ballast on the liner holds, m
 * @param depth - of what `left` is counted from, the pipe or the underside of the bed, below the liner, m
 * @param use - what evaluates the formula midway between pipes, for a record
 * @returns m of water, at the same places
 */
export function netUnderLiner(
  left: HeadLeft,
  held: number,
  depth = BED_THICKNESS,
  use: Use = unrecorded,
): HeadLeft {
  const net = (head: number, use: Use = unrecorded) => use(netOnLiner, head, depth, held);
  return {
    middle: net(left.middle),
    between: net(left.between, use),
    edge: net(left.edge),
    walls: net(left.walls),
  };
}

/**
 * Fewest pipes in plain clay side by side that keep the net pressure under the floor, not behind the sides, below the
 * ballast; absent where a dozen do not.
 * @param width - of the floor, m
 * @param head - of the water outside above the pipe, m, 0 and more
 * @param held - head that ballast on the liner holds, m
 * @param slope - of the sides, horizontal to 1 vertical
 * @returns a number of pipes, 1 to 12, or undefined
 */
export function pipesForBallast(width: number, head: number, held: number, slope = 0): number | undefined {
  const pit = clayPit(width, head, slope, BED_THICKNESS);
  for (let count = 1; count <= 12; count++) {
    const left = pipesInPit(pit, width, head, count, BED_THICKNESS, BARE_RADIUS);
    const { middle, between, edge } = netUnderLiner(left, held);
    if (Math.max(middle, between, edge) <= 0) return count;
  }
  return undefined;
}

/**
 * Head left by a filtered bed with pipes in it, see {@link bedHeadMethod}: over a pipe, midway, at nine tenths of the way.
 * @param bed - what it is made of
 * @param spacing - of the pipes, or the width of the floor for one pipe, m
 * @param head - of the water outside above the underside of the bed, m
 * @param inflow - per area of floor, m/s, 0 and more
 * @param turnedUp - whether the bed goes up behind the sides
 * @param diameter - of the pipe, m
 * @param use - what evaluates the formulas of the water midway between pipes, for a record
 * @returns head above the underside of the bed, m, at four places under and beside the floor
 */
export function bedUnderFloor(
  bed: Bed,
  spacing: number,
  head: number,
  inflow: number,
  turnedUp: boolean,
  diameter: number,
  use: Use = unrecorded,
): HeadLeft {
  const strata = strataOf(bed);
  // A mat lies above the underside that heads are counted from.
  const under = BED_THICKNESS - strata.reduce((sum, l) => sum + l.thickness, 0);
  const at = (reach: number, use: Use = unrecorded) =>
    use(headInBed, head, under, bedHead(strata, levelAtPipe(bed, diameter, use), inflow, reach, use));
  const edge = at((EDGE * spacing) / 2);
  return { middle: at(0), between: at(spacing / 2, use), edge, walls: turnedUp ? edge : head };
}
