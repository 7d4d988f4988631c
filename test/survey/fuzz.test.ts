import { expect, test } from 'vitest';
import { fuzz } from './fuzz.js';

test('300 surveys with mistakes end in a result or a refusal with places', () => {
  const { results, refused, slowest } = fuzz(0, 300);
  console.info(`${results} results, ${refused} refused, slowest ${slowest.toFixed(1)} s`);
  // Both ways out are tried often.
  expect(results).toBeGreaterThan(50);
  expect(refused).toBeGreaterThan(50);
});
