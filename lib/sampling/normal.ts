import erfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';

/**
 * Standard normal quantile.
 * @param p - chance of a lower value, 0 to 1
 * @returns in standard deviations; −∞ at 0, ∞ at 1
 */
export function normalQuantile(p: number): number {
  return -Math.SQRT2 * erfcinv(2 * p);
}

/**
 * Standard normal distribution function.
 * @param z - in standard deviations
 * @returns chance of a lower value, 0 to 1
 */
export function normalCdf(z: number): number {
  return 0.5 * erfc(-z / Math.SQRT2);
}
