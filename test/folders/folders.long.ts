import { expect, test } from 'vitest';
import { judgeFolders, newTally } from './judged.js';

const PART = 5000;

test.each([0, 1, 2, 3])('20,000 folders of a grammar, part %i', (part) => {
  const tally = newTally();
  judgeFolders(10_000 + part * PART, 10_000 + (part + 1) * PART, { weather: 0.01, answered: 0.02 }, tally);
  const { slowest, ...counts } = tally;
  console.info(
    `${counts.folders} folders, ${counts.read} read, ${counts.answered} answered; slowest ${slowest.read.toFixed(1)} and ${slowest.answer.toFixed(1)} s`,
  );
  expect(tally.orderlyRead / tally.orderly).toBeGreaterThan(0.7);
  expect(tally.codes.size).toBeGreaterThan(20);
  expect(tally.answered).toBeGreaterThan(40);
});
