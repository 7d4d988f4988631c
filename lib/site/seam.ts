import type { Origin } from '../survey/index.js';

/** A permeable layer under tighter ground, with its pressure. Depths m below the datum ground. */
export interface Seam {
  pit: string;
  top: number;
  /** highest level of its water by month, January first, m below the datum ground (negative above it) */
  heads: number[];
  /** the highest of them */
  headDepth: number;
  /** one standard deviation of it, m */
  headSpread: number;
  /** highest level that was read; absent: none was */
  known?: number;
  /** some months are taken as high as is credible because nobody looked */
  assumed: boolean;
  /** mean unit weight of the lightest ground above it, N/m³ */
  coverWeight: number;
  /** rows that tell of its pressure */
  from: Origin[];
}

/** Unit weight of wet ground, N/m³. Common practice. */
export const COVER_WEIGHT = { mineral: 18500, peat: 11000 };
