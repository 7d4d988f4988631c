/** The README's picture and program are what the library makes. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { figureSvg, riskDepthFigure, whichWaterFigure } from '../../lib/figures/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { headlineOf } from '../../lib/text/index.js';
import { demoFiles, surveyOf } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';

const WIDTH = 920;
const text = readFileSync(join(PROJECT, 'README.md'), 'utf8');

test('the picture is the risk against depth of a demo (else: npm run docs)', async () => {
  const report = reportOf(assess(siteModel(surveyOf(demoFiles('clay-slope')), { seed: 1, samples: 256 })));
  // On paper of its own, for readers who read on dark.
  const svg = figureSvg(riskDepthFigure(report, 'metric'), WIDTH, 'risk').replace(
    '<defs>',
    '<rect width="100%" height="100%" fill="#fff"/><defs>',
  );
  await expect(svg).toMatchFileSnapshot(join(PROJECT, 'notebooks', 'risk-against-depth.svg'));
  expect(text).toContain('](notebooks/risk-against-depth.svg)');
});

test('the picture of which water wins is that of a demo (else: npm run docs)', async () => {
  const report = reportOf(assess(siteModel(surveyOf(demoFiles('clay-slope')), { seed: 1, samples: 256 })));
  const svg = whichWaterFigure(report).wide.replace(
    /(<svg[^>]*>)/,
    '$1<rect width="100%" height="100%" fill="#fff"/>',
  );
  await expect(svg).toMatchFileSnapshot(join(PROJECT, 'notebooks', 'which-water.svg'));
  expect(text).toContain('](notebooks/which-water.svg)');
});

/** The programs in the text, in their order. */
const programs = text.match(/(?<=```ts\n)import[\s\S]*?(?=```)/g)!;
const saidBy = (program: string) =>
  execFileSync('node', ['--input-type=module', '--eval', program], { cwd: PROJECT, encoding: 'utf8' });

test('what a survey that is opened says, and a program, is the answer', () => {
  const report = reportOf(assess(siteModel(surveyOf(demoFiles('clay-slope')), { seed: 1 })));
  const said = saidBy(programs[0]!);
  expect(said.startsWith(`${headlineOf(report).answer}\n`)).toBe(true);
  for (const words of ['Which water wins?', 'How deep with what?', 'Your year.', 'Chance in a year that'])
    expect(said).toContain(words);
  const { option, depth_m, reason } = report.result.recommendation;
  expect(saidBy(programs[1]!)).toBe(`${option} ${depth_m} ${reason}\n`);
});

test('the survey as an object is read', () => {
  expect(saidBy(programs[2]!)).toBe('4.2672 2\n');
});
