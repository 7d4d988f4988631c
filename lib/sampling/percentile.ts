import quickselect from 'quickselect';

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

/**
 * {@link quantileSorted} of values in any order.
 * @param values - at least one; left in another order
 * @param from - place before which none is larger than any behind it, 0 to that of the quantile
 */
export function quantile(values: Float64Array, p: number, from = 0): number {
  const at = p * (values.length - 1);
  const low = Math.floor(at);
  // The selection needs no more than an array of numbers.
  quickselect(values as unknown as number[], low, from);
  if (at === low) return values[low];
  let next = Number.POSITIVE_INFINITY;
  for (let i = low + 1; i < values.length; i++) if (values[i] < next) next = values[i];
  return values[low] + (at - low) * (next - values[low]);
}

/**
 * p10, p50 and p90 of a sample.
 * @param values - at least one, in any order
 * @returns linear between the values of the sample
 * @example
 * ```ts
 * percentiles([5, 1, 4, 2, 3]).p50; // 3
 * ```
 */
export function percentiles(values: ArrayLike<number>): Percentiles {
  const copy = new Float64Array(values);
  const last = copy.length - 1;
  // Each selection leaves the smaller values before its own place.
  return {
    p10: quantile(copy, 0.1),
    p50: quantile(copy, 0.5, Math.floor(0.1 * last)),
    p90: quantile(copy, 0.9, Math.floor(0.5 * last)),
  };
}
