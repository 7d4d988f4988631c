import { method } from '../formula/index.js';
import { normalQuantile } from './normal.js';

export const populationMoves = method({
  title: 'Moves of a population that leave its distribution as it is',
  what:
    'A member is tried anew where a normal distribution through the others would have it, or along the difference of two ' +
    'of them; it goes there by the ratio of Metropolis and Hastings.',
  assumptions: ['the others do not move meanwhile, so that what is learnt from them favours nobody'],
  source: 'independence sampler, Hastings 1970; differences of ter Braak 2006; both from memory',
});

/** A normal distribution through members. */
interface FittedNormal {
  mean: Float64Array;
  /** Cholesky factor of the covariance, row-major, lower triangle */
  root: Float64Array;
}

/** Added to each variance, so that few members span all scores. */
const RIDGE = 0.003;

/** The normal distribution through members, two or more. */
export function normalThrough(members: readonly Float64Array[]): FittedNormal {
  const d = members[0].length;
  const n = members.length;
  const mean = new Float64Array(d);
  for (let m = 0; m < n; m++) for (let j = 0; j < d; j++) mean[j] += members[m][j] / n;
  const root = new Float64Array(d * d);
  const off = new Float64Array(d);
  for (let m = 0; m < n; m++) {
    const z = members[m];
    for (let i = 0; i < d; i++) {
      off[i] = z[i] - mean[i];
      for (let j = 0; j <= i; j++) root[i * d + j] += (off[i] * off[j]) / (n - 1);
    }
  }
  for (let i = 0; i < d; i++)
    for (let j = 0; j <= i; j++) {
      let sum = root[i * d + j] + (i === j ? RIDGE : 0);
      for (let k = 0; k < j; k++) sum -= root[i * d + k] * root[j * d + k];
      root[i * d + j] = i === j ? Math.sqrt(Math.max(sum, RIDGE / 2)) : sum / root[j * d + j];
    }
  return { mean, root };
}

/** Log density of a member under a fitted normal, without the constant that a standard normal has too. */
export function logDensity({ mean, root }: FittedNormal, z: Float64Array): number {
  const d = mean.length;
  const scaled = new Float64Array(d);
  let log = 0;
  for (let i = 0; i < d; i++) {
    let sum = z[i] - mean[i];
    for (let k = 0; k < i; k++) sum -= root[i * d + k] * scaled[k];
    scaled[i] = sum / root[i * d + i];
    log -= 0.5 * scaled[i] * scaled[i] + Math.log(root[i * d + i]);
  }
  return log;
}

/** A fresh draw of a fitted normal. */
export function drawnFrom({ mean, root }: FittedNormal, next: () => number): Float64Array {
  const d = mean.length;
  const fresh = new Float64Array(d);
  const drawn = mean.slice();
  for (let i = 0; i < d; i++) {
    fresh[i] = normalQuantile(next());
    for (let k = 0; k <= i; k++) drawn[i] += root[i * d + k] * fresh[k];
  }
  return drawn;
}
