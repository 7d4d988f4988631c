import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  normalCdf,
  SOBOL_DIMENSIONS,
  sobolIntegers,
  sobolNormals,
  sobolUniforms,
} from '../../lib/sampling/index.js';

const fixture: { bits: number; indices: number[]; points: number[][] } = JSON.parse(
  readFileSync(new URL('../fixtures/sampling/sobol.json', import.meta.url), 'utf8'),
);

test('unscrambled, it is the sequence of scipy in every dimension', () => {
  expect(fixture.points[0].length).toBe(SOBOL_DIMENSIONS);
  for (let j = 0; j < SOBOL_DIMENSIONS; j++) {
    const ours = sobolIntegers(2 ** fixture.bits, j, fixture.bits);
    expect(
      fixture.indices.map((i) => ours[i]),
      `dimension ${j}`,
    ).toEqual(fixture.points.map((row) => row[j]));
  }
});

test('fewer digits are the same points cut short', () => {
  const fine = sobolIntegers(64, 11, 20);
  expect([...sobolIntegers(64, 11, 6)]).toEqual([...fine].map((x) => x >>> 14));
});

/** How many points of rows `from` to `to` fall in each box of 2^a by 2^b. */
function boxes(
  u: Float64Array,
  dimensions: number,
  [from, to]: number[],
  [i, a]: number[],
  [j, b]: number[],
) {
  const counts = new Array(2 ** (a + b)).fill(0);
  for (let s = from; s < to; s++) {
    const [x, y] = [Math.floor(u[s * dimensions + i] * 2 ** a), Math.floor(u[s * dimensions + j] * 2 ** b)];
    counts[x * 2 ** b + y]++;
  }
  return counts;
}

describe('scrambled', () => {
  const [n, dimensions, replicates] = [1024, 64, 4];
  const u = sobolUniforms(n, dimensions, 7, replicates);

  test('every slice of every column of every replicate is hit once', () => {
    for (let r = 0; r < replicates; r++)
      for (let j = 0; j < dimensions; j++)
        expect(boxes(u, dimensions, [r * 256, (r + 1) * 256], [j, 8], [j, 0])).toEqual(
          new Array(256).fill(1),
        );
  });

  test('the first two columns stay a net: every box of 1/256, of whatever shape, holds one point', () => {
    for (let a = 0; a <= 8; a++)
      expect(boxes(u, dimensions, [256, 512], [0, a], [1, 8 - a])).toEqual(new Array(256).fill(1));
  });

  test('replicates, columns and seeds differ; one seed gives one sample', () => {
    expect(sobolUniforms(n, dimensions, 7, replicates)).toEqual(u);
    expect(sobolUniforms(n, dimensions, 8, replicates)).not.toEqual(u);
    expect(new Set(u).size).toBe(u.length);
  });

  test('each point is uniform over the seeds, to the last digit', () => {
    const counts = new Array(10).fill(0);
    const digits = new Array(10).fill(0);
    for (let seed = 0; seed < 5000; seed++) {
      const x = sobolUniforms(6, 3, seed)[10];
      counts[Math.floor(x * 10)]++;
      digits[Math.floor((x * 8 * 1000) % 10)]++;
    }
    // Chi-square with 9 degrees of freedom: 27.9 is passed once in a thousand.
    const chi = (c: number[]) => c.reduce((sum, k) => sum + (k - 500) ** 2 / 500, 0);
    expect(chi(counts)).toBeLessThan(27.9);
    expect(chi(digits)).toBeLessThan(27.9);
  });

  test('two points of one replicate avoid each other, of two replicates they do not', () => {
    let [within, between] = [0, 0];
    for (let seed = 0; seed < 4000; seed++) {
      const v = sobolUniforms(4, 1, seed, 2);
      if (v[0] < 0.5 === v[1] < 0.5) within++;
      if (v[0] < 0.5 === v[2] < 0.5) between++;
    }
    expect(within).toBe(0);
    // Half of 4000, give or take 3.3 standard deviations of 31.6.
    expect(Math.abs(between - 2000)).toBeLessThan(104);
  });
});

test('any number of samples: replicates differ by one at most, all inside (0, 1)', () => {
  for (const [n, replicates] of [
    [1, 1],
    [7, 3],
    [250, 8],
    [2000, 8],
  ]) {
    const u = sobolUniforms(n, 5, 3, replicates);
    expect(u.length).toBe(n * 5);
    expect(u.every((x) => x > 0 && x < 1)).toBe(true);
  }
});

test('normal scores are the uniforms turned over', () => {
  const u = sobolUniforms(100, 4, 9, 2);
  expect(sobolNormals(100, 4, 9, 2).every((z, i) => Math.abs(normalCdf(z) - u[i]) < 1e-12)).toBe(true);
});

test('refuses counts that it cannot serve', () => {
  expect(() => sobolUniforms(0, 3, 1)).toThrow('invalid number of samples 0');
  expect(() => sobolUniforms(2.5, 3, 1)).toThrow('invalid number of samples 2.5');
  expect(() => sobolUniforms(10, 65, 1)).toThrow(
    'invalid number of dimensions 65: give a whole number from 1 to 64',
  );
  expect(() => sobolUniforms(10, 3, 1, 11)).toThrow('invalid number of replicates 11');
});
