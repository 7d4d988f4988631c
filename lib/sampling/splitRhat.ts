import { method } from '../formula/index.js';
import { InputError } from '../units/index.js';

export const splitRhatMethod = method({
  title: 'Agreement of chains, split-R̂',
  what:
    'Halves every chain and compares the spread between the means of the halves with the spread within them: 1 where all ' +
    'draw from one distribution, more where they stand apart or still wander.',
  assumptions: ['finite variance; chains of equal length'],
  source: 'Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 11.4, from memory',
});

/**
 * Split-R̂ of a number drawn by several chains, see {@link splitRhatMethod}.
 * @param chains - of equal length, 4 or more values each
 * @returns √(((n − 1)/n·W + B/n)/W), W the mean variance within the halves of n values, B/n that of their means; 1 where
 *   nothing varies
 * @throws InputError for no chain, shorter or unequal ones
 */
export function splitRhat(chains: readonly ArrayLike<number>[]): number {
  const [{ length } = { length: 0 }] = chains;
  if (length < 4 || chains.some((chain) => chain.length !== length))
    throw new InputError(
      'invalid-input',
      `invalid chains of ${chains.map((c) => c.length).join(', ')} values: give one or more of equal length, 4 or longer.`,
    );
  const n = Math.floor(length / 2);
  const halves = chains.flatMap((chain) => [statistics(chain, 0, n), statistics(chain, length - n, length)]);
  const within = halves.reduce((sum, { variance }) => sum + variance, 0) / halves.length;
  const between = statistics(
    halves.map(({ mean }) => mean),
    0,
    halves.length,
  ).variance;
  if (within === 0) return between === 0 ? 1 : Number.POSITIVE_INFINITY;
  return Math.sqrt((n - 1) / n + between / within);
}

function statistics(values: ArrayLike<number>, from: number, to: number): { mean: number; variance: number } {
  let mean = 0;
  for (let i = from; i < to; i++) mean += values[i] / (to - from);
  let squares = 0;
  for (let i = from; i < to; i++) squares += (values[i] - mean) ** 2;
  return { mean, variance: squares / (to - from - 1) };
}
