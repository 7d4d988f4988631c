import { method, SECONDS_PER_DAY } from '../formula/index.js';
import { augerHoleRate, augerHoleUnfilled, basicTimeLag, intakeShapeFactor } from '../seepage/index.js';

export const recoveredLevelMethod = method({
  title: 'Level a filling hole is heading for',
  what:
    'Fits level and permeability together to the looks since a hole was opened or bailed: exponential recovery in a ' +
    'sealed pipe (three equal looks give the level alone), the auger-hole equation in an open hole.',
  assumptions: [
    'the water outside stands still meanwhile: looks over at most 30 days',
    'a tape errs by 5 mm (one standard deviation); all levels between what was seen and the ground are alike before the looks',
    'the permeability is that of the ground with its spread',
    'looks without a time of day are used from five days after the start on',
    'a band wider than 0.3 m (nine in ten), or looks that no recovery fits, leave the last look a lower limit only',
  ],
  source: 'Hvorslev 1951; Ernst 1950; least squares with the permeability integrated out (Laplace)',
});

/** A hole that fills. Lengths m, depths below the ground. */
export interface FillingHole {
  /** only its lower end is open to the ground */
  sealed: boolean;
  floor: number;
  /** depth of the water at the start: the floor when opened, the level left when bailed */
  start: number;
  /** radius of the pipe or hole the water rises in */
  poolRadius: number;
  /** radius of the hole or sand pack */
  holeRadius: number;
  /** length through which water enters a sealed pipe */
  intakeLength: number;
}

/** A look while it fills: s since the start, m below the ground. */
export interface FillingLook {
  time: number;
  depth: number;
}

/** Permeability of the ground: median, m/s, and spread of the logarithm (Infinity: nothing known). */
export interface KnownPermeability {
  median: number;
  spread: number;
}

/** Where the water is heading: a level with the band that holds nine in ten, or only that it is above the last look. */
type Recovered =
  | { says: 'level'; depth: number; shallowest: number; deepest: number; permeability: number }
  | { says: 'above'; depth: number };

/** Standard deviation of a look with a tape, m. */
const LOOK_ERROR = 0.005;
const WIDEST_BAND = 0.3;
/** Longest that the water outside is taken to stand still, s. */
export const LONGEST_RECOVERY = 30 * SECONDS_PER_DAY;
/** Water on a floor that a tape surely notices, m. */
const NOTICED = 0.02;
/** Standard normal score that 95 in 100 stay below. */
export const SCORE_95 = 1.6448536269514722;

/** Depth to the water in a hole after a time, with the water outside at a depth. */
export function fillingDepth(hole: FillingHole, outside: number, permeability: number, time: number): number {
  const missing = hole.start - outside;
  if (hole.sealed) {
    const shape = intakeShapeFactor.compute(hole.intakeLength, hole.holeRadius);
    return outside + missing * Math.exp(-time / basicTimeLag.compute(hole.poolRadius, shape, permeability));
  }
  const below = hole.floor - outside;
  // In a pipe narrower than its hole the same inflow lifts the water faster.
  const rate =
    augerHoleRate.compute(permeability, below, hole.holeRadius) * (hole.holeRadius / hole.poolRadius) ** 2;
  return outside + below * augerHoleUnfilled.compute(missing / below, rate, time);
}

/**
 * Level that a filling hole is heading for.
 * @param looks - since the start, by time, at least one
 * @param highest - depth the water outside cannot stand above, m: 0 for the ground, or the spill level
 * @returns a level with its band, or a lower limit where the looks do not settle one
 */
export function recoveredLevel(
  looks: readonly FillingLook[],
  hole: FillingHole,
  permeability: KnownPermeability,
  highest = 0,
): Recovered {
  const limit: Recovered = { says: 'above', depth: Math.min(...looks.map((l) => l.depth)) };
  if (looks.length < 2 || looks.at(-1)!.time > LONGEST_RECOVERY || !(limit.depth < hole.start)) return limit;
  let low = Math.min(highest, limit.depth);
  let high = Math.min(limit.depth + 2 * LOOK_ERROR, hole.start - LOOK_ERROR);
  let grid: { depth: number; log: number; permeability: number }[] = [];
  // Narrow the grid to where the looks allow the level to be.
  for (let round = 0; round < 8; round++) {
    grid = Array.from({ length: POINTS }, (_, i) => {
      const depth = low + ((high - low) * (i + 0.5)) / POINTS;
      return { depth, ...overPermeability(looks, hole, depth, permeability) };
    });
    const most = Math.max(...grid.map((g) => g.log));
    const likely = grid.filter((g) => g.log > most - 12);
    if (likely.length > POINTS / 3) break;
    const step = (high - low) / POINTS;
    [low, high] = [Math.max(low, likely[0].depth - step), Math.min(high, likely.at(-1)!.depth + step)];
  }
  const best = grid.reduce((a, b) => (b.log > a.log ? b : a));
  const misfit = looks.reduce(
    (sum, l) => sum + (fillingDepth(hole, best.depth, best.permeability, l.time) - l.depth) ** 2,
    0,
  );
  if (misfit > looks.length * (3 * LOOK_ERROR) ** 2) return limit;
  const total = grid.reduce((sum, g) => sum + Math.exp(g.log - best.log), 0);
  const quantile = (p: number) => {
    let sum = 0;
    const at = grid.findIndex((g) => {
      sum += Math.exp(g.log - best.log) / total;
      return sum >= p;
    });
    return grid[at === -1 ? grid.length - 1 : at].depth;
  };
  const [shallowest, depth, deepest] = [quantile(0.05), quantile(0.5), quantile(0.95)];
  if (deepest - shallowest > WIDEST_BAND) return limit;
  return { says: 'level', depth, shallowest, deepest, permeability: best.permeability };
}

const POINTS = 121;

/** Log-likelihood of a level outside with the permeability integrated out, and the permeability that fits best. */
function overPermeability(
  looks: readonly FillingLook[],
  hole: FillingHole,
  outside: number,
  { median, spread }: KnownPermeability,
): { log: number; permeability: number } {
  const centre = Math.log(median);
  const reach = Math.min(5 * spread, 14);
  const log = (x: number) => {
    const k = Math.exp(x);
    let sum = -0.5 * ((x - centre) / spread) ** 2;
    for (const l of looks)
      sum -= 0.5 * ((fillingDepth(hole, outside, k, l.time) - l.depth) / LOOK_ERROR) ** 2;
    return sum;
  };
  const coarse = (2 * reach) / 40;
  let x = centre;
  for (let i = -20; i <= 20; i++) if (log(centre + i * coarse) > log(x)) x = centre + i * coarse;
  let [a, b] = [x - coarse, x + coarse];
  for (let i = 0; i < 40; i++) {
    const [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
    if (log(c) > log(d)) b = d;
    else a = c;
  }
  x = (a + b) / 2;
  const most = log(x);
  // Laplace: the width of the peak from its curvature.
  const h = 1e-3;
  const curvature = Math.max((2 * most - log(x + h) - log(x - h)) / h ** 2, 1e-2);
  return { log: most - 0.5 * Math.log(curvature), permeability: Math.exp(x) };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Depth that the water outside lies below for sure when a hole is still dry: with less inflow than a tape notices,
 * in ground as tight as one in twenty.
 * @param time - s since it was opened or bailed dry
 * @returns depth below the ground, m; undefined where 'dry' tells nothing down from the ground
 */
export function dryBound(
  time: number,
  hole: FillingHole,
  { median, spread }: KnownPermeability,
): number | undefined {
  const tight = median * Math.exp(-SCORE_95 * spread);
  if (!(tight > 0)) return undefined;
  const filled = (outside: number) =>
    hole.floor - fillingDepth({ ...hole, start: hole.floor }, outside, tight, time);
  if (filled(0) < NOTICED) return undefined;
  let [wet, dry] = [0, hole.floor - NOTICED / 2];
  for (let i = 0; i < 50; i++) {
    const middle = (wet + dry) / 2;
    if (filled(middle) > NOTICED) wet = middle;
    else dry = middle;
  }
  return dry;
}
