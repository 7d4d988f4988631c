/** The form as it is written: one file that can ask nobody for anything. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { formHtml } from '../../lib/form/index.js';
import { formText } from '../../lib/notebook/formFile.js';
import { liveScript } from '../../lib/notebook/liveScript.js';
import { joined } from '../../lib/page/liveScripts.js';
import { PROJECT } from '../notebook/notebooks.js';

test('its policy allows its own style and script, workers made of them, and nothing else', async () => {
  const html = await formText();
  const [, policy] = /Content-Security-Policy" content="([^"]+)"/.exec(html)!;
  const scripts = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, text]) => text!);
  expect(scripts).toHaveLength(1);
  const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  const [, style] = /<style>([\s\S]*?)<\/style>/.exec(html)!;
  expect(policy).toBe(
    `default-src 'none'; script-src ${hash(scripts[0]!)}; style-src ${hash(style!)}; img-src data:; base-uri 'none'; form-action 'none'; worker-src blob:`,
  );
  const outside = html.replace(/<script[\s\S]*?<\/script>/g, '');
  expect(outside.length).toBeLessThan(20_000);
  expect(outside).not.toMatch(/ style="|<link|<img|<iframe|@import|url\(|https?:/);
});

test('it holds the library as it is in the page, and is no larger than a few photos', async () => {
  const html = await formText();
  const [, allowed, packed] = /id="library" data-allowed="([^"]+)">([^<]+)</.exec(html)!;
  const [, own] = /id="page-script">([\s\S]+?)<\/script>/.exec(html)!;
  expect(
    joined({ own: own!, allowed: allowed!.replaceAll('&#39;', "'"), library: packed! }) ===
      (await liveScript()),
  ).toBe(true);
  expect(Buffer.byteLength(html)).toBeLessThan(900_000);
  expect(html.includes('Built in:')).toBe(true);
});

test('what would break out of the file is refused', () => {
  const page = { own: '2', allowed: '', library: 'QQ==' };
  const parts = { script: '1', page, version: '1' };
  expect(() => formHtml({ ...parts, script: '"</script>"' })).toThrow(/invalid script/);
  expect(() => formHtml({ ...parts, page: { ...page, library: '</script>' } })).toThrow(/invalid library/);
  expect(formHtml({ ...parts, version: '"><b>' })).not.toContain('<b>');
});

test('the command writes it into a folder, or as a file of any name', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'underpond-form-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const run = (path: string) =>
    execFileSync('node', [join(PROJECT, 'dist', 'notebook', 'underpond.js'), 'form', path], {
      encoding: 'utf8',
    });
  expect(run(folder)).toContain(`wrote ${join(folder, 'pond-form.html')}`);
  expect(run(join(folder, 'mine.html'))).toContain('mine.html');
  expect(readFileSync(join(folder, 'mine.html'), 'utf8') === (await formText())).toBe(true);
});
