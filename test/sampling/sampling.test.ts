import { mersenne } from 'pure-rand/generator/mersenne';
import { describe, expect, test } from 'vitest';
import {
  latinNormals,
  normalCdf,
  normalQuantile,
  percentiles,
  quantile,
  quantileSorted,
  uniforms,
} from '../../lib/sampling/index.js';

describe('normal distribution', () => {
  // Quantiles as every table of the normal distribution prints them (15 digits: Wichura 1988, AS 241, from memory).
  test.each([
    [0.5, 0],
    [0.975, 1.959963984540054],
    [0.9, 1.2815515655446004],
    [0.99, 2.3263478740408408],
    [0.001, -3.090232306167813],
    [1e-6, -4.753424308822899],
  ])('quantile of %d', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 11);
  });

  test('distribution function and quantile undo each other', () => {
    for (let z = -6; z <= 4; z += 0.25) expect(normalQuantile(normalCdf(z))).toBeCloseTo(z, 8);
    expect(normalCdf(1)).toBeCloseTo(0.8413447460685429, 12);
    expect(normalCdf(0)).toBe(0.5);
  });
});

describe('uniforms', () => {
  test('the generator is the Mersenne Twister: 10 000th output of its reference seed', () => {
    // ISO C++ [rand.predef]: the 10 000th output of mt19937 with its default seed 5489 is 4123659995.
    const reference = mersenne(5489);
    const outputs = Array.from({ length: 10000 }, () => reference.next() >>> 0);
    expect(outputs[9999]).toBe(4123659995);
    expect(outputs[0]).toBe(3499211612);
  });

  test('stay inside (0, 1), are even, and depend on the seed', () => {
    const next = uniforms(3);
    const counts = new Array(10).fill(0);
    for (let i = 0; i < 100000; i++) {
      const u = next();
      if (!(u > 0 && u < 1)) expect.fail(`${u} is outside (0, 1)`);
      counts[Math.floor(u * 10)]++;
    }
    // Chi-square with 9 degrees of freedom: 27.9 is passed once in a thousand.
    const chi = counts.reduce((sum, c) => sum + (c - 10000) ** 2 / 10000, 0);
    expect(chi).toBeLessThan(27.9);
    expect(Array.from({ length: 5 }, uniforms(1))).toEqual(Array.from({ length: 5 }, uniforms(1)));
    expect(uniforms(1)()).not.toBe(uniforms(2)());
  });
});

describe('Latin hypercube', () => {
  test('hits every slice of every column once', () => {
    const [n, dimensions] = [137, 5];
    const z = latinNormals(n, dimensions, 11);
    expect(z.length).toBe(n * dimensions);
    for (let j = 0; j < dimensions; j++) {
      const slices = Array.from({ length: n }, (_, i) => Math.floor(normalCdf(z[i * dimensions + j]) * n));
      expect([...slices].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i));
    }
  });

  test('columns are shuffled apart, and the same seed gives the same draws', () => {
    const n = 2000;
    const z = latinNormals(n, 2, 5);
    let product = 0;
    for (let i = 0; i < n; i++) product += z[2 * i] * z[2 * i + 1];
    // Standard error of a correlation of 2000 independent pairs: 0.022.
    expect(Math.abs(product / n)).toBeLessThan(0.08);
    expect(latinNormals(n, 2, 5)).toEqual(z);
    expect(latinNormals(n, 2, 6)).not.toEqual(z);
  });
});

describe('quantiles', () => {
  test('type 7 by hand: of 1, 2, 4, 8 the median is 3 and the quartiles 1.75 and 5', () => {
    // Hyndman & Fan 1996: position p(n − 1) between order statistics counted from 0.
    const sorted = [1, 2, 4, 8];
    expect([0, 0.25, 0.5, 0.75, 1].map((p) => quantileSorted(sorted, p))).toEqual([1, 1.75, 3, 5, 8]);
    expect(quantileSorted([7], 0.3)).toBe(7);
  });

  test('values in any order give the quantiles of the sorted ones', () => {
    const values = [8, 1, 4, 2];
    for (const p of [0, 0.1, 0.25, 1 / 3, 0.5, 0.9, 1])
      expect(quantile(Float64Array.from(values), p)).toBeCloseTo(quantileSorted([1, 2, 4, 8], p), 15);
  });

  test('p10, p50, p90 sort numbers by size', () => {
    expect(percentiles([100, 9, 20, 30, 40, 50, 60, 70, 80, 90, 10])).toEqual({ p10: 10, p50: 50, p90: 90 });
  });
});
