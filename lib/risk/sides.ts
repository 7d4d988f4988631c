import type { Site } from '../site/index.js';
import { type LogEstimate, logValue } from '../soil/index.js';
import { SOFTENED_SHARE, standingHeight } from '../uplift/index.js';
import type { Draws } from './draws.js';
import type { Measures } from './measures.js';
import { Remembered } from './remembered.js';

/** Unit weight of wet clay, N/m³. Common practice. */
export const UNIT_WEIGHT = { mean: 18500, spread: 700 };

/** Heights that clay sides stand, m, one a sample. */
export interface SideHeights {
  /** as dug, wet and cracked */
  dug: Float64Array;
  /** softened behind a liner, with water or air in the crack */
  softWet: Float64Array;
  softDry: Float64Array;
}

const standing = new Remembered<SideHeights>();

/** Heights at which the sides of a site fail; absent where no clay was logged. */
export function sideHeights({ ground, pond }: Site, draws: Draws): SideHeights | undefined {
  const { strength } = ground;
  const { shape, edgingLoad } = pond;
  if (!strength) return undefined;
  return standing.of(draws, JSON.stringify([strength, shape.sideSlope, edgingLoad]), () =>
    heightsOf(strength, shape.sideSlope, edgingLoad, draws),
  );
}

function heightsOf(strength: LogEstimate, slope: number, edgingLoad: number, draws: Draws): SideHeights {
  const stands = (share: number, crack?: 'water' | 'air') =>
    Float64Array.from(draws.strength, (z, s) =>
      standingHeight(
        share * logValue(strength, z),
        UNIT_WEIGHT.mean + UNIT_WEIGHT.spread * draws.unitWeight[s],
        slope,
        edgingLoad,
        crack,
      ),
    );
  return { dug: stands(1), softWet: stands(SOFTENED_SHARE), softDry: stands(SOFTENED_SHARE, 'air') };
}

/** Heights of the sides that an emptied pond bares, m, by depth. */
export function baredSides({ raise }: Measures, depths: ArrayLike<number>): Float64Array {
  return Float64Array.from(depths, (depth) => Math.max(depth - raise, 0));
}

/** First of ascending sides that is taller than it stands; their count where none is, as where none is bared. */
export function firstTaller(sides: Float64Array, stands: number): number {
  let j = sides.length;
  while (j > 0 && sides[j - 1] > Math.max(stands, 0)) j--;
  return j;
}
