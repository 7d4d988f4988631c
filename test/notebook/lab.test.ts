import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { sweep } from '../sweep.js';
import { alive, PROJECT, passingFolder } from './notebooks.js';

const COMMAND = join(PROJECT, 'dist', 'notebook', 'underpond.js');

/** Runs the command with only these programs on the path. */
function run(programs: string, ...args: string[]) {
  return spawnSync(process.execPath, [COMMAND, 'lab', ...args], {
    encoding: 'utf8',
    env: { ...process.env, PATH: programs },
  });
}

it('registers the kernel and says in one line how to get Jupyter where there is none', () => {
  const { status, stdout } = run(passingFolder());
  expect(status).toBe(0);
  expect(stdout.trimEnd().split('\n')).toHaveLength(1);
  expect(stdout).toContain('pip install jupyterlab');
  const spec = JSON.parse(readFileSync(join(PROJECT, '.jupyter', 'kernels', 'tslab', 'kernel.json'), 'utf8'));
  expect(existsSync(spec.argv[0])).toBe(true);
});

it('opens the notebooks with the kernel on the path of Jupyter, and passes arguments on', () => {
  const programs = passingFolder();
  const told = join(programs, 'told');
  writeFileSync(
    join(programs, 'jupyter'),
    `#!${process.execPath}\nconst fs = require('node:fs');\nif (process.argv[2] === 'lab') process.exit(1);\nif (process.argv[3] !== '--version') fs.writeFileSync(${JSON.stringify(told)}, JSON.stringify({ args: process.argv.slice(2), path: process.env.JUPYTER_PATH }));\n`,
    { mode: 0o755 },
  );
  expect(run(programs, '--no-browser').status).toBe(0);
  const { args, path } = JSON.parse(readFileSync(told, 'utf8'));
  expect(args).toEqual(['notebook', join(PROJECT, 'notebooks'), '--no-browser']);
  expect(path.split(':')[0]).toBe(join(PROJECT, '.jupyter'));
});

it.each(sweep(['SIGKILL', 'SIGTERM', 'SIGHUP', 'SIGINT'] as const, 1))(
  'leaves no server when it is ended by %s',
  async (signal) => {
    const programs = passingFolder();
    const told = join(programs, 'told');
    // A server that ends by itself only when it is asked to, as Jupyter does.
    writeFileSync(
      join(programs, 'jupyter'),
      `#!${process.execPath}\nif (process.argv[3] !== '--version') { for (const s of ['SIGTERM', 'SIGINT']) process.on(s, () => setTimeout(() => process.exit(0), 200)); setInterval(() => {}, 1000); require('node:fs').writeFileSync(${JSON.stringify(told)}, String(process.pid)); }\n`,
      { mode: 0o755 },
    );
    const lab = spawn(process.execPath, [COMMAND, 'lab'], {
      env: { ...process.env, PATH: `${programs}:/usr/bin:/bin` },
      stdio: ['pipe', 'ignore', 'ignore'],
    });
    const gone = once(lab, 'exit');
    await vi.waitUntil(() => existsSync(told) && readFileSync(told, 'utf8') !== '', { timeout: 60_000 });
    const server = Number(readFileSync(told, 'utf8'));
    lab.kill(signal);
    expect(await gone).toEqual(signal === 'SIGKILL' ? [null, 'SIGKILL'] : [0, null]);
    await vi.waitUntil(() => !alive(server), { timeout: 20_000 });
  },
);
