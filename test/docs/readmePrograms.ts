import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PROJECT } from '../notebook/notebooks.js';

/** The programs in the README, in their order. */
export const PROGRAMS = readFileSync(join(PROJECT, 'README.md'), 'utf8').match(
  /(?<=```ts\n)import[\s\S]*?(?=```)/g,
)!;

/** What a program writes to the terminal. */
export const saidBy = (program: string) =>
  execFileSync('node', ['--input-type=module', '--eval', program], { cwd: PROJECT, encoding: 'utf8' });
