import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { PROJECT } from '../notebook/notebooks.js';

const FILES = [
  'page.html',
  'pond-card.html',
  'result.json',
  'setting-out.csv',
  'water-year.csv',
  'worked.csv',
  'yearly-heads.csv',
];

it('npm start makes the same result under a newer Node', () => {
  const out = join(PROJECT, 'out', 'clay-slope');
  const start = join(PROJECT, 'dist', 'notebook', 'underpond.js');
  const run = (command: string, ...args: string[]) => {
    const ran = spawnSync(command, args, { cwd: PROJECT, encoding: 'utf8' });
    expect(ran.status, ran.stderr).toBe(0);
    for (const name of FILES) expect(existsSync(join(out, name)), name).toBe(true);
    return readFileSync(join(out, 'result.json'), 'utf8');
  };
  const newer = `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}@24`;
  expect(run('npx', '--yes', `--package=${newer}`, '--', 'node', start)).toBe(run(process.execPath, start));
});
