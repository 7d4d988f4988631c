import { describe, expect, test } from 'vitest';
import {
  drawnFrom,
  logDensity,
  normalThrough,
  temperedPopulations,
  uniforms,
  walk,
} from '../../lib/sampling/index.js';

const mean = (v: number[]) => v.reduce((a, b) => a + b, 0) / v.length;
const variance = (v: number[]) => mean(v.map((x) => (x - mean(v)) ** 2));

describe('populations against what is known exactly', () => {
  test('a normal prior and normal readings: mean and variance of the conjugate posterior', () => {
    // Scores of N(0, 1); the first read as 1.5 ± 0.2, the sum of the first two as 0 ± 0.3, the third not read.
    const [a, b] = [1 / 0.04, 1 / 0.09];
    const log = (z: Float64Array) => -0.5 * (a * (z[0] - 1.5) ** 2 + b * (z[0] + z[1]) ** 2);
    const { draw, splitRhat } = walk(temperedPopulations(3, log, 1));
    expect(splitRhat).toBeLessThan(1.05);
    const members = draw(2000);
    // Precision matrix [[1 + a + b, b], [b, 1 + b]], right side (1.5 a, 0).
    const determinant = (1 + a + b) * (1 + b) - b * b;
    const expected = [(1.5 * a * (1 + b)) / determinant, (-1.5 * a * b) / determinant, 0];
    const spread = [(1 + b) / determinant, (1 + a + b) / determinant, 1].map(Math.sqrt);
    expected.forEach((m, j) => {
      const values = members.map((z) => z[j]);
      expect(Math.abs(mean(values) - m)).toBeLessThan(0.15 * spread[j]);
      expect(Math.sqrt(variance(values)) / spread[j]).toBeGreaterThan(0.88);
      expect(Math.sqrt(variance(values)) / spread[j]).toBeLessThan(1.12);
    });
  });

  test('two modes keep the shares of their mass', () => {
    // Readings at −2 and 2 with weights 1 and 3: 0.25 of the mass lies below.
    const log = (z: Float64Array) =>
      Math.log(
        Math.exp(-0.5 * ((z[0] + 2) / 0.3) ** 2) + 3 * Math.exp(-0.5 * ((z[0] - 2) / 0.3) ** 2) + 1e-300,
      );
    const shares = [1, 2, 3, 4].map((seed) => {
      const { draw } = walk(temperedPopulations(2, log, seed));
      return mean(draw(1000).map((z) => (z[0] < 0 ? 1 : 0)));
    });
    expect(Math.abs(mean(shares) - 0.25)).toBeLessThan(0.06);
  });

  test('the same seed gives the same members; a likelihood that says nothing leaves the prior', () => {
    const draw = (seed: number) => walk(temperedPopulations(2, () => 0, seed)).draw(1500);
    expect(draw(1)).toEqual(draw(1));
    expect(draw(2)).not.toEqual(draw(1));
    const values = draw(1).map((z) => z[0]);
    expect(Math.abs(mean(values))).toBeLessThan(0.1);
    expect(Math.abs(variance(values) - 1)).toBeLessThan(0.15);
  });
});

describe('moves', () => {
  const next = uniforms(7);
  const members = Array.from({ length: 4000 }, () => {
    const [u, v] = [next() + next() + next() - 1.5, next() + next() + next() - 1.5];
    return Float64Array.of(1 + 2 * u, 3 - u + 0.5 * v);
  });
  const normal = normalThrough(members);

  test('the fitted normal has the mean and covariance of the members', () => {
    // Each sum of three uniform numbers has a variance of 1/4.
    expect(normal.mean[0]).toBeCloseTo(1, 1);
    expect(normal.mean[1]).toBeCloseTo(3, 1);
    const [a, , b, c] = normal.root;
    expect(a * a).toBeCloseTo(1, 1);
    expect(a * b).toBeCloseTo(-0.5, 1);
    expect(b * b + c * c).toBeCloseTo(0.25 + 0.0625, 1);
  });

  test('its log density falls by half a unit at one standard deviation, and its volume is counted', () => {
    const at = (dx: number) =>
      logDensity(
        normal,
        Float64Array.of(normal.mean[0] + dx * normal.root[0], normal.mean[1] + dx * normal.root[2]),
      );
    expect(at(0) - at(1)).toBeCloseTo(0.5, 10);
    expect(at(0)).toBeCloseTo(-Math.log(normal.root[0] * normal.root[3]), 10);
  });

  test('fresh draws have its mean and covariance', () => {
    const drawn = Array.from({ length: 6000 }, () => drawnFrom(normal, next));
    expect(mean(drawn.map((z) => z[0]))).toBeCloseTo(normal.mean[0], 1);
    expect(mean(drawn.map((z) => z[1]))).toBeCloseTo(normal.mean[1], 1);
    const off = (z: Float64Array, j: number) => z[j] - normal.mean[j];
    expect(variance(drawn.map((z) => z[0])) / normal.root[0] ** 2).toBeCloseTo(1, 1);
    expect(mean(drawn.map((z) => off(z, 0) * off(z, 1)))).toBeCloseTo(normal.root[0] * normal.root[2], 1);
  });
});

describe('a likelihood that need not be known below what must be reached', () => {
  const log = (z: Float64Array) => -20 * (z[0] - 1) ** 2 - 8 * (z[1] + z[2]) ** 2;

  test('leaves the members as they are to the bit, however little of it is told', () => {
    const told = walk(temperedPopulations(3, log, 5));
    let stopped = 0;
    const early = walk(
      temperedPopulations(
        3,
        (z, atLeast) => {
          if (log(z) >= atLeast) return log(z);
          stopped++;
          return Number.NEGATIVE_INFINITY;
        },
        5,
      ),
    );
    expect(stopped).toBeGreaterThan(1000);
    expect(early.splitRhat).toBe(told.splitRhat);
    expect(early.draw(500)).toEqual(told.draw(500));
  });
});
