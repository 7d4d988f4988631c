import { method } from '../formula/index.js';
import { InputError } from '../units/index.js';
import { studentQuantile975 } from './student.js';

export const replicateError = method({
  title: 'Sampling error from replicates',
  what:
    'A sample is drawn as R independent scrambles. The spread of their R means gives the standard error of the mean of ' +
    "all, and Student's t on R − 1 degrees of freedom its 95 % band; for a ratio each replicate is left out in turn.",
  assumptions: [
    'replicates independent and of equal size',
    'their means near enough to normal: a chance with fewer than about one failure a replicate is not',
    'R = 8 by trial: 4 would err some 5 % less but know it worse (t = 3.2 in place of 2.4), 16 some 5 % more',
  ],
  source:
    "Student 1908; Tukey 1958 (jackknife); replicated scrambles Owen 1997, L'Ecuyer et al. 2023, from memory; 93–97 % " +
    'coverage checked on 500 seeds',
});

/** First row of replicate `r` of a sample of `n` rows; of replicate `replicates`, its end. */
export function replicateStart(n: number, replicates: number, r: number): number {
  return Math.floor((r * n) / replicates);
}

/** A number found by sampling, and how far it may be off. */
export interface Estimate {
  value: number;
  /** one standard deviation of the value from seed to seed, on `replicates − 1` degrees of freedom */
  standardError: number;
  /** value ± this covers the truth in 95 of 100 seeds: Student's quantile × standardError */
  halfWidth95: number;
}

/**
 * Estimate from independent replicates of equal worth: their mean x̄, and s/√R as its standard error.
 * @param means - one a replicate, two or more
 * @throws InputError for fewer than two
 */
export function meanOfReplicates(means: ArrayLike<number>): Estimate {
  const R = means.length;
  needTwo(R);
  let value = 0;
  for (let r = 0; r < R; r++) value += means[r] / R;
  let squares = 0;
  for (let r = 0; r < R; r++) squares += (means[r] - value) ** 2;
  return estimate(value, Math.sqrt(squares / (R - 1) / R), R);
}

/**
 * Mean of a sample laid out in independent replicates (see `sobolUniforms`), with an error that counts what the
 * scrambled points gain: the spread between replicates, not the spread between samples.
 * @param values - one a sample, in the order of the sample
 * @param replicates - as drawn, 2 or more
 * @throws InputError for fewer than two replicates
 */
export function replicateMean(values: ArrayLike<number>, replicates: number): Estimate {
  const means = new Float64Array(replicates);
  for (let r = 0; r < replicates; r++) {
    const from = replicateStart(values.length, replicates, r);
    const to = replicateStart(values.length, replicates, r + 1);
    for (let i = from; i < to; i++) means[r] += values[i] / (to - from);
  }
  return meanOfReplicates(means);
}

/**
 * Chance, as {@link replicateMean}, for shares or yes and no from 0 to 1. Where no sample fails, or every one does, the
 * spread says nothing; the band then reaches to the chance that would show so in 1 of 20 samples of n: 1 − 0.05^(1/n),
 * about 3/n.
 * @param values - 0–1, one a sample
 * @param replicates - as drawn, 2 or more
 */
export function replicateChance(values: ArrayLike<number>, replicates: number): Estimate {
  const found = replicateMean(values, replicates);
  const n = values.length;
  for (let i = 0; i < n; i++)
    if (values[i] !== values[0] || (values[i] !== 0 && values[i] !== 1)) return found;
  const halfWidth95 = 1 - 0.05 ** (1 / n);
  return {
    value: values[0],
    standardError: halfWidth95 / studentQuantile975(replicates - 1),
    halfWidth95,
  };
}

/**
 * Estimate of anything computed from all replicates together, a ratio of sums say, by leaving out each in turn
 * (jackknife, Tukey 1958): standard error √((R − 1)/R · Σ (t₍ᵣ₎ − t̄)²).
 * @param replicates - 2 or more
 * @param statistic - the number from all replicates but `without`; from all of them when that is −1
 */
export function jackknife(replicates: number, statistic: (without: number) => number): Estimate {
  needTwo(replicates);
  const left = Array.from({ length: replicates }, (_, r) => statistic(r));
  const mean = left.reduce((sum, t) => sum + t, 0) / replicates;
  const squares = left.reduce((sum, t) => sum + (t - mean) ** 2, 0);
  return estimate(statistic(-1), Math.sqrt((squares * (replicates - 1)) / replicates), replicates);
}

function estimate(value: number, standardError: number, replicates: number): Estimate {
  return { value, standardError, halfWidth95: studentQuantile975(replicates - 1) * standardError };
}

function needTwo(replicates: number): void {
  if (!(replicates >= 2))
    throw new InputError(
      'invalid-input',
      `invalid number of replicates ${replicates}: an error needs two or more; draw the sample in replicates.`,
    );
}
