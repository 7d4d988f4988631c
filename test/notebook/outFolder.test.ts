/** A set of files takes the place of the last one, whatever a run that was killed left. */
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import { expect, it } from 'vitest';
import { passingFolder as runFolder, takePlace } from '../../lib/notebook/outFolder.js';
import { passingFolder } from './notebooks.js';

const SET = ['result.json', 'notebook.ipynb'];
const outHere = () => join(passingFolder(), 'out', 'pond');

/** A run that makes these files. */
function run(out: string, files: Record<string, string>): void {
  const passing = runFolder(out, SET);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(passing, name), text);
  takePlace(passing, out, SET);
}

/** Files as they lie in a folder. */
function filesIn(folder: string): Record<string, string> {
  return Object.fromEntries(
    readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
  );
}

it('takes the place of the last set, keeps what else lies there, and nothing of the last set', () => {
  const out = outHere();
  run(out, { 'result.json': 'first', 'notebook.ipynb': 'first' });
  writeFileSync(join(out, 'notes.txt'), 'mine');
  run(out, { 'result.json': 'second' });
  expect(filesIn(out)).toEqual({ 'result.json': 'second', 'notes.txt': 'mine' });
  expect(readdirSync(join(out, '..'))).toEqual(['pond']);
});

it('puts back the last set where a run was killed between moving it aside and taking its place', () => {
  const out = outHere();
  run(out, { 'result.json': 'last' });
  renameSync(out, join(out, '..', '.last-pond'));
  runFolder(out, SET);
  expect(filesIn(out)).toEqual({ 'result.json': 'last' });
});

it('loses nothing of what else lay there where a run was killed before it had moved it', () => {
  const out = outHere();
  const last = join(out, '..', '.last-pond');
  run(out, { 'result.json': 'new' });
  mkdirSync(last);
  for (const [name, text] of Object.entries({
    'result.json': 'old',
    'notebook.ipynb': 'old',
    'notes.txt': 'mine',
  }))
    writeFileSync(join(last, name), text);
  runFolder(out, SET);
  expect(filesIn(out)).toEqual({ 'result.json': 'new', 'notes.txt': 'mine' });
  expect(existsSync(last)).toBe(false);
});

it('sweeps what runs that were killed left, not what another run is filling', () => {
  const out = outHere();
  const [old, other] = [runFolder(out, SET), runFolder(out, SET)];
  utimesSync(old, new Date(0), new Date(0));
  // Named as by a process that has ended, here and on another computer.
  const { pid } = spawnSync(process.execPath, ['--version']);
  const [ended, elsewhere] = [
    other.replace(`-${process.pid}-`, `-${pid}-`),
    join(out, '..', `.passing-otherhost-${pid}-Ab12Cd`),
  ];
  for (const folder of [ended, elsewhere]) mkdirSync(folder);
  const mine = runFolder(out, SET);
  expect(readdirSync(join(out, '..')).sort()).toEqual(
    [other, mine, elsewhere].map((path) => basename(path)).sort(),
  );
});
