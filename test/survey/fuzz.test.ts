import { expect, test } from 'vitest';
import { fuzz } from './fuzz.js';
import { throughFolder } from './fuzzFolder.js';

test('15 surveys with mistakes end in a result or a refusal with places', () => {
  const { results, refused, slowest } = fuzz(0, 15);
  console.info(`${results} results, ${refused} refused, slowest ${slowest.toFixed(1)} s`);
  // Both ways out are tried often.
  expect(results).toBeGreaterThan(4);
  expect(refused).toBeGreaterThan(4);
}, 300_000);

test('from a folder to a page, surveys keep their bytes and nothing else is left', async () => {
  for (let seed = 300; seed < 303; seed++) await throughFolder(seed);
});
