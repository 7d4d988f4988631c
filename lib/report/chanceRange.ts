/** A chance with the ends that hold eight of ten grounds which fit the survey. */
import type { ChanceRange } from '../contract/index.js';
import { formula } from '../formula/index.js';
import { quantile } from '../sampling/index.js';

/** Share of samples below the low end, and below the high end. */
export const ENDS = { low: 0.1, high: 0.9 };

const P = { meaning: 'chance, the mean of all samples', unit: '-', min: 0, max: 1 };

// Of a rare failure nine samples of ten know nothing, and their middle lies outside of them.
/** Low end of a chance. */
export const lowEnd = formula({
  title: 'Low end of a chance',
  symbol: 'l',
  unit: '-',
  expression: 'min(q, P)',
  parameters: { q: { meaning: 'chance that one sample of ten stays below', unit: '-', min: 0, max: 1 }, P },
  compute: (q: number, P: number) => Math.min(q, P),
  validity: 'no higher than the mean',
  source: 'definition, our choice',
});

/** High end of a chance. */
export const highEnd = formula({
  title: 'High end of a chance',
  symbol: 'h',
  unit: '-',
  expression: 'max(q, P)',
  parameters: { q: { meaning: 'chance that nine samples of ten stay below', unit: '-', min: 0, max: 1 }, P },
  compute: (q: number, P: number) => Math.max(q, P),
  validity: 'no lower than the mean',
  source: 'definition, our choice',
});

/** Shares of failing years, one a sample, as a chance with its ends. */
export function rangeFrom(shares: Float64Array, from: ChanceRange['from']): ChanceRange {
  const middle = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const at = (p: number) => quantile(shares.slice(), p);
  return {
    low: lowEnd.compute(at(ENDS.low), middle),
    middle,
    high: highEnd.compute(at(ENDS.high), middle),
    from,
  };
}
