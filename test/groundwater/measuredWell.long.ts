/**
 * Bands against a measured well, see `test/fixtures/wells`: dips drawn as an owner would, judged on what was read after them. The
 * twin experiment cannot show what a model misses that is not the ground's.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import * as library from '../../dist/index.js';
import { judge } from '../bench/wells/judge.mjs';
import { drawDips, wellsIn } from '../bench/wells/wells.mjs';

const [well] = wellsIn(fileURLToPath(new URL('../fixtures/wells/', import.meta.url)));
const DRAWS = [0, 1, 2];
const SEEDS = [1, 2];
const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;

test.each(['4', '12'])('%s dips: bands that hold what came after, sharper than the dips alone', (density) => {
  const pairs = DRAWS.map((draw) =>
    SEEDS.map((seed) => judge(library, well, drawDips(well, density, draw), { seed, samples: 256 })),
  );
  const runs = pairs.flat();
  const of = (key: (run: (typeof runs)[number]) => number) => mean(runs.map(key));
  // Of an 80 % band; a band that holds everything tells nothing.
  expect(of(({ coverage }) => coverage)).toBeGreaterThan(0.75);
  expect(of(({ interval }) => interval)).toBeLessThan(0.6 * of(({ climatology }) => climatology.interval));
  // Years above the yearly high of 1 year in 20.
  expect(of(({ highs }) => highs.above)).toBeLessThan(0.15);
  expect(of(({ nse }) => nse)).toBeGreaterThan(0.4);
  for (const [one, other] of pairs) expect(Math.abs(one!.middleHigh - other!.middleHigh)).toBeLessThan(0.1);
});
