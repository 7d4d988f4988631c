import { describe, expect, it } from 'vitest';
import { gamma, mulberry32, normal } from '../../datasets/random.mjs';

const DRAWS = 100_000;

/** Mean and variance of n draws, with the mean's standard error. */
function moments(draw: () => number): { mean: number; variance: number; error: number } {
  const values = Array.from({ length: DRAWS }, draw);
  const mean = values.reduce((sum, value) => sum + value, 0) / DRAWS;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (DRAWS - 1);
  return { mean, variance, error: Math.sqrt(variance / DRAWS) };
}

describe('seeded draws (exact moments; four standard errors, or 5 % for a variance)', () => {
  it('uniform: within [0, 1), mean 1/2, variance 1/12, repeatable', () => {
    const uniform = mulberry32(1);
    let outside = 0;
    const { mean, variance, error } = moments(() => {
      const value = uniform();
      if (!(value >= 0 && value < 1)) outside++;
      return value;
    });
    expect(outside).toBe(0);
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * error);
    expect(Math.abs(variance * 12 - 1)).toBeLessThan(0.05);
    expect(mulberry32(7)()).toBe(mulberry32(7)());
    expect(mulberry32(7)()).not.toBe(mulberry32(8)());
  });

  it('normal: mean 0, variance 1', () => {
    const uniform = mulberry32(2);
    const { mean, variance, error } = moments(() => normal(uniform));
    expect(Math.abs(mean)).toBeLessThan(4 * error);
    expect(Math.abs(variance - 1)).toBeLessThan(0.05);
  });

  it.each([
    [0.5, 3],
    [0.75, 4.5],
    [1, 2],
    [4, 10],
  ])('gamma of shape %d: mean %d, variance mean² / shape', (shape, wanted) => {
    const uniform = mulberry32(3);
    const { mean, variance, error } = moments(() => gamma(uniform, shape, wanted));
    expect(Math.abs(mean - wanted)).toBeLessThan(4 * error);
    expect(Math.abs((variance * shape) / wanted ** 2 - 1)).toBeLessThan(0.05);
  });
});
