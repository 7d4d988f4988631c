/** Runs a model through the pick-freeze design, as the tests do with functions whose indices are known. */
import { pickFreezeIndices, type SensitivityIndices, sobolUniforms } from '../../lib/sampling/index.js';

/**
 * Sobol' indices of a function of independent uniforms.
 * @param model - a number from one point of the unit cube; the array is used again for the next
 * @param inputs - how many, at most half the dimensions of the Sobol' sequence
 * @param samples - rows of A; the model runs samples × (inputs + 2) times
 * @param seed - whole number
 * @param replicates - independent parts, 2 or more
 * @returns shares, 0 throughout where the output does not vary; a small one may come out a little below 0
 */
export function sobolIndices(
  model: (point: Float64Array) => number,
  inputs: number,
  samples: number,
  seed: number,
  replicates = 8,
): SensitivityIndices {
  const points = sobolUniforms(samples, 2 * inputs, seed, replicates);
  const a = new Float64Array(samples);
  const b = new Float64Array(samples);
  const mixed = Array.from({ length: inputs }, () => new Float64Array(samples));
  const point = new Float64Array(inputs);
  for (let s = 0; s < samples; s++) {
    const rowA = points.subarray(s * 2 * inputs, (s * 2 + 1) * inputs);
    const rowB = points.subarray((s * 2 + 1) * inputs, (s + 1) * 2 * inputs);
    point.set(rowB);
    b[s] = model(point);
    for (let i = 0; i < inputs; i++) {
      point.set(rowA);
      point[i] = rowB[i];
      mixed[i][s] = model(point);
    }
    point.set(rowA);
    a[s] = model(point);
  }
  return pickFreezeIndices({ a, b, mixed }, replicates);
}
