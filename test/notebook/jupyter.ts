/** Runs a notebook under a real Jupyter, if there is one on this computer. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { writeKernelspec } from '../../lib/notebook/kernelspec.js';
import { type Notebook, readNotebook } from '../../lib/notebook/nbformat.js';
import { PROJECT, passingFolder } from './notebooks.js';

const present = spawnSync('jupyter', ['nbconvert', '--version']).status === 0;

/** A test that passes without Jupyter, saying so in its name, except where `CI` is `true`. */
export function itUnderJupyter(name: string, test: () => Promise<void>): void {
  if (present) it(name, test);
  else it(`${name} (not run: needs jupyter)`, () => expect(process.env.CI).not.toBe('true'));
}

/** Executes a notebook with nbconvert, which writes nothing outside a passing folder. */
export async function underJupyter(path: string, env: Record<string, string> = {}): Promise<Notebook> {
  const home = passingFolder();
  await writeKernelspec(home);
  const output = join(home, 'executed.ipynb');
  const ran = spawnSync(
    'jupyter',
    [
      'nbconvert',
      '--to',
      'notebook',
      '--execute',
      '--ExecutePreprocessor.timeout=600',
      '--output',
      output,
      path,
    ],
    {
      cwd: PROJECT,
      encoding: 'utf8',
      env: {
        ...process.env,
        ...env,
        JUPYTER_PATH: home,
        JUPYTER_RUNTIME_DIR: home,
        JUPYTER_DATA_DIR: home,
        JUPYTER_CONFIG_DIR: home,
        IPYTHONDIR: home,
      },
    },
  );
  expect(ran.status, ran.stderr).toBe(0);
  return readNotebook(output);
}
