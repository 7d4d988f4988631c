/** The README's programs say what the library answers. */
import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { headlineOf } from '../../lib/text/index.js';
import { demoFiles, surveyOf } from '../folder.js';
import { PROGRAMS, saidBy } from './readmePrograms.js';

test('what a survey that is opened says, and a program, is the answer', () => {
  const report = reportOf(assess(siteModel(surveyOf(demoFiles('clay-slope')), { seed: 1 })));
  const said = saidBy(PROGRAMS[0]!);
  expect(said.startsWith(`${headlineOf(report).answer}\n`)).toBe(true);
  for (const words of ['Which water wins?', 'How deep with what?', 'Your year.', 'Chance in a year that'])
    expect(said).toContain(words);
  const { option, depth_m, reason } = report.result.recommendation;
  expect(saidBy(PROGRAMS[1]!)).toBe(`${option} ${depth_m} ${reason}\n`);
});
