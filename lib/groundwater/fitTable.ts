import type { ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';
import { latinNormals, temperedPopulations, walk } from '../sampling/index.js';
import { logValue } from '../soil/index.js';
import type { SeasonalHigh } from './colourLikelihood.js';
import type { Dip } from './dip.js';
import { MODEL_ERROR } from './modelError.js';
import { likelihoodOf } from './tableLikelihood.js';
import type { TablePriors } from './tablePriors.js';
import type { TableParameters } from './tableStore.js';

export const tableFit = method({
  title: 'Fit of the water table to the dips',
  what:
    'Draws parameter sets of the store, each with the spread of what it misses, from their priors and from how well ' +
    'they meet the dips: a population of sets that all could be this ground.',
  assumptions: [
    'parameters log-normal and independent before the dips',
    'colours of the soil say no more than that the high of an ordinary year comes as near as they do: see colourLikelihood',
  ],
  source: 'Bayes; drawn by temperedPopulation',
});

/** Parameter sets drawn from what the dips leave possible. */
export interface TableFit {
  /** of each parameter, before the dips */
  priors: TablePriors;
  sets: TableParameters[];
  /** spread of what each set misses the water by, one standard deviation, m */
  modelError: Float64Array;
  /** dips that lay inside the weather record */
  used: number;
  outside: number;
  /** how far the populations still differed, 1 where they agree; of the priors 1 */
  splitRhat: number;
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
  p.spillDepth = Math.min(p.spillDepth - priors.standing, 0.8 * p.baseDepth);
  p.crackShare = Math.min(p.crackShare, 1);
  return p;
}

/**
 * Fits the store to dips and to the soil's colours, see {@link tableFit}. Without either the sets are drawn from the priors.
 * @param record - daily climate
 * @param dips - looks at the water, m below the ground, in any order; those outside the record are counted only
 * @param priors - of each parameter
 * @param count - parameter sets wanted, at least 1
 * @param seed - whole number
 * @param colour - the ordinary year's high as the colours of the soil tell it, m below the ground, and its spread
 * @returns parameter sets, each as likely as the next, with what each misses
 * @throws Error when a balance does not close to 1e-9 m
 */
export function fitTable(
  record: ClimateRecord,
  dips: Dip[],
  priors: TablePriors,
  count: number,
  seed: number,
  colour?: SeasonalHigh,
): TableFit {
  const inside = dips
    .filter(({ day }) => day >= record.firstDay && day < record.firstDay + record.rain.length)
    .sort(inOrder);
  const dimensions = openParameters(priors).length + 1;
  const errorAt = (z: Float64Array) => logValue(MODEL_ERROR, z[dimensions - 1]);
  const fitted = (members: Float64Array[], splitRhat: number, closure: number): TableFit => ({
    priors,
    sets: members.map((z) => parametersAt(priors, z)),
    modelError: Float64Array.from(members, errorAt),
    used: inside.length,
    outside: dips.length - inside.length,
    splitRhat,
    closure,
  });
  if (inside.length === 0 && !colour) return fitted(rows(count, dimensions, seed), 1, 0);
  const likelihood = likelihoodOf(record, inside, colour);
  const { draw, splitRhat } = walk(
    temperedPopulations(
      dimensions,
      (z, atLeast) => likelihood.of(parametersAt(priors, z), errorAt(z), atLeast),
      seed,
    ),
  );
  return fitted(draw(count), splitRhat, likelihood.closure());
}

/** By day; of one day the nearest to the ground first: the likelihood takes them one after the other. */
const inOrder = (a: Dip, b: Dip) =>
  a.day - b.day || a.depth - b.depth || a.error - b.error || a.says.localeCompare(b.says);

/** Standard normal scores, one array a sample. */
function rows(count: number, dimensions: number, seed: number): Float64Array[] {
  const z = latinNormals(count, dimensions, seed);
  return Array.from({ length: count }, (_, i) => z.subarray(i * dimensions, (i + 1) * dimensions));
}
