import type { Recommendation } from './result.js';

/** Least depth of ground known under the dig, m. Common practice. */
export const KNOWN_BELOW = 0.5;

/** What may still be looked up, by code. */
export type Measurement =
  | 'season-of-dips'
  | 'recovery-test'
  | 'ditch-in-flood'
  | 'outlet-at-spill'
  | 'deeper-hole'
  | 'seam-pipe'
  | 'rim-corners';

/** A measurement that may still be taken, and what it is worth; see {@link Recommendation}. */
export type NextMeasurement = Omit<Recommendation['measure_next'][number], 'what' | 'where'> & {
  what: Measurement;
  /** a hole or point of the survey; null: where the pond is planned */
  where: string | null;
};
