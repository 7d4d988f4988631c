/** A real Jupyter opened by `npm run lab`, and its classic front end in a real browser. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { expect, it, onTestFinished, vi } from 'vitest';
import { jupyterEnvironment, underJupyter } from './jupyter.js';
import { PROJECT, passingFolder } from './notebooks.js';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const TOKEN = 'known-to-this-test-only';
const HEADERS = { Authorization: `token ${TOKEN}` };
const present =
  existsSync(CHROMIUM) && spawnSync('jupyter', ['notebook', '--version'], { stdio: 'ignore' }).status === 0;

function itInJupyter(name: string, test: () => Promise<void>): void {
  if (present) it(name, test);
  else
    it(`${name} (not run: needs jupyter notebook and chromium)`, () =>
      expect(process.env.CI).not.toBe('true'));
}

const freePort = () =>
  new Promise<number>((done) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => done(port));
    });
  });

/** Starts a server by some command and waits until it answers; it ends with the test. */
async function serve(command: string, args: string[], env: NodeJS.ProcessEnv): Promise<string> {
  const port = await freePort();
  const flags = ['--no-browser', '--ip=127.0.0.1', `--port=${port}`, `--NotebookApp.token=${TOKEN}`];
  const server = spawn(command, [...args, ...flags, ...(process.getuid?.() === 0 ? ['--allow-root'] : [])], {
    env,
    stdio: 'ignore',
  });
  const gone = once(server, 'exit');
  const url = `http://127.0.0.1:${port}`;
  onTestFinished(async () => {
    // Only Jupyter itself can end its kernels: each is the leader of a group of its own.
    await fetch(`${url}/api/shutdown`, { method: 'POST', headers: HEADERS }).catch(() => server.kill());
    await gone;
  });
  await vi.waitUntil(
    () =>
      fetch(`${url}/api`).then(
        ({ ok }) => ok,
        () => false,
      ),
    { timeout: 60_000, interval: 250 },
  );
  return url;
}

async function open(): Promise<Page> {
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  onTestFinished(() => browser.close());
  return browser.newPage({ viewport: { width: 1280, height: 900 } });
}

/** Moves the depth of the what-if of a page and waits for another answer. */
async function tryDepth(page: Page): Promise<void> {
  const depth = page.getByRole('slider', { name: 'Depth dug' });
  await depth.waitFor({ timeout: 120_000 });
  const answer = page.locator('.what-if .answer');
  await answer.getByText(/afe at 1\.00 m/).waitFor({ timeout: 60_000 });
  await depth.focus();
  await page.keyboard.press('ArrowRight');
  await answer.getByText(/afe at 1\.05 m/).waitFor({ timeout: 60_000 });
}

itInJupyter('npm run lab opens a Jupyter that knows the kernel and runs the what-if live', async () => {
  const env = await jupyterEnvironment(passingFolder());
  const before = readFileSync(join(PROJECT, 'notebooks', 'what-if.ipynb'), 'utf8');
  const url = await serve(process.execPath, [join(PROJECT, 'dist', 'notebook', 'underpond.js'), 'lab'], env);
  const asked = await fetch(`${url}/api/kernelspecs`, { headers: HEADERS });
  const { kernelspecs } = (await asked.json()) as {
    kernelspecs: Record<string, { spec: { language: string } }>;
  };
  expect(kernelspecs.tslab).toMatchObject({ spec: { language: 'typescript' } });

  const page = await open();
  await page.goto(`${url}/notebooks/what-if.ipynb?token=${TOKEN}`);
  // The front end would save what is shown into the project.
  await page.waitForFunction('window.Jupyter?.notebook?.kernel?.is_connected()', undefined, {
    timeout: 120_000,
  });
  await page.evaluate('Jupyter.notebook.set_autosave_interval(0); Jupyter.notebook.execute_all_cells();');
  await tryDepth(page);
  await page.getByText('Measure next:').last().waitFor({ timeout: 120_000 });
  expect(await page.locator('.js-plotly-plot').count()).toBeGreaterThan(0);
  expect(readFileSync(join(PROJECT, 'notebooks', 'what-if.ipynb'), 'utf8')).toBe(before);
});

itInJupyter(
  'an executed what-if is alive where the notebook is trusted, and words where it is not',
  async () => {
    const folder = passingFolder();
    const home = passingFolder();
    const env = await jupyterEnvironment(home);
    const [executed] = await underJupyter([join(PROJECT, 'notebooks', 'what-if.ipynb')]);
    // A signature is of what is in the notebook: the two must differ.
    for (const name of ['trusted.ipynb', 'untrusted.ipynb'])
      writeFileSync(
        join(folder, name),
        JSON.stringify({ ...executed, metadata: { ...executed!.metadata, name } }),
      );
    const url = await serve('jupyter', ['notebook', folder], env);
    // What 'Trust Notebook' of the menu asks for.
    const trusted = await fetch(`${url}/api/contents/trusted.ipynb/trust`, {
      method: 'POST',
      headers: HEADERS,
    });
    expect(trusted.ok).toBe(true);
    const page = await open();
    await page.goto(`${url}/notebooks/trusted.ipynb?token=${TOKEN}`);
    await tryDepth(page);
    await page.goto(`${url}/notebooks/untrusted.ipynb`);
    await page
      .getByText(/(?:Safe|Not safe) at 1\.00 m/)
      .first()
      .waitFor({ timeout: 60_000 });
    expect(await page.getByRole('slider').count()).toBe(0);
  },
);
