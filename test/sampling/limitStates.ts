import { normalCdf, normalQuantile } from '../../lib/sampling/index.js';

/** Weather years of the share, evenly spread over the last input. */
const YEARS = 30;

/**
 * Fails where a·x exceeds b, x standard normal: its chance is Φ(−b/|a|). The last input is that of a year, so the
 * share of failing years of a sample takes its place, and has an exact mean as well.
 */
export function limitState(weights: number[], chance: number) {
  const ground = weights.slice(0, -1);
  const limit = -normalQuantile(chance) * Math.hypot(...weights);
  const last = weights[weights.length - 1];
  const years = Array.from({ length: YEARS }, (_, y) => last * normalQuantile((y + 0.5) / YEARS));
  const load = (z: ArrayLike<number>, s: number) =>
    ground.reduce((sum, a, j) => sum + a * z[s * weights.length + j], 0);
  return {
    chance,
    fails: (z: ArrayLike<number>, s: number) =>
      load(z, s) + last * z[(s + 1) * weights.length - 1] > limit ? 1 : 0,
    share: (z: ArrayLike<number>, s: number) => {
      const fixed = load(z, s);
      return years.reduce((failed, y) => failed + (fixed + y > limit ? 1 : 0), 0) / YEARS;
    },
    meanShare: years.reduce((sum, y) => sum + normalCdf((y - limit) / Math.hypot(...ground)), 0) / YEARS,
  };
}

/** Fails where any input exceeds its limit: 1 − Π(1 − p). */
export function seriesSystem(chances: number[]) {
  const limits = chances.map((p) => -normalQuantile(p));
  return {
    chance: 1 - chances.reduce((safe, p) => safe * (1 - p), 1),
    fails: (z: ArrayLike<number>, s: number) =>
      limits.some((limit, j) => z[s * limits.length + j] > limit) ? 1 : 0,
  };
}

/** Of repeats with seeds 1, 2, …: root mean square error, and how often the 95 % band held the truth. */
export function repeated(
  repeats: number,
  truth: number,
  estimate: (seed: number) => { value: number; halfWidth95: number },
) {
  let [squares, covered] = [0, 0];
  for (let seed = 1; seed <= repeats; seed++) {
    const { value, halfWidth95 } = estimate(seed);
    squares += (value - truth) ** 2;
    if (Math.abs(value - truth) <= halfWidth95) covered++;
  }
  return { error: Math.sqrt(squares / repeats), coverage: covered / repeats };
}
