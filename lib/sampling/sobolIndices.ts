import { method } from '../formula/index.js';
import { type Estimate, jackknife, replicateStart } from './replicates.js';

export const varianceIndices = method({
  title: "Sobol' indices, first order and total",
  what:
    'Shares of the variance of a number: what would go if an input were known (first order), and what would stay if ' +
    'everything but it were known (total). Two samples A and B, and for each input A with that one column of B: ' +
    'first order f(B)·(f(AB) − f(A)), total ½(f(A) − f(AB))², each averaged and divided by the variance.',
  assumptions: [
    'inputs independent of each other',
    'errors by leaving out one independent replicate at a time',
    'costs inputs + 2 runs a sample',
  ],
  source:
    "Saltelli et al. 2010 (first order), Jansen 1999 (total); checked against Ishigami and the Sobol' g-function",
});

/** Variance shares of each input. */
export interface SensitivityIndices {
  first: Estimate[];
  total: Estimate[];
}

/** Outputs of the pick-freeze design, one a sample: of A, of B, and of A with column i from B. */
interface PickFreeze {
  a: ArrayLike<number>;
  b: ArrayLike<number>;
  mixed: ArrayLike<number>[];
}

/**
 * Sobol' indices from the outputs of a pick-freeze design laid out in independent replicates.
 * @param outputs - all of the same length
 * @param replicates - as drawn, 2 or more
 */
export function pickFreezeIndices({ a, b, mixed }: PickFreeze, replicates: number): SensitivityIndices {
  const n = a.length;
  let centre = 0;
  for (let s = 0; s < n; s++) centre += (a[s] + b[s]) / (2 * n);
  /** Sum of a term over each replicate. */
  const sums = (term: (s: number) => number) =>
    Float64Array.from({ length: replicates }, (_, r) => {
      let sum = 0;
      const end = replicateStart(n, replicates, r + 1);
      for (let s = replicateStart(n, replicates, r); s < end; s++) sum += term(s);
      return sum;
    });
  // Centred on the mean of all: a large constant would drown the products.
  const squares = sums((s) => ((a[s] - centre) ** 2 + (b[s] - centre) ** 2) / 2);
  const share = (terms: Float64Array) => {
    const estimate = jackknife(replicates, (without) => {
      const variance = sumBut(squares, without);
      return variance > 0 ? sumBut(terms, without) / variance : 0;
    });
    // A share is one; by its error the estimate may lie beside.
    return { ...estimate, value: Math.min(Math.max(estimate.value, 0), 1) };
  };
  return {
    first: mixed.map((m) => share(sums((s) => (b[s] - centre) * (m[s] - a[s])))),
    total: mixed.map((m) => share(sums((s) => (a[s] - m[s]) ** 2 / 2))),
  };
}

function sumBut(values: Float64Array, without: number): number {
  let sum = 0;
  for (let r = 0; r < values.length; r++) if (r !== without) sum += values[r];
  return sum;
}
