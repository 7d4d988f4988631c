import type { ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';
import { drawPopulation, latinNormals, normalCdf } from '../sampling/index.js';
import { type LogEstimate, logValue } from '../soil/index.js';
import { columnSeries, runColumn } from './columnRun.js';
import type { TableParameters } from './tableStore.js';

export const tableFit = method({
  title: 'Fit of the water table to the dips',
  what:
    'Draws parameter sets of the store, each with what it may miss a dip by, from their priors and from how well ' +
    'they meet the dips: a population of sets that all could be this ground.',
  assumptions: [
    'parameters log-normal and independent before the dips',
    'a dip differs from the model, besides its reading error, by a spread found with the parameters (0.03 m to begin with)',
    "'dry' says the table is below the hole's floor, a hole still filling that it is above the level seen",
    'dips closer than 14 days tell less than one dip each: their joint weight is reduced in that proportion',
  ],
  source: 'Bayes; drawn by temperedPopulation; composite likelihood for dips close in time, common practice',
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

/** What is taken for likely of the store's parameters before any look; those of spread 0 are fixed. */
export type TablePriors = Record<keyof TableParameters, LogEstimate>;

/** Parameter sets drawn from what the dips leave possible. */
export interface TableFit {
  sets: TableParameters[];
  /** by how much each set misses a dip besides its reading error, one standard deviation, m */
  missing: Float64Array;
  /** dips that lay inside the weather record */
  used: number;
  outside: number;
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
  'drainDepth',
  'drainRate',
  'meltFactor',
];
/** What a set may miss a dip by before any was seen, m. Our choice. */
export const MISS: LogEstimate = { median: 0.03, spread: 0.8, evidence: ['our choice'] };
const INDEPENDENT_DAYS = 14;
/** Fewest members of the population, so that its bands hold. */
const POPULATION = 100;
/** Days before the first dip that the run starts, so that the start is forgotten. */
export const SPIN_UP = 3 * 365;

/** The parameters that a prior leaves open, in the order of their scores. */
export const openParameters = (priors: TablePriors) => KEYS.filter((key) => priors[key].spread > 0);

/**
 * The store's parameters at standard normal scores of those that the priors leave open.
 * @param priors - of each parameter
 * @param scores - one for each open parameter, in the order of {@link openParameters}
 * @returns a set for {@link runColumn}; its spill lies at 0.8 of the base's depth at most, its crack share is at most 1
 */
export function parametersAt(priors: TablePriors, scores: ArrayLike<number>): TableParameters {
  const p = {} as TableParameters;
  let j = 0;
  for (const key of KEYS) {
    const { median, spread } = priors[key];
    p[key] = spread > 0 ? logValue(priors[key], scores[j++]) : median;
  }
  p.spillDepth = Math.min(p.spillDepth, 0.8 * p.baseDepth);
  p.crackShare = Math.min(p.crackShare, 1);
  return p;
}

/**
 * Fits the store to dips, see {@link tableFit}. Without dips inside the record the sets are drawn from the priors.
 * @param record - daily climate
 * @param dips - looks at the water, m below the ground, sorted by day; those outside the record are counted only
 * @param priors - of each parameter
 * @param count - parameter sets wanted, at least 1
 * @param seed - whole number
 * @returns parameter sets, each as likely as the next, with what each misses a dip by
 * @throws Error when a balance does not close to 1e-9 m
 */
export function fitTable(
  record: ClimateRecord,
  dips: Dip[],
  priors: TablePriors,
  count: number,
  seed: number,
): TableFit {
  const inside = dips.filter(
    (dip) => dip.day >= record.firstDay && dip.day < record.firstDay + record.rain.length,
  );
  const outside = dips.length - inside.length;
  const dimensions = openParameters(priors).length + 1;
  const fitted = (members: Float64Array[], closure: number): TableFit => ({
    sets: members.map((z) => parametersAt(priors, z)),
    missing: Float64Array.from(members, (z) => logValue(MISS, z[dimensions - 1])),
    used: inside.length,
    outside,
    closure,
  });
  if (inside.length === 0) {
    const z = latinNormals(count, dimensions, seed);
    return fitted(
      Array.from({ length: count }, (_, i) => z.subarray(i * dimensions, (i + 1) * dimensions)),
      0,
    );
  }
  const window = windowOf(record, inside[0].day - SPIN_UP, inside[inside.length - 1].day);
  const series = columnSeries(window.rain.length);
  const share = independentShare(inside);
  const seen = seenIn(window, inside);
  let closure = 0;
  const logLikelihood = (z: Float64Array): number => {
    closure = Math.max(closure, runColumn(window, parametersAt(priors, z), series).closure);
    return share * logOf(seen, series.depth, logValue(MISS, z[dimensions - 1]));
  };
  const members = drawPopulation(Math.max(count, POPULATION), dimensions, logLikelihood, seed);
  return fitted(members.slice(0, count), closure);
}

/** Dips in plain arrays, for the loop that runs most. */
interface Seen {
  /** days from the start of the window */
  at: Int32Array;
  depth: Float64Array;
  error: Float64Array;
  /** 0 the level itself, 1 the table lies below it, -1 above */
  side: Int8Array;
}

function seenIn(window: WeatherWindow, dips: Dip[]): Seen {
  return {
    at: Int32Array.from(dips, (d) => Math.floor(d.day) - window.firstDay),
    depth: Float64Array.from(dips, (d) => d.depth),
    error: Float64Array.from(dips, (d) => d.error),
    side: Int8Array.from(dips, (d) => (d.says === 'level' ? 0 : d.says === 'below' ? 1 : -1)),
  };
}

/** Log likelihood of depths, without its constant. */
function logOf({ at, depth, error, side }: Seen, model: Float64Array, missing: number): number {
  let sum = 0;
  let last = Number.NaN;
  let sd = 0;
  let logSd = 0;
  for (let i = 0; i < at.length; i++) {
    if (error[i] !== last) {
      last = error[i];
      sd = Math.sqrt(last * last + missing * missing);
      logSd = Math.log(sd);
    }
    const off = (model[at[i]] - depth[i]) / sd;
    sum -= side[i] === 0 ? 0.5 * off * off + logSd : -Math.log(Math.max(normalCdf(side[i] * off), 1e-12));
  }
  return sum;
}

/** Part of a record: all that the column runs on. */
export type WeatherWindow = Pick<ClimateRecord, 'firstDay' | 'rain' | 'tmean' | 'demand'>;

/**
 * The weather of a record from one day to another, as far as the record goes.
 * @param record - daily climate
 * @param firstDay - days since 1970-01-01
 * @param lastDay - the last day in it, not before the record
 * @returns its first day, days since 1970-01-01, and the series from there on; they share the record's memory
 */
export function windowOf(record: ClimateRecord, firstDay: number, lastDay: number): WeatherWindow {
  const from = Math.max(Math.floor(firstDay) - record.firstDay, 0);
  const to = Math.floor(lastDay) - record.firstDay + 1;
  return {
    firstDay: record.firstDay + from,
    rain: record.rain.subarray(from, to),
    tmean: record.tmean.subarray(from, to),
    demand: record.demand.subarray(from, to),
  };
}

/** Dips that count for one each, as a share of all. */
function independentShare(dips: Dip[]): number {
  let independent = 1;
  for (let i = 1; i < dips.length; i++)
    independent += Math.min((dips[i].day - dips[i - 1].day) / INDEPENDENT_DAYS, 1);
  return independent / dips.length;
}
