/** What makes a site safer never raises a chance nor lessens a safe depth, on many sites. */
import { describe, expect, test } from 'vitest';
import { demoFiles } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { STEPS, worsenings } from './safer.js';
import { dippedGarden, plannedGarden } from './sites.js';

const SITES: [string, Record<string, string>][] = [
  ...['clay-hollow', 'clay-slope', 'loam-terrace'].map((name): [string, Record<string, string>] => [
    name,
    demoFiles(name),
  ]),
  ['a garden with a plan', plannedGarden()],
  ['a hole dipped through a winter', dippedGarden()],
  ...Array.from({ length: 2 }, (_, at): [string, Record<string, string>] => [
    `garden ${at + 1}`,
    generatedGarden(at + 1).files,
  ]),
];

describe.each(SITES)('%s', (_, files) => {
  test.each(STEPS.map((steps) => [steps.name, steps] as const))('%s', (_name, steps) => {
    expect(worsenings(files, steps) ?? []).toEqual([]);
  });
});
