import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Notebook } from '../../lib/notebook/nbformat.js';
import { runNotebook } from '../../lib/notebook/run.js';
import { itUnderJupyter, underJupyter } from './jupyter.js';
import { PROJECT, passingFolder } from './notebooks.js';

const WORKED = join(PROJECT, 'notebooks', 'worked-analysis.ipynb');
const DEMO = join(PROJECT, 'datasets', 'clay-slope');
const FILES = ['page.html', 'pond-card.html', 'result.json', 'water-year.csv', 'worked.csv'];

/** What the cells of a notebook showed, without what may differ from run to run. */
const shown = (notebook: Notebook) =>
  notebook.cells.flatMap((cell) => cell.outputs ?? []).map((output) => output.output_type);

itUnderJupyter('the worked notebook makes the same under a real Jupyter as by npm start', async () => {
  const ours = passingFolder();
  const theirs = passingFolder();
  const env = (folder: string) => ({ UNDERPOND_SURVEY: DEMO, UNDERPOND_OUT: folder });
  const own = await runNotebook(WORKED, { env: env(ours) });
  const jupyter = await underJupyter(WORKED, env(theirs));
  expect(shown(jupyter)).toEqual(shown(own));
  for (const name of FILES)
    expect(readFileSync(join(theirs, name), 'utf8') === readFileSync(join(ours, name), 'utf8'), name).toBe(
      true,
    );
});

it('npm start makes the same result under a newer Node', () => {
  const out = join(PROJECT, 'out', 'clay-slope');
  const start = join(PROJECT, 'dist', 'notebook', 'start.js');
  const run = (command: string, ...args: string[]) => {
    const ran = spawnSync(command, args, { cwd: PROJECT, encoding: 'utf8' });
    expect(ran.status, ran.stderr).toBe(0);
    for (const name of FILES) expect(existsSync(join(out, name)), name).toBe(true);
    return readFileSync(join(out, 'result.json'), 'utf8');
  };
  const newer = `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}@24`;
  expect(run('npx', '--yes', `--package=${newer}`, '--', 'node', start)).toBe(run(process.execPath, start));
});
