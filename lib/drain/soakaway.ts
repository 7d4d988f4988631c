import { formula } from '../formula/index.js';

/** Time in which a soakaway empties into the ground. */
export const soakawayTime = formula({
  title: 'Emptying time of a soakaway',
  symbol: 't',
  unit: 's',
  expression: 'n*A/(K*P)*log(1 + P*h/A)',
  parameters: {
    n: { meaning: 'share of the pit that holds water', unit: '-', min: 0.05, max: 1 },
    A: { meaning: 'area of its floor', unit: 'm²', min: 0.05, max: 50 },
    P: { meaning: 'length round it', unit: 'm', min: 0.1, max: 60 },
    h: { meaning: 'depth of water', unit: 'm', min: 0.05, max: 5 },
    K: { meaning: 'conductivity of the ground', unit: 'm/s', min: 1e-12, max: 1e-2 },
  },
  compute: (n: number, A: number, P: number, h: number, K: number) =>
    ((n * A) / (K * P)) * Math.log(1 + (P * h) / A),
  validity:
    'water soaks out through floor and sides at the conductivity; the water in the ground lies below the pit',
  source: 'water balance K (A + P h) = −n A dh/dt, integrated',
});

/** A soakaway must be half empty within a day (building guides as read), s. */
export const HALF_EMPTY = 86400;
/** Ground in which no soakaway is built, m/s (the same guides). */
export const LEAST_SOAKAGE = 1e-6;

/** A soakaway judged. */
export interface SoakawayVerdict {
  /** time until half of it is gone, s */
  half: number;
  /** whole emptying time, s */
  whole: number;
  works: boolean;
  words: string;
}

/**
 * Judges a square soakaway filled with stone (35 % voids) in ground of a conductivity, by {@link soakawayTime}.
 * @param volume - water it must hold, m³
 * @param depth - of water in it when full, m, above 0
 * @param k - conductivity of the ground, m/s, above 0
 * @param water - whether the water in the ground stands above its floor in the wet half-year
 * @returns times to half empty and to empty, s, and the verdict in words
 */
export function judgeSoakaway(volume: number, depth: number, k: number, water: boolean): SoakawayVerdict {
  const voids = 0.35;
  const area = Math.max(volume / (voids * depth), 0.05);
  const perimeter = 4 * Math.sqrt(area);
  const time = (h: number) => soakawayTime.compute(voids, area, perimeter, h, k);
  const whole = time(depth);
  const half = whole - time(depth / 2);
  const works = half <= HALF_EMPTY && k >= LEAST_SOAKAGE && !water;
  const days = whole / 86400;
  const words = works
    ? `a soakaway here is half empty after ${(half / 3600).toPrecision(2)} hours`
    : water
      ? 'the water in the ground stands in it when it is needed: a second tub'
      : `it takes ${days < 2 ? `${(whole / 3600).toPrecision(2)} hours` : `${days.toPrecision(2)} days`} to empty: a second tub, full when the next storm comes`;
  return { half, whole, works, words };
}
