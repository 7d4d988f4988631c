/** The README's pictures and its survey as an object are what the library makes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { figureSvg, riskDepthFigure, whichWaterFigure } from '../../lib/figures/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, surveyOf } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';
import { PROGRAMS, saidBy } from './readmePrograms.js';

const WIDTH = 920;
const report = reportOf(assess(siteModel(surveyOf(demoFiles('clay-slope')), { seed: 1, samples: 256 })));
const text = readFileSync(join(PROJECT, 'README.md'), 'utf8');

test('the picture is the risk against depth of a demo (else: npm run docs)', async () => {
  // On paper of its own, for readers who read on dark.
  const svg = figureSvg(riskDepthFigure(report, 'metric'), WIDTH, 'risk').replace(
    '<defs>',
    '<rect width="100%" height="100%" fill="#fff"/><defs>',
  );
  await expect(svg).toMatchFileSnapshot(join(PROJECT, 'notebooks', 'risk-against-depth.svg'));
  expect(text).toContain('](notebooks/risk-against-depth.svg)');
});

test('the picture of which water wins is that of a demo (else: npm run docs)', async () => {
  const svg = whichWaterFigure(report).wide.replace(
    /(<svg[^>]*>)/,
    '$1<rect width="100%" height="100%" fill="#fff"/>',
  );
  await expect(svg).toMatchFileSnapshot(join(PROJECT, 'notebooks', 'which-water.svg'));
  expect(text).toContain('](notebooks/which-water.svg)');
});

test('the survey as an object is read', () => {
  expect(saidBy(PROGRAMS[2]!)).toBe('4.2672 2\n');
});
