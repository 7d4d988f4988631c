/** `npm run lab`: makes the kernel known to Jupyter and opens the notebooks in it. */
import { spawn, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { writeKernelspec } from './kernelspec.js';
import { PROJECT } from './project.js';

/** Ways to open a folder, the first that is installed is taken. */
const FRONT_ENDS = ['lab', 'notebook'];

/** The front end of Jupyter that is installed; undefined where there is none. */
export function frontEnd(): string | undefined {
  return FRONT_ENDS.find((name) => spawnSync('jupyter', [name, '--version']).status === 0);
}

/**
 * Registers the kernel in a folder of the project and opens the notebooks.
 * @param args handed on to Jupyter
 * @returns the exit status of Jupyter; 0 where it is missing and the line says how to get it
 */
export async function lab(args: string[]): Promise<number> {
  const home = join(PROJECT, '.jupyter');
  const spec = await writeKernelspec(home);
  const name = frontEnd();
  if (name === undefined) {
    process.stdout.write(
      `The kernel is in ${spec}; Jupyter is not installed: pip install jupyterlab, then npm run lab\n`,
    );
    return 0;
  }
  const opened = spawn('jupyter', [name, join(PROJECT, 'notebooks'), ...args], {
    stdio: 'inherit',
    // JUPYTER_PATH may hold folders of its own already.
    env: {
      ...process.env,
      JUPYTER_PATH: [home, process.env.JUPYTER_PATH]
        .filter(Boolean)
        .join(process.platform === 'win32' ? ';' : ':'),
    },
  });
  return new Promise((done) => opened.once('exit', (code) => done(code ?? 1)));
}
