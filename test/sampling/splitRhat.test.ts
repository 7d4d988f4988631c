import { describe, expect, test } from 'vitest';
import { normalQuantile, splitRhat, uniforms } from '../../lib/sampling/index.js';

const chains = (count: number, length: number, shift: (chain: number, i: number) => number) => {
  const next = uniforms(3);
  return Array.from({ length: count }, (_, c) =>
    Array.from({ length }, (_, i) => normalQuantile(next()) + shift(c, i)),
  );
};

describe('split-R̂', () => {
  test('of two halves worked by hand: n = 2, W = 2, B/n = 4.5 → √(1/2 + 4.5/2)', () => {
    // Halves (0, 2) and (3, 5): variances 2 and 2, means 1 and 4, their variance 4.5.
    expect(splitRhat([[0, 2, 3, 5]])).toBeCloseTo(Math.sqrt(0.5 + 2.25), 12);
  });

  test('is near 1 for chains of one distribution, and does not mind scale or shift', () => {
    const alike = chains(4, 500, () => 0);
    expect(splitRhat(alike)).toBeLessThan(1.01);
    expect(splitRhat(alike.map((c) => c.map((v) => 40 - 7 * v)))).toBeCloseTo(splitRhat(alike), 12);
  });

  test('shows a chain that stands apart, and chains that all drift alike', () => {
    expect(splitRhat(chains(4, 500, (c) => (c === 0 ? 1 : 0)))).toBeGreaterThan(1.05);
    expect(splitRhat(chains(4, 500, (_, i) => i / 250))).toBeGreaterThan(1.1);
  });

  test('is 1 where nothing varies, and without end where chains stand still apart', () => {
    expect(splitRhat([[2, 2, 2, 2]])).toBe(1);
    expect(
      splitRhat([
        [2, 2, 2, 2],
        [3, 3, 3, 3],
      ]),
    ).toBe(Number.POSITIVE_INFINITY);
  });

  test('refuses no chain, short or unequal ones', () => {
    expect(() => splitRhat([])).toThrow('invalid chains');
    expect(() => splitRhat([[1, 2, 3]])).toThrow('4 or longer');
    expect(() =>
      splitRhat([
        [1, 2, 3, 4],
        [1, 2, 3, 4, 5],
      ]),
    ).toThrow('equal length');
  });
});
