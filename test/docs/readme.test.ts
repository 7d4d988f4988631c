/** The README's pictures and its survey as an object are what the library makes. */
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { possibleOption } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { figureSvg, riskDepthFigure } from '../../lib/figures/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, surveyOf } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';
import { contentOf, draw, markOf, type Photograph, photographs } from './pictures.js';
import { PROGRAMS, saidBy } from './readmePrograms.js';

const WIDTH = 920;
const report = reportOf(assess(siteModel(surveyOf(demoFiles('clay-slope')), { seed: 1 })));
const text = readFileSync(join(PROJECT, 'README.md'), 'utf8');

test('the picture is the risk against depth of a demo (else: npm run docs)', async () => {
  // On paper of its own, for readers who read on dark.
  const svg = figureSvg(riskDepthFigure(report, 'metric'), WIDTH, 'risk').replace(
    '<defs>',
    '<rect width="100%" height="100%" fill="#fff"/><defs>',
  );
  await expect(svg).toMatchFileSnapshot(join(PROJECT, 'notebooks', 'risk-against-depth.svg'));
  const safe = possibleOption(report.result, 'drain-to-outlet')!.safe_depth_m!;
  expect(text).toContain(`a year down to ${safe.toFixed(2)} m](notebooks/risk-against-depth.svg)`);
});

test('page and card are photographed as they are now (else: npm run docs, with chromium)', async () => {
  const all = photographs(report);
  const path = (name: string) => join(PROJECT, 'notebooks', name);
  // Like a snapshot: written anew where snapshots are.
  const { snapshotState } = expect.getState() as unknown as { snapshotState: { _updateSnapshot: string } };
  if (snapshotState._updateSnapshot === 'all' && all.some((one) => stale(path(one.name), one)))
    (await draw(all)).forEach((png, at) => {
      writeFileSync(path(all[at]!.name), png);
    });
  for (const one of all) {
    expect(stale(path(one.name), one), one.name).toBe(false);
    expect(text).toContain(`notebooks/${one.name}`);
  }
  expect(all.reduce((sum, { name }) => sum + statSync(path(name)).size, 0)).toBeLessThan(150_000);
}, 60_000);

const stale = (path: string, one: Photograph) =>
  !existsSync(path) || markOf(readFileSync(path)) !== contentOf(one);

test('the survey as an object is read', () => {
  expect(saidBy(PROGRAMS[2]!)).toBe('4.2672 2\n');
});
