import type { Recommendation } from './result.js';

/** What may still be looked up, by code. */
export type Measurement = 'season-of-dips' | 'recovery-test' | 'ditch-in-flood' | 'deeper-hole' | 'seam-pipe';

/** A measurement that may still be taken, and what it is worth; see {@link Recommendation}. */
export type NextMeasurement = Omit<Recommendation['measure_next'][number], 'what' | 'where'> & {
  what: Measurement;
  /** a hole or point of the survey; null: where the pond is planned */
  where: string | null;
};
