import { describe, expect, test } from 'vitest';
import { fuzz } from './fuzz.js';
import { throughFolder } from './fuzzFolder.js';

const CASES = 20_000;
const PART = 2000;

describe(`${CASES} surveys with mistakes`, () => {
  test.each(Array.from({ length: CASES / PART }, (_, part) => part * PART))('from seed %i on', (from) => {
    const { results, refused, slowest } = fuzz(from, from + PART);
    console.info(`from ${from}: ${results} results, ${refused} refused, slowest ${slowest.toFixed(1)} s`);
    expect(results).toBeGreaterThan(PART / 5);
    expect(refused).toBeGreaterThan(PART / 5);
  });

  test('150 of them from a folder to a page', async () => {
    for (let seed = 20_000; seed < 20_150; seed++) await throughFolder(seed);
  });
});
