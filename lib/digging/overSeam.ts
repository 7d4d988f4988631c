/** A floor over the layers whose water is under pressure: which of them has the least to spare, and how much. */
import { type Use, unrecorded } from '../formula/index.js';
import { normalQuantile } from '../sampling/index.js';
import type { Seam, Site } from '../site/index.js';
import {
  depthOver,
  HEAVE_FACTOR_WANTED,
  headOver,
  plugLeft,
  plugSpare,
  spareHead,
  waterOverPlug,
} from '../uplift/index.js';
import { headIn, seamDepth } from './heave.js';

/** What is held against a seam. */
export interface OverSeam {
  /** level of the floor, m above the datum */
  floor: number;
  /** of the water over it, with the head of what lies on it; that of the floor where nothing is over it, m above the datum */
  holds: number;
  /** 1–12, of the seam's water */
  months: readonly number[];
  /** chance that the seam stands higher than is taken, 0–1 */
  exceeded: number;
}

/** Depth of the water in a seam that is held against a floor, m below the datum ground. */
export function seamWater(seam: Seam, { months, exceeded }: OverSeam, use: Use = unrecorded): number {
  return use(seamDepth, headIn(seam, months), Math.max(normalQuantile(1 - exceeded), 0), seam.headSpread);
}

/** That the water in a seam may rise before the floor over it lacks its factor; before it lifts the liner of a floor cut into the seam, m. */
export function spareOver(seam: Seam, over: OverSeam, use: Use = unrecorded): number {
  const { floor, holds } = over;
  const head = seamWater(seam, over);
  const held = (record: Use) => record(spareHead, holds, -head);
  const weighed = (record: Use) => {
    const pressure = record(depthOver, seam.top, head, 0);
    const left = record(plugLeft, seam.top, floor);
    const lacking = record(waterOverPlug, HEAVE_FACTOR_WANTED, pressure, seam.coverWeight, left);
    const load = holds > floor ? record(headOver, holds, floor) : 0;
    return record(plugSpare, load, lacking, HEAVE_FACTOR_WANTED);
  };
  const cut = -floor > seam.top && head < seam.top;
  return cut && held(unrecorded) < weighed(unrecorded) ? held(use) : weighed(use);
}

/** The seam with the least to spare; absent where there is none. */
export function worstSeam({ ground }: Site, over: OverSeam): Seam | undefined {
  return ground.seams.reduce<Seam | undefined>(
    (worst, seam) => (worst && spareOver(worst, over) <= spareOver(seam, over) ? worst : seam),
    undefined,
  );
}

/** Depth that the water in a seam must stand at, or deeper, for a floor with nothing over it to keep its factor, m below the datum ground. */
export function deepestHead(seam: Seam, over: Omit<OverSeam, 'holds'>): number {
  const bare = { ...over, holds: over.floor };
  return seamWater(seam, bare) - spareOver(seam, bare);
}
