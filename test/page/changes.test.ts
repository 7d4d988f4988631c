/** What changed between two surveys: only that, in the units of the later one, the same on the terminal and on the page. */
import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { type Case, changesPage, changesText } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { itInChromium } from '../chromium.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';
import { fileOf } from './demoPage.js';

const FILES = briefDemo('clay-slope');

function caseOf(files: Record<string, string>, called = 'garden'): Case & { called: string } {
  const survey = surveyOf(files);
  const report = reportOf(judge(siteModel(survey, { seed: 1, samples: 64 })));
  return { survey, report, called };
}

const before = caseOf(FILES, 'garden-2024');
const deeper = caseOf(
  edited(
    withItem(withItem(FILES, 'pond.csv', 'depth', '1.3', 'm'), 'pond.csv', 'days_empty', '4', 'days'),
    'water.csv',
    (text) => `${text.trimEnd()}\nP1,2024-12-01,09:00,level,0.3,1.7,10,3.2,0.9,\n`,
  ),
  'garden-2025',
);
const cellsOf = (html: string) =>
  [...html.matchAll(/<t[dh](?: [^>]*)?>(.*?)<\/t[dh]>/g)].map(([, cell]) => cell!.replaceAll('\u00a0', ' '));

test('what is as it was is not told', () => {
  expect(changesText(before, before)).toBe(
    'The answer is the same.\n\nNo input differs: the files say the same.',
  );
  const said = changesText(before, deeper);
  expect(said).toMatch(/^pond\.csv depth +1\.00 m +1\.30 m$/m);
  expect(said).toMatch(/^pond\.csv days_empty +[\d.]+ days? +4 days$/m);
  expect(said).toMatch(/^water\.csv +34 rows, 0 gone or changed +35 rows, 1 new or changed$/m);
  expect(said).not.toMatch(/weather\.csv|levels\.csv|yearly high/);
  for (const line of said.split('\n').filter((line) => / {2,}/.test(line) && !/^(what|input) /.test(line))) {
    const cells = line.split(/ {2,}/);
    expect(cells).toHaveLength(3);
    expect(cells[1], line).not.toBe(cells[2]);
  }
});

test('lengths are in the units of the later survey, and what a tape cannot tell apart is told in full', () => {
  const us = caseOf(
    withItem(withItem(FILES, 'site.csv', 'show_units', 'us'), 'pond.csv', 'depth', '4', 'ft'),
  );
  expect(changesText(before, us)).toMatch(/^pond\.csv depth +3 ft 3 1\/2 in +4 ft$/m);
  const hair = caseOf(withItem(FILES, 'pond.csv', 'depth', '1.001', 'm'));
  expect(changesText(before, hair)).toMatch(/^pond\.csv depth +1 +1\.001$/m);
});

test('the page has the cells of the terminal, and runs and asks for nothing', () => {
  const html = changesPage(before, deeper, ['In garden-2025', 'Given and not used: <b>x</b>', '']);
  const lines = changesText(before, deeper)
    .split('\n')
    .filter((line) => / {2,}/.test(line));
  expect(cellsOf(html)).toEqual(lines.flatMap((line) => line.split(/ {2,}/)));
  expect(html).toContain('<title>What changed from garden-2024 to garden-2025</title>');
  expect(html).toContain('Given and not used: &lt;b&gt;x&lt;/b&gt;');
  const [, style] = /<style>([\s\S]*?)<\/style>/.exec(html)!;
  const hash = createHash('sha256').update(style!).digest('base64');
  expect(html).toContain(
    `default-src 'none'; script-src 'none'; style-src 'sha256-${hash}'; img-src data:; base-uri 'none'; form-action 'none'`,
  );
  expect(html).not.toMatch(/<script|<link|<img| style="|https?:/);
  const hostile = changesPage({ ...before, called: '<img src=x>' }, { ...before, called: '\u202e"' });
  expect(hostile).not.toMatch(/<img|\u202e/);
  expect(hostile).toContain('No input differs');
});

itInChromium('it fits a phone', async (page) => {
  await page.setViewportSize({ width: 360, height: 720 });
  await page.goto(fileOf(changesPage(before, deeper)));
  expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
  expect(await page.getByRole('cell', { name: '1.30 m', exact: true }).isVisible()).toBe(true);
});
