import { describe, expect, test } from 'vitest';
import { fuzz } from './fuzz.js';

const PART = 1000;

/** Half of the twenty thousand cases, so that two processors share them. */
export function fuzzHalf(half: 0 | 1): void {
  const first = half * 10_000;
  describe('10000 surveys with mistakes', () => {
    test.each(Array.from({ length: 10 }, (_, part) => first + part * PART))('from seed %i on', (from) => {
      const { results, refused, slowest } = fuzz(from, from + PART);
      console.info(`from ${from}: ${results} results, ${refused} refused, slowest ${slowest.toFixed(1)} s`);
      expect(results).toBeGreaterThan(PART / 5);
      expect(refused).toBeGreaterThan(PART / 5);
    });
  });
}
