/** Runs notebooks under a real Jupyter, if there is one on this computer. */
import { execFile, spawnSync } from 'node:child_process';
import { basename, join } from 'node:path';
import { promisify } from 'node:util';
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

/** The environment of a Jupyter that keeps everything of its own in one folder, with the kernel registered there. */
export async function jupyterEnvironment(home: string): Promise<NodeJS.ProcessEnv> {
  await writeKernelspec(home);
  return {
    ...process.env,
    JUPYTER_PATH: home,
    JUPYTER_RUNTIME_DIR: home,
    JUPYTER_DATA_DIR: home,
    JUPYTER_CONFIG_DIR: home,
    IPYTHONDIR: home,
  };
}

/** Executes notebooks with one nbconvert, which writes nothing outside a passing folder. */
export async function underJupyter(paths: string[], env: Record<string, string> = {}): Promise<Notebook[]> {
  const home = passingFolder();
  const args = ['nbconvert', '--to', 'notebook', '--execute', '--ExecutePreprocessor.timeout=600'];
  await promisify(execFile)('jupyter', [...args, '--output-dir', home, ...paths], {
    cwd: PROJECT,
    env: { ...(await jupyterEnvironment(home)), ...env },
  });
  return Promise.all(paths.map((path) => readNotebook(join(home, basename(path)))));
}
