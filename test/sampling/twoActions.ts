import { normalCdf, sobolNormals } from '../../lib/sampling/index.js';

/** Unit normal loss integral φ(u) − u(1 − Φ(u)), Raiffa & Schlaifer 1961. */
export function unitNormalLoss(u: number): number {
  return Math.exp((-u * u) / 2) / Math.sqrt(2 * Math.PI) - u * (1 - normalCdf(u));
}

/**
 * Two actions, the state normal about `mean` with spread 1, a reading of it with normal error: leave (0) or act, which
 * costs −state. The mean after the reading is normal about `mean` with spread s = 1/√(1 + error²), so the value of the
 * reading is s·L(|mean|/s), L the unit normal loss integral, and it changes the decision with chance Φ(−|mean|/s).
 */
export function twoActions(n: number, mean: number, error: number, seed: number, replicates: number) {
  const z = sobolNormals(n, 2, seed, replicates);
  const state = Float64Array.from({ length: n }, (_, s) => mean + z[2 * s]);
  const spread = 1 / Math.hypot(1, error);
  return {
    losses: [new Float64Array(n), state.map((x) => -x)],
    reading: state.map((x, s) => x + error * z[2 * s + 1]),
    value: spread * unitNormalLoss(Math.abs(mean) / spread),
    change: normalCdf(-Math.abs(mean) / spread),
  };
}
