/** p10, p50 and p90 of a number. */
export interface Percentiles {
  p10: number;
  p50: number;
  p90: number;
}

/**
 * Quantile of a sample, linear between order statistics (type 7 of Hyndman & Fan 1996).
 * @param sorted - ascending, at least one value
 * @param p - 0–1
 */
export function quantileSorted(sorted: ArrayLike<number>, p: number): number {
  const at = p * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
}

/** p10, p50 and p90 of a sample. */
export function percentiles(values: ArrayLike<number>): Percentiles {
  const sorted = Float64Array.from(values).sort();
  return {
    p10: quantileSorted(sorted, 0.1),
    p50: quantileSorted(sorted, 0.5),
    p90: quantileSorted(sorted, 0.9),
  };
}
