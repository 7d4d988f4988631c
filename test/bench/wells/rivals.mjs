/** What the bands are measured against: the dips' own mean and spread, and a linear reservoir fitted in an hour. */
const Z90 = 1.2816;
const mean = (v) => v.reduce((a, b) => a + b, 0) / v.length;

/** Middle, 10 and 90 % of a normal with the mean and spread of the dips, the same every day. */
export function climatology(dips, days) {
  const depths = dips.map((d) => d.depth);
  const m = mean(depths);
  const n = depths.length;
  const sd = Math.sqrt(depths.reduce((a, d) => a + (d - m) ** 2, 0) / (n - 1)) * Math.sqrt(1 + 1 / n);
  return days.map(() => ({ p10: m - Z90 * sd, p50: m, p90: m + Z90 * sd }));
}

const TAUS = [10, 20, 40, 80, 160, 320];
const FACTORS = [0.5, 0.75, 1];

/**
 * Depth = d − A · Σ (rain − f · evaporation) e^(−age/τ): τ and f from a grid, d and A by least squares, the band from the
 * misses with the degrees of freedom they leave.
 */
export function reservoir({ firstDay, rain, demand }, dips, days) {
  let best;
  for (const tau of TAUS)
    for (const factor of FACTORS) {
      const keeps = Math.exp(-1 / tau);
      const store = new Float64Array(rain.length);
      let held = 0;
      for (let d = 0; d < rain.length; d++) {
        held = held * keeps + rain[d] - factor * demand[d];
        store[d] = held;
      }
      const x = dips.map((dip) => store[dip.day - firstDay]);
      const y = dips.map((dip) => dip.depth);
      const [mx, my] = [mean(x), mean(y)];
      const sxx = x.reduce((a, v) => a + (v - mx) ** 2, 0);
      const sxy = x.reduce((a, v, i) => a + (v - mx) * (y[i] - my), 0);
      const slope = Math.min(sxy / sxx, 0);
      const squares = x.reduce((a, v, i) => a + (y[i] - my - slope * (v - mx)) ** 2, 0);
      if (!best || squares < best.squares) best = { squares, slope, mx, my, sxx, store };
    }
  const n = dips.length;
  const { slope, mx, my, sxx, store } = best;
  const variance = best.squares / Math.max(n - 4, 1);
  return days.map((day) => {
    const x = store[day - firstDay] - mx;
    const sd = Math.sqrt(variance * (1 + 1 / n + (x * x) / sxx));
    const p50 = my + slope * x;
    return { p10: p50 - Z90 * sd, p50, p90: p50 + Z90 * sd };
  });
}
