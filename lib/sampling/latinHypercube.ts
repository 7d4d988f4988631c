import { normalQuantile } from './normal.js';
import { uniforms } from './uniforms.js';

/**
 * Latin-hypercube sample of standard normal scores: each column hits every one of `n` equal slices once.
 * @param n - samples
 * @param dimensions - columns
 * @param seed - whole number
 * @returns row-major, n rows of `dimensions`
 */
export function latinNormals(n: number, dimensions: number, seed: number): Float64Array {
  const next = uniforms(seed);
  const out = new Float64Array(n * dimensions);
  const order = new Uint32Array(n);
  for (let j = 0; j < dimensions; j++) {
    for (let i = 0; i < n; i++) order[i] = i;
    for (let i = n - 1; i > 0; i--) {
      const k = Math.floor(next() * (i + 1));
      const t = order[i];
      order[i] = order[k];
      order[k] = t;
    }
    for (let i = 0; i < n; i++) out[i * dimensions + j] = normalQuantile((order[i] + next()) / n);
  }
  return out;
}
