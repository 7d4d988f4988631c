import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { recommend } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, surveyOf } from '../folder.js';

const decide = (files: Record<string, string>, seed: number) =>
  recommend(assess(siteModel(surveyOf(files), { seed })));

test.each(['clay-hollow', 'clay-slope', 'loam-terrace'])('%s: another seed, the same answer', (name) => {
  const files = demoFiles(name);
  const answers = [2, 3, 4].map((seed) => decide(files, seed));
  const first = decide(files, 1);
  for (const a of answers) expect(a.option === first.option || first.close_call).toBe(true);
});
