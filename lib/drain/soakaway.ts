import { formula, SECONDS_PER_DAY } from '../formula/index.js';

/** Time in which a soakaway loses half of its water. */
export const soakawayHalfTime = formula({
  title: 'Time in which a soakaway half empties',
  symbol: 't',
  unit: 's',
  expression: '0.5*S/(K*P*h/2)',
  parameters: {
    S: { meaning: 'water it holds when full', unit: 'm³', min: 0.01, max: 100 },
    K: { meaning: 'soakage rate of the ground', unit: 'm/s', min: 1e-12, max: 1e-2 },
    P: { meaning: 'length round it', unit: 'm', min: 0.1, max: 100 },
    h: { meaning: 'depth of water when full', unit: 'm', min: 0.05, max: 5 },
  },
  compute: (S: number, K: number, P: number, h: number) => (0.5 * S) / ((K * P * h) / 2),
  validity: 'water soaks out through the walls below half depth only: the floor silts up',
  source: 'BRE Digest 365, as on an engineer’s sheet (seen)',
});

/** A soakaway must be half empty within a day (BRE Digest 365, county guides as read), s. */
const HALF_EMPTY = SECONDS_PER_DAY;
/** Ground in which no soakaway is built, m/s (the same guides). */
const LEAST_SOAKAGE = 1e-6;
/** Its floor stands so far above the highest winter water, m (the same guides). */
export const SOAKAWAY_CLEARANCE = 1;
/** Voids of the stone in it. Common practice. */
const VOIDS = 0.35;

/** A soakaway judged. */
export interface SoakawayVerdict {
  /** time until half of it is gone, s */
  half: number;
  works: boolean;
  /** the water in the ground stands in it, it empties too slowly, or the water comes too near; null: nothing */
  fault: 'drowned' | 'slow' | 'near' | null;
}

/**
 * Judges a square soakaway filled with stone (35 % voids), by {@link soakawayHalfTime}.
 * @param soakaway - water it must hold, m³, 0.01 and more; its depth when full, m, above 0; permeability of the ground,
 *   m/s, above 0; height of its floor above the highest winter water, m, below 0 where that stands in it
 * @returns time to half empty, s, and what is wrong with it
 */
export function judgeSoakaway(soakaway: {
  volume: number;
  depth: number;
  permeability: number;
  clearance: number;
}): SoakawayVerdict {
  const { volume, depth, permeability: k, clearance } = soakaway;
  const perimeter = 4 * Math.sqrt(volume / (VOIDS * depth));
  const half = soakawayHalfTime.compute(volume, k, perimeter, depth);
  const slow = half > HALF_EMPTY || k < LEAST_SOAKAGE;
  const fault = clearance < 0 ? 'drowned' : slow ? 'slow' : clearance < SOAKAWAY_CLEARANCE ? 'near' : null;
  return { half, works: fault === null, fault };
}
