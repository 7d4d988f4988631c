/** The demos and 300 generated gardens: no two outputs of a survey disagree. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { generatedGarden } from '../guard/generate.js';
import { disagreements } from './claim.js';
import { outputsOf } from './outputs.js';
import { claimsOf } from './read.js';

const GARDENS = 300;
const SAMPLES = 64;

const DEMOS = new URL('../../datasets/', import.meta.url);
const demos = readdirSync(DEMOS, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

test.each(demos)('%s', (name) => {
  const folder = new URL(`${name}/`, DEMOS);
  const csv = readdirSync(folder).filter((file) => file.endsWith('.csv'));
  const files = Object.fromEntries(csv.map((file) => [file, readFileSync(new URL(file, folder), 'utf8')]));
  expect(disagreements(claimsOf(outputsOf(files, SAMPLES)))).toEqual([]);
});

test(`${GARDENS} gardens`, () => {
  const found: string[] = [];
  for (let seed = 1; seed <= GARDENS; seed++)
    found.push(
      ...disagreements(claimsOf(outputsOf(generatedGarden(seed).files, SAMPLES))).map(
        (words) => `garden ${seed}: ${words}`,
      ),
    );
  expect(found).toEqual([]);
});
