import stdErfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';
import { expect, test } from 'vitest';
import { erfc } from '../../lib/sampling/errorFunction.js';
import { normalCdf, normalQuantile } from '../../lib/sampling/index.js';

test('the complementary error function is that of another library', () => {
  for (let x = -7; x <= 26; x += 0.01) {
    const theirs = stdErfc(x);
    expect(Math.abs(erfc(x) - theirs), `${x}`).toBeLessThanOrEqual(2e-15 * theirs);
  }
  expect(erfc(0)).toBe(1);
});

test('the normal quantile is that of another library, in both tails', () => {
  for (let k = 0.02; k <= 300; k *= 1.02) {
    const p = 10 ** -k;
    const theirs = -Math.SQRT2 * erfcinv(2 * p);
    expect(Math.abs(normalQuantile(p) - theirs), `${p}`).toBeLessThanOrEqual(1e-13 * (Math.abs(theirs) + 1));
    if (p > 1e-9) expect(normalQuantile(1 - p)).toBeCloseTo(-normalQuantile(p), 6);
  }
  expect(normalQuantile(0.5)).toBe(0);
  expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
});

test('quantile and distribution undo each other', () => {
  for (let z = -8; z <= 6; z += 0.05) expect(normalQuantile(normalCdf(z))).toBeCloseTo(z, 6);
});
