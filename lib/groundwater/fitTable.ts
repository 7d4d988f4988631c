import type { ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';
import { latinNormals, normalCdf, uniforms } from '../sampling/index.js';
import type { LogEstimate } from '../soil/index.js';
import { columnSeries, runColumn } from './columnRun.js';
import type { TableParameters } from './tableStore.js';

export const tableFit = method({
  title: 'Fit of the water table to the dips',
  what:
    'Draws parameter sets of the store from their priors, weighs each by how well it meets the dips, draws again ' +
    'around the good ones, and resamples: a population of sets that all could be this ground.',
  assumptions: [
    'parameters log-normal and independent before the dips',
    'a dip differs from the model, besides its reading error, by a spread found with the parameters (0.05 m to begin with)',
    "'dry' says the table is below the hole's floor, a hole still filling that it is above the level seen",
    'dips closer than 14 days tell less than one dip each: their joint weight is reduced in that proportion',
  ],
  source: 'population Monte Carlo (adaptive importance sampling), Cappé et al. 2004, from memory',
});

/** A look at the water, ready for the fit. */
export interface Dip {
  /** days since 1970-01-01 */
  day: number;
  /** m below the ground */
  depth: number;
  /** the level itself, a bound the table lies below, or one it lies above */
  says: 'level' | 'below' | 'above';
  /** one standard deviation of the reading, m */
  error: number;
}

/** Priors of the store's parameters. */
export type TablePriors = Record<keyof TableParameters, LogEstimate>;

/** Parameter sets drawn from what the dips leave possible. */
export interface TableFit {
  sets: TableParameters[];
  /** dips that lay inside the weather record */
  used: number;
  outside: number;
  /** how many different sets carry the weight; below 20 the dips and the priors disagree */
  effective: number;
  /** by how much the model misses a dip, one standard deviation, m */
  missing: number;
  /** largest closure error of the balances, m */
  closure: number;
}

const KEYS: (keyof TableParameters)[] = [
  'porosity',
  'recession',
  'baseDepth',
  'spillDepth',
  'extinctionDepth',
  'delay',
  'rootCapacity',
  'demandFactor',
  'crackShare',
];
/** Miss expected before the dips, m, with the weight of four dips; and the limits it is held to. Our choice. */
const MISS = { expected: 0.05, weight: 4, least: 0.035, most: 0.4 };
const INDEPENDENT_DAYS = 14;
/**
 * Rounds of draws. The dips' weight grows from round to round, so that a narrow fit is found from wide priors; the
 * last round, from which the sets are taken, is the largest.
 */
const ROUNDS = [
  { draws: 400, weight: 0.03 },
  { draws: 400, weight: 0.15 },
  { draws: 400, weight: 0.5 },
  { draws: 400, weight: 1 },
  { draws: 4000, weight: 1 },
];

/** The store's parameters at standard normal scores of their priors. */
export function parametersAt(priors: TablePriors, scores: ArrayLike<number>, offset = 0): TableParameters {
  const p = {} as TableParameters;
  KEYS.forEach((key, j) => {
    p[key] = priors[key].median * Math.exp(priors[key].spread * scores[offset + j]);
  });
  p.spillDepth = Math.min(p.spillDepth, 0.8 * p.baseDepth);
  p.crackShare = Math.min(p.crackShare, 1);
  return p;
}

/**
 * Fits the store to dips.
 * @param count - parameter sets wanted
 * @param seed - whole number
 */
export function fitTable(
  record: ClimateRecord,
  dips: Dip[],
  priors: TablePriors,
  count: number,
  seed: number,
): TableFit {
  const dims = KEYS.length;
  const inside = dips.filter(
    (dip) => dip.day >= record.firstDay && dip.day < record.firstDay + record.liquid.length,
  );
  if (inside.length === 0) {
    const scores = latinNormals(count, dims, seed);
    const sets = Array.from({ length: count }, (_, i) => parametersAt(priors, scores, i * dims));
    return { sets, used: 0, outside: dips.length, effective: count, missing: MISS.expected, closure: 0 };
  }
  const window = fitWindow(record, inside);
  const series = columnSeries(window.liquid.length);
  const temper = independentShare(inside);
  let closure = 0;
  let missing = MISS.expected;
  /** Log likelihood and sum of squared misses of the levels. */
  const judge = (z: Float64Array): { log: number; squares: number } => {
    const run = runColumn(window, parametersAt(priors, z), series);
    closure = Math.max(closure, run.closure);
    let sum = 0;
    let squares = 0;
    for (const dip of inside) {
      const model = series.depth[Math.floor(dip.day) - window.firstDay];
      const sd = Math.hypot(dip.error, missing);
      const off = (model - dip.depth) / sd;
      if (dip.says === 'level') {
        sum -= 0.5 * off * off + Math.log(sd);
        squares += (model - dip.depth) ** 2;
      } else sum += Math.log(Math.max(normalCdf(dip.says === 'below' ? off : -off), 1e-12));
    }
    return { log: temper * sum, squares };
  };
  const levels = inside.filter((d) => d.says === 'level').length;

  let proposal: Proposal = { mean: new Float64Array(dims), factor: identity(dims) };
  let draws: Float64Array[] = [];
  let weights: Float64Array = new Float64Array(0);
  for (const [round, { draws: n, weight }] of ROUNDS.entries()) {
    const normals = latinNormals(n, dims, seed + round);
    draws = Array.from({ length: n }, (_, i) => {
      const z = normals.subarray(i * dims, (i + 1) * dims);
      // One draw in ten from the prior keeps the tails open.
      return i % 10 === 0 ? z.slice() : moved(proposal, z);
    });
    const judged = draws.map(judge);
    const logs = draws.map((z, i) => weight * judged[i].log + logNormal(z) - logMixture(proposal, z));
    const most = Math.max(...logs);
    weights = Float64Array.from(logs, (l) => Math.exp(l - most));
    const total = weights.reduce((a, b) => a + b, 0);
    weights = weights.map((w) => w / total);
    const squares = weights.reduce((sum, w, i) => sum + w * judged[i].squares, 0);
    const spread = Math.sqrt((squares + MISS.weight * MISS.expected ** 2) / (levels + MISS.weight));
    if (round < ROUNDS.length - 1) missing = Math.min(Math.max(spread, MISS.least), MISS.most);
    if (round < ROUNDS.length - 1) proposal = momentsOf(draws, weights);
  }
  const effective = 1 / weights.reduce((a, w) => a + w * w, 0);
  const chosen = systematic(weights, count, seed);
  return {
    sets: chosen.map((i) => parametersAt(priors, draws[i])),
    used: inside.length,
    outside: dips.length - inside.length,
    effective,
    missing,
    closure,
  };
}

/** The record from three years before the first dip to the last: enough to forget the start. */
function fitWindow(record: ClimateRecord, dips: Dip[]): ClimateRecord {
  const from = Math.max(Math.floor(dips[0].day) - 3 * 365 - record.firstDay, 0);
  const to = Math.floor(dips[dips.length - 1].day) - record.firstDay + 1;
  return {
    ...record,
    firstDay: record.firstDay + from,
    liquid: record.liquid.subarray(from, to),
    demand: record.demand.subarray(from, to),
  };
}

function independentShare(dips: Dip[]): number {
  let independent = 1;
  for (let i = 1; i < dips.length; i++)
    independent += Math.min((dips[i].day - dips[i - 1].day) / INDEPENDENT_DAYS, 1);
  return Math.min(independent / dips.length, 1);
}

interface Proposal {
  mean: Float64Array;
  /** lower Cholesky factor, row-major */
  factor: Float64Array;
}

function identity(n: number): Float64Array {
  const m = new Float64Array(n * n);
  for (let i = 0; i < n; i++) m[i * n + i] = 1;
  return m;
}

function moved({ mean, factor }: Proposal, z: ArrayLike<number>): Float64Array {
  const n = mean.length;
  return Float64Array.from(mean, (m, i) => {
    let sum = m;
    for (let j = 0; j <= i; j++) sum += factor[i * n + j] * z[j];
    return sum;
  });
}

/** Weighted mean and covariance, widened by 1.5 so that the next round looks a little farther. */
function momentsOf(draws: Float64Array[], weights: Float64Array): Proposal {
  const n = draws[0].length;
  const mean = new Float64Array(n);
  draws.forEach((z, k) => {
    for (let i = 0; i < n; i++) mean[i] += weights[k] * z[i];
  });
  const cov = new Float64Array(n * n);
  draws.forEach((z, k) => {
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++) cov[i * n + j] += weights[k] * (z[i] - mean[i]) * (z[j] - mean[j]);
  });
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) cov[i * n + j] *= 1.5;
    cov[i * n + i] += 0.02;
  }
  return { mean, factor: cholesky(cov, n) };
}

function cholesky(a: Float64Array, n: number): Float64Array {
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = a[i * n + j];
      for (let k = 0; k < j; k++) sum -= l[i * n + k] * l[j * n + k];
      l[i * n + j] = i === j ? Math.sqrt(sum) : sum / l[j * n + j];
    }
  return l;
}

/** Log density of a standard normal vector, without its constant. */
function logNormal(z: Float64Array): number {
  let sum = 0;
  for (const v of z) sum -= 0.5 * v * v;
  return sum;
}

/** Log density of the mixture the draws came from (0.9 proposal, 0.1 prior), without the same constant. */
function logMixture({ mean, factor }: Proposal, z: Float64Array): number {
  const n = mean.length;
  const y = new Float64Array(n);
  let logDet = 0;
  for (let i = 0; i < n; i++) {
    let sum = z[i] - mean[i];
    for (let k = 0; k < i; k++) sum -= factor[i * n + k] * y[k];
    y[i] = sum / factor[i * n + i];
    logDet += Math.log(factor[i * n + i]);
  }
  const a = Math.log(0.9) + logNormal(y) - logDet;
  const b = Math.log(0.1) + logNormal(z);
  const most = Math.max(a, b);
  return most + Math.log(Math.exp(a - most) + Math.exp(b - most));
}

/** Systematic resampling, then shuffled so that neighbours are not copies. */
function systematic(weights: Float64Array, count: number, seed: number): number[] {
  const next = uniforms(seed + 101);
  const start = next();
  const chosen: number[] = [];
  let sum = 0;
  let i = -1;
  for (let k = 0; k < count; k++) {
    const target = (k + start) / count;
    while (sum < target && i < weights.length - 1) sum += weights[++i];
    chosen.push(i);
  }
  for (let k = count - 1; k > 0; k--) {
    const j = Math.floor(next() * (k + 1));
    const t = chosen[k];
    chosen[k] = chosen[j];
    chosen[j] = t;
  }
  return chosen;
}
