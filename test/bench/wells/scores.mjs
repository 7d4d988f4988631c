/** How well bands held on what was measured later. */
const mean = (v) => (v.length > 0 ? v.reduce((a, b) => a + b, 0) / v.length : Number.NaN);

/** Value at a share of a sorted array. */
export const quantile = (sorted, p) => {
  const at = p * (sorted.length - 1);
  const low = Math.floor(at);
  return sorted[low] + (at - low) * (sorted[Math.min(low + 1, sorted.length - 1)] - sorted[low]);
};
export const median = (values) => quantile(Float64Array.from(values).sort(), 0.5);

/** Share of depths inside the 80 % band, its interval score over their spread (Gneiting & Raftery 2007), and skill of the middle. */
export function bandScores(bands, depths) {
  const m = mean(depths);
  const sd = Math.sqrt(mean(depths.map((d) => (d - m) ** 2)));
  const inside = bands.map(({ p10, p90 }, i) => (depths[i] >= p10 && depths[i] <= p90 ? 1 : 0));
  const interval = bands.map(
    ({ p10, p90 }, i) => p90 - p10 + 10 * Math.max(p10 - depths[i], 0) + 10 * Math.max(depths[i] - p90, 0),
  );
  const squares = mean(bands.map(({ p50 }, i) => (p50 - depths[i]) ** 2));
  return { coverage: mean(inside), interval: mean(interval) / sd, nse: 1 - squares / sd ** 2 };
}

/** Yearly highs: share inside the 80 % band, and share nearer the ground than the 95 % high. */
export function highScores(highs) {
  return {
    coverage: mean(
      highs.map(({ seen, sorted }) =>
        seen >= quantile(sorted, 0.1) && seen <= quantile(sorted, 0.9) ? 1 : 0,
      ),
    ),
    above: mean(highs.map(({ seen, sorted }) => (seen < quantile(sorted, 0.05) ? 1 : 0))),
  };
}
