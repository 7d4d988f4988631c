import erfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';

/** Standard normal quantile. */
export function normalQuantile(p: number): number {
  return -Math.SQRT2 * erfcinv(2 * p);
}

/** Standard normal distribution function. */
export function normalCdf(z: number): number {
  return 0.5 * erfc(-z / Math.SQRT2);
}
