/**
 * Chance that Student's t lies within ± `t`, in closed form for whole degrees of freedom: with θ = atan(t/√ν), a sum of
 * powers of cos θ.
 * @param t - 0 or more
 * @param freedom - degrees of freedom ν, 1 or more, whole
 * Source: Abramowitz & Stegun 1964, 26.7.3 and 26.7.4, from memory; checked against tables of t.
 */
export function studentWithin(t: number, freedom: number): number {
  const theta = Math.atan(t / Math.sqrt(freedom));
  const square = Math.cos(theta) ** 2;
  const odd = freedom % 2 === 1;
  let term = odd ? Math.cos(theta) : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < freedom; k += 2) {
    term *= (square * (k - 1)) / k;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}

/**
 * The t that ±t covers 95 % of Student's distribution (its 97.5 % quantile), by bisection.
 * @param freedom - degrees of freedom, 1 or more, whole
 */
export function studentQuantile975(freedom: number): number {
  let [low, high] = [1.9, 13];
  for (let i = 0; i < 60; i++) {
    const t = (low + high) / 2;
    if (studentWithin(t, freedom) < 0.95) low = t;
    else high = t;
  }
  return (low + high) / 2;
}
