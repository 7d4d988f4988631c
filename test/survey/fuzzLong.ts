import { describe, expect, test } from 'vitest';
import { fuzz } from './fuzz.js';

const PART = 1000;
const PARTS = 4;

/** Half of the eight thousand cases, so that two processors share them. */
export function fuzzHalf(half: 0 | 1): void {
  const first = half * PARTS * PART;
  describe(`${PARTS * PART} surveys with mistakes`, () => {
    test.each(Array.from({ length: PARTS }, (_, part) => first + part * PART))('from seed %i on', (from) => {
      const { results, refused, slowest } = fuzz(from, from + PART);
      console.info(`from ${from}: ${results} results, ${refused} refused, slowest ${slowest.toFixed(1)} s`);
      expect(results).toBeGreaterThan(PART / 5);
      expect(refused).toBeGreaterThan(PART / 5);
    });
  });
}
