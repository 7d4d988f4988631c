import { method } from '../formula/index.js';
import { blanketLoss } from '../groundwater/index.js';
import { headAt, pondSection, type SectionSoil, solveSaturated } from '../seepage/index.js';
import type { Bed } from './envelope.js';
import { BED_THICKNESS, transmissivity } from './layout.js';

/** Head left under an emptied liner, m above the pipe. */
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

/** Effective radius of pipe in plain clay, m: 8 rows of slots without a sock (Ghane 2022, abstract). */
export const BARE_RADIUS = 0.016;
/** The same with a sock or in gravel. */
export const SOCK_RADIUS = 0.059;

export const pipesInClayMethod = method({
  title: 'Head left by pipes in plain clay',
  what:
    'The vertical section of the pond, upright sides, the water standing at its rim on both sides far off, solved on ' +
    'about 6,000 cells.',
  assumptions: [
    'uniform deep clay, full of water up to the level outside; liner tight; pipes full at their own level',
    'within 0.01 of the head of a grid four times as fine',
  ],
  source:
    'seepage in a vertical section; the closed form for a floor level with the ground leaves up to a third of the head ' +
    'more at the edge of a deep pond',
});

/** Cells of that section; its answer does not depend on how fast the uniform clay is. */
const FINENESS = { across: 100, up: 60, hole: 1 } as const;
const CLAY: SectionSoil = { across: 1e-8, down: 1e-8, sorptive: 1, drainable: 0.05, storage: 0 };
/** Ground on either side and below, in widths and depths of the pond. */
const FAR = 4;

/**
 * Head left by pipes laid in plain clay without a bed, see {@link pipesInClayMethod}: much at the edge, all of it behind
 * the walls.
 * @param width - of the floor, m
 * @param head - of the water outside above the pipe, m
 * @param count - of pipes side by side, evenly spaced
 * @param depth - below the liner, m
 * @param radius - effective, m
 */
export function pipesInClay(
  width: number,
  head: number,
  count = 1,
  depth = BED_THICKNESS,
  radius = BARE_RADIUS,
): HeadLeft {
  if (head <= 0) return { middle: 0, between: 0, edge: 0, walls: 0 };
  // Counted from the water outside; a floor above it is as one level with it.
  const floor = -Math.max(head - depth, SHALLOWEST);
  const level = floor - depth;
  const [half, far] = [width / 2, FAR * (width + head)];
  const { section } = pondSection(
    {
      outline: [
        { x: -half, z: 0 },
        { x: -half, z: floor },
        { x: half, z: floor },
        { x: half, z: 0 },
      ],
      pond: floor,
      surface: [
        { x: -half - far, z: 0 },
        { x: half + far, z: 0 },
      ],
      layers: [{ thickness: far, soil: CLAY }],
      base: floor - far,
      pipes: Array.from({ length: count }, (_, i) => ({
        x: (width * (i + 0.5)) / count - half,
        z: level,
        radius,
      })),
      far: { left: 0, right: 0 },
      rain: 0,
    },
    FINENESS,
  );
  const contacts = section.contacts.map((c) => (c.name.startsWith('pipe') ? { ...c, head: level } : c));
  const full = { ...section, contacts };
  const state = solveSaturated(full);
  const share = head / -level;
  const left = (x: number) => share * (headAt(full, state.head, x, floor - 1e-6) - level);
  const between = count === 1 ? width / 4 : width / 2 - width / count;
  return { middle: left(0), between: left(between), edge: left(0.45 * width), walls: head };
}

/** Depth of a floor below the water outside, m, that still makes a section. */
const SHALLOWEST = 0.02;

/**
 * Net pressure head on an emptied liner, m: head left above the pipe, less the height of the liner over it and less what
 * ballast holds. Above 0 it lifts.
 * @param held - head that ballast on the liner holds, m
 * @param depth - of the pipe below the liner, m
 */
export function netUnderLiner(left: HeadLeft, held: number, depth = BED_THICKNESS): HeadLeft {
  const net = (head: number) => head - depth - held;
  return {
    middle: net(left.middle),
    between: net(left.between),
    edge: net(left.edge),
    walls: net(left.walls),
  };
}

/**
 * Fewest pipes in plain clay side by side that keep the net pressure under the floor, not behind the sides, below the
 * ballast; absent where a dozen do not.
 * @param held - head that ballast on the liner holds, m
 */
export function pipesForBallast(width: number, head: number, held: number): number | undefined {
  for (let count = 1; count <= 12; count++) {
    const { middle, between, edge } = netUnderLiner(pipesInClay(width, head, count), held);
    if (Math.max(middle, between, edge) <= 0) return count;
  }
  return undefined;
}

/**
 * Head left by a filtered bed with pipes in it.
 * @param spacing - of the pipes, or the width of the floor for one pipe, m
 * @param head - of the water outside above the pipe, m
 * @param inflow - per area of floor, m/s
 * @param turnedUp - whether the bed goes up behind the sides
 */
export function bedUnderFloor(
  bed: Bed,
  spacing: number,
  head: number,
  inflow: number,
  turnedUp: boolean,
): HeadLeft {
  const conductivity = transmissivity(bed) / BED_THICKNESS;
  const loss = (x: number) => Math.min(head, blanketLoss.compute(inflow, x, conductivity, BED_THICKNESS));
  const edge = loss(0.45 * spacing);
  return { middle: 0, between: loss(spacing / 2), edge, walls: turnedUp ? edge : head };
}
