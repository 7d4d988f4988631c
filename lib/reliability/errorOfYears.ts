import { type Estimate, meanOfReplicates } from '../sampling/index.js';

/** Error of a chance; ± the half width covers the truth in 95 of 100 draws of samples and of weather. */
export type ChanceError = Pick<Estimate, 'standardError' | 'halfWidth95'>;

/**
 * Error that a record's length leaves: s/√n between its years, with Student's quantile. Few years tell little of their
 * own scatter, but a year's share lies between 0 and 1: with mean p it cannot scatter wider than √(p (1 − p)).
 * @param shares - failing samples, one a year of the record
 */
export function errorOfYears(shares: Float64Array): ChanceError {
  const n = shares.length;
  const mean = shares.reduce((sum, share) => sum + share, 0) / n;
  const widest = Math.sqrt(Math.max(mean * (1 - mean), 0) / n);
  const bound = { standardError: widest, halfWidth95: 1.96 * widest };
  if (n < 2) return bound;
  const { standardError, halfWidth95 } = meanOfReplicates(shares);
  return {
    standardError: Math.min(standardError, bound.standardError),
    halfWidth95: Math.min(halfWidth95, bound.halfWidth95),
  };
}
