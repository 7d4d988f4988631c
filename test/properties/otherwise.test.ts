/** A site surveyed otherwise has the same answer, in numbers and words. */
import { describe, expect, test } from 'vitest';
import { demoFiles } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { correctSurvey, filesOf } from '../survey/generated.js';
import { sweep } from '../sweep.js';
import { answerOf } from './answer.js';
import { bareGarden, dippedGarden, plannedGarden } from './sites.js';
import { violations, WAYS } from './ways.js';

const SITES: [string, Record<string, string>][] = [
  ['a hole dipped through a winter', dippedGarden()],
  ...['clay-hollow', 'clay-slope', 'loam-terrace'].map((name): [string, Record<string, string>] => [
    name,
    demoFiles(name),
  ]),
  ['a garden with a plan', plannedGarden()],
  ['little said', bareGarden()],
  ...Array.from({ length: 2 }, (_, at): [string, Record<string, string>] => [
    `garden ${at + 1}`,
    generatedGarden(at + 1).files,
  ]),
  ...Array.from({ length: 1 }, (_, at): [string, Record<string, string>] => [
    `generated ${at + 1}`,
    filesOf(correctSurvey(at + 1)),
  ]),
];

describe.each(sweep(SITES, 1))('%s', (_, files) => {
  const before = answerOf(files);
  test.each(sweep(WAYS, 8).map((way) => [way.name, way] as const))('%s', (_name, way) => {
    expect(violations(files, way, before) ?? []).toEqual([]);
  });
});
