/** Notebooks published with their outputs as pages, by one command. */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { itUnderJupyter } from './jupyter.js';
import { PROJECT } from './notebooks.js';

const COMMAND = join(PROJECT, '.notebooks.mjs');
const OUT = join(PROJECT, 'out', 'notebooks');

itUnderJupyter('a notebook becomes a page with its figures and tables, which asks for nothing', async () => {
  const before = existsSync(OUT);
  onTestFinished(() => {
    if (!before) rmSync(OUT, { recursive: true, force: true });
  });
  const said = execFileSync(process.execPath, [COMMAND, 'what-lifts-the-liner'], { encoding: 'utf8' });
  const [path] = said.trimEnd().split('\n').slice(-1);
  expect(path).toBe(join('out', 'notebooks', 'what-lifts-the-liner.html'));
  expect(readdirSync(join(OUT, '..')).filter((name) => name.startsWith('.passing-'))).toEqual([]);
  const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
  if (!existsSync(executablePath) && process.env.CI !== 'true') return;
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage();
    const requests: string[] = [];
    page.on('request', (request) => requests.push(request.url()));
    await page.goto(pathToFileURL(join(PROJECT, path!)).href);
    await page.locator('.plot-container').first().waitFor();
    expect(await page.locator('.plot-container').count()).toBeGreaterThan(1);
    expect(await page.locator('table').count()).toBeGreaterThan(0);
    expect(requests.filter((url) => !/^(file|data|blob):/.test(url))).toEqual([]);
  } finally {
    await browser.close();
  }
});

it('an unknown name, and a computer without nbconvert, are told in a line', () => {
  const run = (env: NodeJS.ProcessEnv) =>
    spawnSync(process.execPath, [COMMAND, 'nothing'], { encoding: 'utf8', env: { ...process.env, ...env } });
  const without = run({ PATH: '/nowhere' });
  expect([without.status, without.stderr]).toEqual([
    1,
    'missing nbconvert, which makes pages of notebooks: pip install nbconvert\n',
  ]);
  if (spawnSync('jupyter', ['nbconvert', '--version']).status !== 0) return;
  const { status, stderr } = run({});
  expect(status).toBe(1);
  expect(stderr).toMatch(/^unknown notebook nothing\.ipynb; there are checked-against\.ipynb, /);
});
