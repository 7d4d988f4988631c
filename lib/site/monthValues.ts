/**
 * Values of one month in every sample and year.
 * @param values - index (sample × years + year) × 12 + month − 1
 * @param month - 1–12
 * @returns a copy, index sample × years + year
 */
export function monthValues(values: ArrayLike<number>, month: number): Float64Array {
  const of = new Float64Array(values.length / 12);
  for (let i = 0, at = month - 1; i < of.length; i++, at += 12) of[i] = values[at]!;
  return of;
}
