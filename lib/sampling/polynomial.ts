/**
 * Polynomial by Horner's rule.
 * @param coefficients - from the highest power down
 * @param x - where
 */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const c of coefficients) sum = sum * x + c;
  return sum;
}
