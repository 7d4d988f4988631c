/** The program as it is started, and demos laid where it finds them. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { briefDemo } from '../folder.js';
import { PROJECT } from './notebooks.js';

/** Starts it and waits. */
export const start = (...args: string[]) =>
  spawnSync(process.execPath, [join(PROJECT, 'dist', 'notebook', 'underpond.js'), ...args], {
    encoding: 'utf8',
  });

/** Lays a demo with ten years of its weather into a folder. */
export function lay(name: string, folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const [file, text] of Object.entries(briefDemo(name))) writeFileSync(join(folder, file), text);
}

/** Where it writes for a folder. */
export const outOf = (folder: string) => join(PROJECT, 'out', basename(folder));
