import { normalQuantile } from '../../lib/sampling/index.js';

/** A function of the unit cube whose Sobol' indices are known. */
export interface TestFunction {
  inputs: number;
  of: (u: ArrayLike<number>) => number;
  first: number[];
  total: number[];
}

/** Ishigami & Homma 1990, a = 7, b = 0.1: sin x₁ + a sin² x₂ + b x₃⁴ sin x₁, x in ±π; indices as Saltelli et al. 2008 give them. */
export const ishigami: TestFunction = (() => {
  const [a, b] = [7, 0.1];
  const first = [0.5 * (1 + (b * Math.PI ** 4) / 5) ** 2, a ** 2 / 8, 0];
  const together = b ** 2 * Math.PI ** 8 * (1 / 18 - 1 / 50);
  const variance = first[0] + first[1] + together;
  return {
    inputs: 3,
    of: (u) => {
      const [x, y, z] = [0, 1, 2].map((i) => Math.PI * (2 * u[i] - 1));
      return Math.sin(x) + a * Math.sin(y) ** 2 + b * z ** 4 * Math.sin(x);
    },
    first: first.map((v) => v / variance),
    total: [first[0] + together, first[1], together].map((v) => v / variance),
  };
})();

/** Sobol' g-function: Π (|4uᵢ − 2| + aᵢ)/(1 + aᵢ), with Vᵢ = 1/(3(1 + aᵢ)²) and V = Π(1 + Vᵢ) − 1 (Saltelli & Sobol' 1995). */
export const gFunction: TestFunction = (() => {
  const a = [0, 1, 4.5, 9, 99, 99, 99, 99];
  const parts = a.map((x) => 1 / 3 / (1 + x) ** 2);
  const all = parts.reduce((product, v) => product * (1 + v), 1);
  return {
    inputs: a.length,
    of: (u) => a.reduce((product, x, i) => (product * (Math.abs(4 * u[i] - 2) + x)) / (1 + x), 1),
    first: parts.map((v) => v / (all - 1)),
    total: parts.map((v) => (v * all) / (1 + v) / (all - 1)),
  };
})();

/** 2z₁ + z₂ of normal scores: shares 4/5 and 1/5, and z₃ that does nothing. */
export const sum: TestFunction = {
  inputs: 3,
  of: (u) => 2 * normalQuantile(u[0]) + normalQuantile(u[1]),
  first: [0.8, 0.2, 0],
  total: [0.8, 0.2, 0],
};
