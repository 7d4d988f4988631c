import { method } from '../formula/index.js';
import { InputError } from '../units/index.js';
import { normalQuantile } from './normal.js';
import { replicateStart } from './replicates.js';
import { SOBOL_DIRECTIONS } from './sobolDirections.js';
import { uniforms } from './uniforms.js';

export const scrambledSobol = method({
  title: "Scrambled Sobol' sample",
  what:
    "Points of the Sobol' sequence, which fill the unit cube more evenly than chance, each column scrambled by a nested " +
    'uniform permutation of its binary digits, in independent replicates. Every point is uniform and every mean ' +
    'without bias; on a normal limit state of 5 inputs (chance 0.1 a sample, 8 replicates) the error of 1,024 samples ' +
    "is 0.56 of plain sampling's, of a smooth share 0.2.",
  assumptions: [
    'up to 64 columns; the first five are the evenest (the same state in columns 6 to 40: 0.6 to 0.75), so what matters ' +
      'most comes first',
    'replicates of 2^k samples are balanced; of other sizes (96, 100, 125, 250 tried) the error is up to 12 % larger',
    'the rarer a failure counted yes or no, the smaller the gain: at 1 in 50, 0.68 of plain sampling',
  ],
  source:
    'direction numbers Joe & Kuo 2008; scramble Owen 1995, its tree of coins drawn whole; order Antonov & Saleev 1979; ' +
    'checked against scipy.stats.qmc.Sobol',
});

/** Most columns a Sobol' sample can have. */
export const SOBOL_DIMENSIONS = SOBOL_DIRECTIONS.length;

/** Finest cut of a column, in bits. */
const MOST_BITS = 30;

/**
 * One dimension of the Sobol' sequence as it is, before any scramble, in Gray-code order (Antonov & Saleev 1979).
 * @param n - points, at most 2^bits
 * @param dimension - 0 to 63
 * @param bits - digits kept, 0–30: the points are these whole numbers over 2^bits
 */
export function sobolIntegers(n: number, dimension: number, bits: number): Uint32Array {
  const [polynomial, ...start] = SOBOL_DIRECTIONS[dimension];
  const degree = start.length;
  const m = degree === 0 ? new Array<number>(bits).fill(1) : start.slice(0, bits);
  for (let k = m.length; k < bits; k++) {
    let next = m[k - degree];
    for (let i = 1; i <= degree; i++) if ((polynomial >>> (degree - i)) & 1) next ^= m[k - i] << i;
    m.push(next);
  }
  const out = new Uint32Array(n);
  for (let i = 1; i < n; i++) {
    // The lowest zero bit of i − 1 is the lowest one bit of i.
    const k = 31 - Math.clz32(i & -i);
    out[i] = out[i - 1] ^ (m[k] << (bits - 1 - k));
  }
  return out;
}

/**
 * Scrambled Sobol' sample of uniforms, in independent replicates one after the other. Every column of every replicate
 * is scrambled by its own nested uniform permutation (Owen 1995), the tree of its flips drawn whole; so each point is
 * uniform, a mean is without bias, and replicates differ by chance alone: see `replicateMean` for the error.
 * @param n - samples; any number, but replicates of 2^k are balanced, and others err up to 12 % more
 * @param dimensions - columns, 1–64; put what matters most first
 * @param seed - whole number
 * @param replicates - independent scrambles, 1 to n; sizes differ by at most one sample
 * @returns row-major, n rows of `dimensions`, each in (0, 1)
 * @throws InputError for a count outside these
 */
export function sobolUniforms(n: number, dimensions: number, seed: number, replicates = 1): Float64Array {
  checkCount('samples', n, 1, 2 ** MOST_BITS);
  checkCount('dimensions', dimensions, 1, SOBOL_DIMENSIONS);
  checkCount('replicates', replicates, 1, n);
  const largest = Math.ceil(n / replicates);
  const bits = Math.ceil(Math.log2(largest));
  const next = uniforms(seed);
  const flips = new Uint32Array(Math.ceil(2 ** bits / 32));
  const out = new Float64Array(n * dimensions);
  for (let j = 0; j < dimensions; j++) {
    const points = sobolIntegers(largest, j, bits);
    for (let r = 0; r < replicates; r++) {
      for (let i = 0; i < flips.length; i++) flips[i] = next() * 2 ** 32;
      const from = replicateStart(n, replicates, r);
      const size = replicateStart(n, replicates, r + 1) - from;
      for (let i = 0; i < size; i++) {
        const x = nestedScramble(points[i], bits, flips);
        // No two points of a replicate share all their bits, so those that follow are free.
        out[(from + i) * dimensions + j] = Math.min((x + next()) / 2 ** bits, BELOW_ONE);
      }
    }
  }
  return out;
}

/** Scrambled Sobol' sample of standard normal scores; see {@link sobolUniforms}. */
export function sobolNormals(n: number, dimensions: number, seed: number, replicates = 1): Float64Array {
  return sobolUniforms(n, dimensions, seed, replicates).map(normalQuantile);
}

const BELOW_ONE = 1 - 2 ** -53;

/** Flips each bit of `x` by a coin that belongs to the bits above it; coins in the order of a heap, root at 1. */
function nestedScramble(x: number, bits: number, coins: Uint32Array): number {
  let y = x;
  for (let k = 0; k < bits; k++) {
    const node = (1 << k) | (x >>> (bits - k));
    if ((coins[node >>> 5] >>> (node & 31)) & 1) y ^= 1 << (bits - 1 - k);
  }
  return y;
}

function checkCount(what: string, value: number, min: number, max: number): void {
  if (!(Number.isInteger(value) && value >= min && value <= max))
    throw new InputError(
      'invalid-input',
      `invalid number of ${what} ${value}: give a whole number from ${min} to ${max}.`,
    );
}
