import { test } from 'vitest';
import { throughFolder } from './fuzzFolder.js';
import { fuzzHalf } from './fuzzLong.js';

fuzzHalf(1);

test('150 more, from a folder to a page', async () => {
  for (let seed = 20_000; seed < 20_150; seed++) await throughFolder(seed);
});
