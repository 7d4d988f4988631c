/** Nothing called safe may fail the guard: every demo, every survey of the tests, the ten gardens, and some generated ones. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sweep } from '../sweep.js';
import { generatedGarden } from './generate.js';
import { guard } from './guard.js';
import { decidedByRounding, offByABillionth } from './rounding.js';
import { asTold } from './run.js';
import { TEN } from './ten.js';

type Files = Record<string, string>;

/** Survey folders under a folder of the project. */
function foldersOf(root: string): [string, Files][] {
  const at = (path: string) => new URL(`../../${root}/${path}`, import.meta.url);
  const named = readdirSync(at(''), { withFileTypes: true }).filter((entry) => entry.isDirectory());
  return named.map(({ name }) => {
    const csv = readdirSync(at(name)).filter((file) => file.endsWith('.csv'));
    return [name, Object.fromEntries(csv.map((file) => [file, readFileSync(at(`${name}/${file}`), 'utf8')]))];
  });
}

/** Generated gardens here; `gardens.long.ts` judges the rest. */
const GARDENS = 6;

const SURVEYS: [string, Files][] = [
  ...foldersOf('datasets'),
  ...TEN.map(({ name, files }): [string, Files] => [name, files]),
  ...foldersOf('test/surveys'),
  ...Array.from({ length: GARDENS }, (_, at): [string, Files] => {
    const { seed, files } = generatedGarden(at + 1);
    return [`garden ${seed}`, files];
  }),
];

test.each(sweep(SURVEYS, 2))('%s', (_name, files) => {
  expect(guard(files, asTold(files)).dangers).toEqual([]);
});

const TAPED = [
  ...TEN.filter(({ kind }) => kind === 'rounding'),
  ...[2].map((seed) => ({ name: `garden ${seed}`, files: generatedGarden(seed).files })),
];

test.each(sweep(TAPED, 1))('a billionth decides nothing: $name', ({ files }) => {
  expect(decidedByRounding(asTold(files), asTold(offByABillionth(files, 3)))).toEqual([]);
});
