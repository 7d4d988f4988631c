import { expect, test } from 'vitest';
import { parseSurvey } from '../../lib/survey/index.js';
import { generatedGarden } from './generate.js';

/** Gardens read here; the guard reads more. */
const READ = 15;

/** What must be met with among the gardens. */
const KINDS = [
  ...['maritime', 'winter rain', 'southern winter', 'monsoon', 'continental', 'us units'],
  ...[
    'clay',
    'soft clay',
    'cracked clay',
    'sand',
    'sandy loam',
    'gravel',
    'silt loam',
    'peat',
    'made ground',
  ],
  ...['seam measured', 'seam struck', 'seam looked', 'seam logged only'],
  ...['weather', 'climate', 'months known', 'one known high', 'sealed dips', 'open dips'],
  ...['slope', 'ring', 'ballast', 'existing', 'long emptying', 'flood marked', 'several outlets'],
  ...['house within reach', 'footing known', 'boundary', 'shrinkable clay'],
];

test('generated gardens are read without a refusal, and every kind comes up', () => {
  const met = new Set<string>();
  for (let seed = 1; seed <= 120; seed++) {
    const { files, traits } = generatedGarden(seed);
    if (seed <= READ) parseSurvey(files, { name: `garden ${seed}` });
    for (const trait of traits) met.add(trait);
  }
  expect(KINDS.filter((kind) => !met.has(kind))).toEqual([]);
});

test('a seed gives the same garden, another seed another', () => {
  expect(generatedGarden(5)).toEqual(generatedGarden(5));
  expect(generatedGarden(6).files['pond.csv']).not.toBe(generatedGarden(5).files['pond.csv']);
});
