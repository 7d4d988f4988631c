import { expect, test } from 'vitest';
import { judgeFolders, newTally } from './judged.js';

test('15 folders of a grammar end in a refusal with places or in a page that holds', () => {
  const tally = newTally();
  judgeFolders(0, 15, { weather: 0.005, answered: 0.015 }, tally);
  // The grammar makes both: what is orderly is mostly read, and much else is refused.
  expect(tally.orderlyRead / tally.orderly).toBeGreaterThan(0.7);
  expect(tally.folders - tally.read).toBeGreaterThan(3);
  expect(tally.codes.size).toBeGreaterThan(5);
  expect(tally.answered).toBeGreaterThan(1);
});
