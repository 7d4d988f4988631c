import { formula } from '../formula/index.js';

/** A positive quantity known with spread: log-normal, with the evidence it rests on. */
export interface LogEstimate {
  /** SI unit of the quantity */
  median: number;
  /** standard deviation of the natural logarithm, 0 where it is known */
  spread: number;
  /** what it rests on, in words */
  evidence: string[];
}

/** Permeability as far above or below its median as is asked. */
export const permeabilityAt = formula({
  title: 'Permeability at an end of what is known',
  symbol: 'K',
  unit: 'm/s',
  expression: 'm*exp(s*z)',
  parameters: {
    m: { meaning: 'median', unit: 'm/s', min: 1e-12, max: 1 },
    s: { meaning: 'standard deviation of the logarithm', unit: '-', min: 0, max: 3 },
    z: { meaning: 'spreads above the median', unit: '-', min: -4, max: 4 },
  },
  compute: (m: number, s: number, z: number) => m * Math.exp(s * z),
  validity: 'z = 1.28155 at the 90 % end, its opposite at the 10 % end',
  source: 'log-normal distribution',
});

/**
 * Value of a log-normal estimate at a standard normal score.
 * @param estimate - median and spread of the logarithm
 * @param score - how many spreads above the median; 0 is the median
 * @returns in the unit of the median
 */
export function logValue(estimate: LogEstimate, score: number): number {
  return permeabilityAt.compute(estimate.median, estimate.spread, score);
}

/** Standard normal score of the 10 % and 90 % points. */
export const SCORE_90 = 1.2815515655446004;

/**
 * p10, p50 and p90 of a log-normal estimate.
 * @param estimate - median and spread of the logarithm
 * @returns in the unit of the median
 */
export function logPercentiles(estimate: LogEstimate): { p10: number; p50: number; p90: number } {
  return {
    p10: logValue(estimate, -SCORE_90),
    p50: estimate.median,
    p90: logValue(estimate, SCORE_90),
  };
}
