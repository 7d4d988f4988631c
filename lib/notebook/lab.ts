/** `npm run lab`: makes the kernel known to Jupyter and opens the notebooks in it. */
import { spawn, spawnSync } from 'node:child_process';
import { constants } from 'node:os';
import { join } from 'node:path';
import type { Writable } from 'node:stream';
import { noJupyterWords } from '../text/commandWords.js';
import { writeKernelspec } from './kernelspec.js';
import { PROJECT } from './project.js';

/** Ways to open a folder, the first that is installed is taken. */
const FRONT_ENDS = ['lab', 'notebook'];

/** Runs a command that ends, by SIGTERM, when whoever holds the other end of its pipe is gone, however they went. */
const WATCHED = '(read _ <&3 || kill $$) & exec "$@" 3<&-';

/** The front end of Jupyter that is installed; undefined where there is none. */
function frontEnd(): string | undefined {
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
    process.stdout.write(`${noJupyterWords(spec)}\n`);
    return 0;
  }
  const command = ['jupyter', name, join(PROJECT, 'notebooks'), ...args];
  const [program = '', ...rest] =
    process.platform === 'win32' ? command : ['/bin/sh', '-c', WATCHED, 'sh', ...command];
  const opened = spawn(program, rest, {
    stdio: ['inherit', 'inherit', 'inherit', 'pipe'],
    // JUPYTER_PATH may hold folders of its own already.
    env: {
      ...process.env,
      JUPYTER_PATH: [home, process.env.JUPYTER_PATH]
        .filter(Boolean)
        .join(process.platform === 'win32' ? ';' : ':'),
    },
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.removeAllListeners(signal);
    // In a terminal Ctrl-C reaches the server too, which asks whether it is meant.
    process.on(signal, () => {
      if (signal !== 'SIGINT') opened.kill('SIGTERM');
      else if (!process.stdin.isTTY) opened.kill('SIGINT');
    });
  }
  return new Promise((done) =>
    opened.once('exit', (code, signal) => {
      // Lets the watcher go without a kill.
      (opened.stdio[3] as Writable | null)?.end('\n');
      done(code ?? 128 + (constants.signals[signal ?? 'SIGTERM'] ?? 0));
    }),
  );
}
