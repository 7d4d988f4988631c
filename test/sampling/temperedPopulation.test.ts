import { describe, expect, test } from 'vitest';
import { drawPopulation, quantileSorted } from '../../lib/sampling/index.js';

const column = (members: Float64Array[], j: number) => Float64Array.from(members, (z) => z[j]).sort();
const mean = (v: Float64Array) => v.reduce((a, b) => a + b, 0) / v.length;
const spread = (v: Float64Array) => Math.sqrt(mean(v.map((x) => (x - mean(v)) ** 2)));

test('normal prior and normal reading: the posterior of the textbook, narrow and far from the prior', () => {
  // A reading y with error s of a standard normal: mean y/(1 + s²), variance s²/(1 + s²).
  const [y, s] = [2.5, 0.1];
  const members = drawPopulation(800, 6, (z) => -0.5 * ((z[0] - y) / s) ** 2, 1);
  const seen = column(members, 0);
  expect(mean(seen)).toBeCloseTo(y / (1 + s * s), 1);
  expect(spread(seen) / Math.sqrt((s * s) / (1 + s * s))).toBeCloseTo(1, 0);
  for (const j of [1, 2, 3, 4, 5]) {
    expect(Math.abs(mean(column(members, j)))).toBeLessThan(0.15);
    expect(Math.abs(spread(column(members, j)) - 1)).toBeLessThan(0.15);
  }
});

test('a reading of a sum leaves the difference as it was: a narrow ridge is walked along', () => {
  const members = drawPopulation(800, 4, (z) => -0.5 * ((z[0] + z[1] - 1) / 0.02) ** 2, 2);
  const sum = Float64Array.from(members, (z) => z[0] + z[1]);
  const difference = Float64Array.from(members, (z) => z[0] - z[1]);
  expect(mean(sum)).toBeCloseTo(1, 2);
  expect(Math.abs(spread(difference) - Math.SQRT2)).toBeLessThan(0.2);
});

test('two hills keep their weights', () => {
  const hill = (z: number) =>
    Math.exp(-0.5 * ((z - 1.5) / 0.1) ** 2) + Math.exp(-0.5 * ((z + 1.5) / 0.1) ** 2);
  const members = drawPopulation(800, 3, (z) => Math.log(Math.max(hill(z[0]), 1e-300)), 3);
  const right = column(members, 0).filter((v) => v > 0).length / 800;
  expect(right).toBeGreaterThan(0.35);
  expect(right).toBeLessThan(0.65);
});

describe('without anything seen', () => {
  test('it is the prior; the same seed gives the same members', () => {
    const members = drawPopulation(400, 2, () => 0, 4);
    const seen = column(members, 1);
    expect(quantileSorted(seen, 0.5)).toBeCloseTo(0, 0);
    expect(spread(seen)).toBeCloseTo(1, 0);
    expect(drawPopulation(50, 2, () => 0, 4)).toEqual(drawPopulation(50, 2, () => 0, 4));
    expect(drawPopulation(50, 2, () => 0, 5)).not.toEqual(drawPopulation(50, 2, () => 0, 4));
  });
});
