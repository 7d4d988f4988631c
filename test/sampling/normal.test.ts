import { expect, test } from 'vitest';
import { normalCdf, normalQuantile } from '../../lib/sampling/index.js';

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, four decimals (from memory); 1.959963984540054 to 16 digits.
test.each([
  [0.5, 0.6915],
  [1, 0.8413],
  [1.645, 0.95],
  [2.326, 0.99],
  [3, 0.9987],
])('below %s standard deviations lies %s of a normal distribution', (z, p) => {
  expect(normalCdf(z)).toBeCloseTo(p, 4);
});

test('the quantile at its ends and where every table begins', () => {
  expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 13);
  expect(normalQuantile(0.5)).toBeCloseTo(0, 15);
  expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
});

test('quantile and distribution undo each other, far into the lower tail', () => {
  for (let z = -37; z <= 6; z += 0.05) expect(normalQuantile(normalCdf(z))).toBeCloseTo(z, 6);
});
