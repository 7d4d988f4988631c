/** The second path's own calibration: a random walk through the ground's parameters (Metropolis 1953), weighed by the looks. */
import { mulberry32 } from '../../datasets/random.mjs';
import { columnOf, type Forcing, type GroundColumn } from './weather.js';

/** Middle and standard deviation of the logarithm of each parameter; 0: known. */
export type Priors = Record<keyof GroundColumn, { median: number; spread: number }>;

export interface Reading {
  /** place among the days of the forcing */
  at: number;
  depth: number;
  says: 'level' | 'below' | 'above';
  error: number;
}

/** The ordinary year's high by the colours of the soil, m below the ground. */
export interface Colour {
  depth: number;
  spread: number;
}

/** A draw of the ground, with how far it misses a look besides the reading, m. */
export interface Draw {
  ground: GroundColumn;
  missing: number;
}

const MISSING = { median: 0.1, spread: 0.7 };
/** Days in which a miss is forgotten to 1/e, and the fortnights of which one level counts. */
const LASTS = 45;
const APART = 14;

export class Scores {
  private readonly uniform: () => number;
  constructor(seed: number) {
    this.uniform = mulberry32(seed);
  }
  /** Uniform from 0 to 1, without 0. */
  share(): number {
    return 1 - this.uniform();
  }
  /** Standard normal, by Box and Muller. */
  next(): number {
    return Math.sqrt(-2 * Math.log(this.share())) * Math.cos(2 * Math.PI * this.share());
  }
}

/** Standard normal distribution to 1e-7 (Abramowitz & Stegun 26.2.17). */
function below(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x > 0 ? 1 - tail : tail;
}

/** Of levels in one fortnight, counted from the first of all, the first. */
function oneAFortnight(readings: readonly Reading[]): Reading[] {
  const first = readings.find(({ says }) => says === 'level')?.at ?? 0;
  const told = new Set<number>();
  return readings.filter(({ at, says }) => {
    const fortnight = Math.floor((at - first) / APART);
    if (says !== 'level') return true;
    if (told.has(fortnight)) return false;
    told.add(fortnight);
    return true;
  });
}

/**
 * Log of how likely the readings are: the levels by their joint normal density, from the Cholesky factor of its covariance;
 * a bound by the chance of its side given all levels before it, weighed by the time since the bound before.
 */
function logLikelihood(readings: readonly Reading[], depth: Float64Array, missing: number): number {
  const alike = (a: Reading, b: Reading) => missing ** 2 * Math.exp(-Math.abs(a.at - b.at) / LASTS);
  const levels: Reading[] = [];
  const rows: number[][] = [];
  const scores: number[] = [];
  let sum = 0;
  let bound = Number.NEGATIVE_INFINITY;
  for (const one of readings) {
    const { at, depth: seen, says, error } = one;
    // The next row of the factor: what is like the levels before, and what is this reading's own.
    const row: number[] = [];
    levels.forEach((other, j) => {
      const known = row.reduce((k, v, l) => k + v * rows[j]![l]!, 0);
      row.push((alike(one, other) - known) / rows[j]![j]!);
    });
    const own = Math.sqrt(alike(one, one) + error ** 2 - row.reduce((k, v) => k + v * v, 0));
    const off = (seen - depth[at]! - row.reduce((k, v, l) => k + v * scores[l]!, 0)) / own;
    if (says === 'level') {
      sum -= (off * off) / 2 + Math.log(own);
      levels.push(one);
      rows.push([...row, own]);
      scores.push(off);
    } else {
      const chance = Math.max(below(says === 'below' ? -off : off), 1e-12);
      sum += Math.min((at - bound) / LASTS, 1) * Math.log(chance);
      bound = at;
    }
  }
  return sum;
}

/** Log of how likely the colours are: the chance that the mean high of the last eight years comes as near as they say. */
function logOfColour({ depth, spread }: Colour, table: Float64Array): number {
  const highs: number[] = [];
  for (let end = table.length; end >= 2 * 365; end -= 365)
    highs.push(Math.min(...table.subarray(end - 365, end)));
  const mean = highs.reduce((a, b) => a + b, 0) / highs.length;
  return Math.log(Math.max(below((depth - mean) / spread), 0.01));
}

function drawAt(priors: Priors, scores: readonly number[]): Draw {
  let next = 0;
  const log = ({ median, spread }: { median: number; spread: number }) =>
    spread > 0 ? median * Math.exp(spread * scores[next++]!) : median;
  const ground = Object.fromEntries(
    Object.entries(priors).map(([name, prior]) => [name, log(prior)]),
  ) as unknown as GroundColumn;
  ground.spillDepth = Math.min(ground.spillDepth, 0.8 * ground.baseDepth);
  ground.crackShare = Math.min(ground.crackShare, 1);
  return { ground, missing: log(MISSING) };
}

/**
 * Draws of the ground as likely as the looks leave them.
 * @param steps - of each walk
 * @param keep - draws kept of each walk, from its second half
 */
export function calibrated(
  forcing: Forcing,
  readings: readonly Reading[],
  priors: Priors,
  colour: Colour,
  { steps, keep, walks, seed }: { steps: number; keep: number; walks: number; seed: number },
): Draw[] {
  const open = Object.values(priors).filter(({ spread }) => spread > 0).length + 1;
  // The colours are held against eight years; those before the looks make the start forgotten too.
  const from = Math.max(readings.at(-1)!.at - 8 * 365, 0);
  const to = readings.at(-1)!.at + 1;
  const window: Forcing = {
    rain: forcing.rain.subarray(from, to),
    warmth: forcing.warmth.subarray(from, to),
    et0: forcing.et0.subarray(from, to),
  };
  const moved = oneAFortnight(readings).map((one) => ({ ...one, at: one.at - from }));
  const density = (scores: readonly number[]) => {
    const { ground, missing } = drawAt(priors, scores);
    const { depth } = columnOf(window, ground, 0);
    const likely = logLikelihood(moved, depth, missing) + logOfColour(colour, depth);
    return likely - scores.reduce((sum, z) => sum + (z * z) / 2, 0);
  };
  return Array.from({ length: walks }, (_, walk) => {
    const dice = new Scores(seed + walk);
    let here = Array.from({ length: open }, () => dice.next());
    let likely = density(here);
    let reach = 0.5;
    const kept: Draw[] = [];
    const every = Math.floor(steps / 2 / keep);
    for (let i = 1; i <= steps; i++) {
      const there = here.map((z) => z + reach * dice.next());
      const chance = density(there);
      const taken = Math.log(dice.share()) < chance - likely;
      if (taken) [here, likely] = [there, chance];
      // About one step in four is taken where a walk of many parameters mixes best (Roberts, Gelman & Gilks 1997, from memory).
      if (i < steps / 2) reach *= taken ? 1.06 : 0.98;
      else if (kept.length < keep && (i - Math.ceil(steps / 2)) % every === 0)
        kept.push(drawAt(priors, here));
    }
    return kept;
  }).flat();
}
