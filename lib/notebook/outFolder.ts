/** `out/`: a run's files take the place of the last ones all at once, whatever the moment it is ended. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';

/** Folders of runs under way, and of those that were killed, begin so; nobody's survey does. */
const PASSING = '.passing-';
/** Of this computer: another one may write into the same folder over a network. */
const HERE = `${PASSING}${hostname().replace(/[^A-Za-z0-9]/g, '')}-`;
/** Where the last set stands while the new one takes its place. */
const lastOf = (out: string) => join(dirname(out), `.last-${basename(out)}`);
/** Left by a run that was killed elsewhere: none takes so long, ms. */
const STALE = 3_600_000;

/**
 * An empty folder beside the one that a run will fill, gone when the process ends. Those of runs that were killed are
 * swept away, and what one of them had begun to change in the output is brought to an end.
 * @param out path of the folder to be filled; its parents are made
 * @param names of the files of a set
 */
export function passingFolder(out: string, names: readonly string[]): string {
  const parent = dirname(out);
  mkdirSync(parent, { recursive: true });
  settle(out, names);
  for (const name of readdirSync(parent)) {
    const path = join(parent, name);
    if (name.startsWith(PASSING) && isLeft(path)) rmSync(path, { recursive: true, force: true });
  }
  const passing = mkdtempSync(join(parent, `${HERE}${process.pid}-`));
  process.once('exit', () => rmSync(passing, { recursive: true, force: true }));
  return passing;
}

/** Whether the run that a passing folder is named after has ended. */
function isLeft(path: string): boolean {
  const name = basename(path);
  const age = Date.now() - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0);
  if (age > STALE || !name.startsWith(HERE)) return age > STALE;
  try {
    process.kill(Number(name.slice(HERE.length).split('-')[0]), 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}

/**
 * Puts a filled folder in the place of the last one: a run killed at any moment leaves the old set or the new one.
 * What else lay in the last one is kept.
 * @param passing from {@link passingFolder}, with all files of the set
 * @param out the folder it becomes
 * @param names of the files of a set, those this run did not make among them
 */
export function takePlace(passing: string, out: string, names: readonly string[]): void {
  settle(out, names);
  if (existsSync(out)) renameSync(out, lastOf(out));
  renameSync(passing, out);
  settle(out, names);
}

/** Brings a change of sets to an end: the last one is put back where no other has come, else gives up what is not of it. */
function settle(out: string, names: readonly string[]): void {
  const last = lastOf(out);
  if (!existsSync(last)) return;
  if (!existsSync(out)) {
    renameSync(last, out);
    return;
  }
  for (const name of readdirSync(last))
    if (!names.includes(name) && !existsSync(join(out, name))) renameSync(join(last, name), join(out, name));
  rmSync(last, { recursive: true, force: true });
}
