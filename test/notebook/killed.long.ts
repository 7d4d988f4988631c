/** Killed at random moments a run leaves the old set of files or the new one, and the next run sweeps up. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { GOOD } from '../survey/folder.js';
import { Dice } from '../survey/generated.js';
import { PROJECT, passingFolder } from './notebooks.js';

const COMMAND = join(PROJECT, 'dist', 'notebook', 'underpond.js');
const OUT_FOLDER = join(PROJECT, 'dist', 'notebook', 'outFolder.js');
/** As many kills as fit into a minute each, unless a number of them is asked for. */
const KILLS = Number(process.env.KILLS ?? 0);
const SECONDS = 60;
const LIMIT_MS = 3_600_000;

const contents = (folder: string) =>
  Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]));

/** Runs a program until it is killed at a moment, counted from its start or its first word, or has ended. */
async function killed(
  args: string[],
  signal: NodeJS.Signals,
  after_ms: number,
  from: 'start' | 'word' = 'start',
) {
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'ignore'] });
  const gone = once(child, 'exit');
  child.stdout.resume();
  if (from === 'word') await Promise.race([gone, once(child.stdout, 'data')]);
  await Promise.race([gone, setTimeout(after_ms, undefined, { ref: false })]);
  child.kill(signal);
  const [status, by] = (await gone) as [number | null, NodeJS.Signals | null];
  return { status, by };
}

/** Goes on until there were enough kills. */
async function repeat(once: (round: number) => Promise<void>): Promise<number> {
  const start = performance.now();
  let round = 0;
  while (KILLS > 0 ? round < KILLS : performance.now() - start < 1000 * SECONDS) await once(round++);
  return round;
}

test(
  'the command, killed at any moment',
  async () => {
    const [folder, out] = [passingFolder(), passingFolder()];
    const args = [COMMAND, folder, '--quick', '--out', out];
    const write = (depth: number) => {
      const files: Record<string, string> = {
        ...GOOD,
        'pond.csv': GOOD['pond.csv'].replace('depth,1,', `depth,${depth},`),
      };
      for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    };
    const whole = async () => {
      const child = spawn(process.execPath, args, { stdio: 'ignore' });
      expect(await once(child, 'exit')).toEqual([0, null]);
      const [name, ...more] = readdirSync(out);
      expect(more).toEqual([]);
      return { place: join(out, name!), set: contents(join(out, name!)) };
    };
    write(1);
    const { place, set: one } = await whole();
    write(0.9);
    const start = performance.now();
    const { set: other } = await whole();
    const length_ms = performance.now() - start;
    for (const name of ['page.html', 'result.json', 'worked.csv']) expect(one[name]).not.toBe(other[name]);

    const dice = new Dice(25);
    const ended = new Map<string, number>();
    const kills = await repeat(async (round) => {
      write(round % 2 === 0 ? 1 : 0.9);
      const signal = dice.one(['SIGKILL', 'SIGTERM', 'SIGINT', 'SIGHUP'] as const);
      const { status, by } = await killed(args, signal, dice.between(0, 1.1) * length_ms);
      // By convention 128 and the signal's number; before the command has begun to listen, by the signal itself.
      const told = by ?? String(status);
      ended.set(told, (ended.get(told) ?? 0) + 1);
      if (told !== '0')
        expect([signal, { SIGTERM: '143', SIGINT: '130', SIGHUP: '129', SIGKILL: '' }[signal]]).toContain(
          told,
        );
      // A set that was being changed stands aside whole, for the moment between two renames.
      const stands = existsSync(place) ? place : join(out, `.last-${place.slice(out.length + 1)}`);
      const set = contents(stands);
      expect(Object.keys(set)).toEqual(Object.keys(one));
      const of = Object.keys(set).map((name) =>
        set[name] === one[name] ? 'one' : set[name] === other[name] ? 'other' : name,
      );
      // Files that are the same in both say nothing.
      const telling = of.filter((_, at) => one[Object.keys(set)[at]!] !== other[Object.keys(set)[at]!]);
      expect(new Set(telling).size, telling.join()).toBe(1);
      expect(['one', 'other']).toContain(telling[0]);
    });
    console.info(`${kills} kills: ${[...ended].map(([how, times]) => `${times} × ${how}`).join(', ')}`);
    await whole();
    expect(readdirSync(out)).toHaveLength(1);
  },
  LIMIT_MS,
);

/** Changes sets without end: whoever kills it hits the change itself. */
const CHANGER = `
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { passingFolder, takePlace } from ${JSON.stringify(OUT_FOLDER)};
const [, out] = process.argv;
const SET = ['a', 'b', 'c', 'd'];
for (let run = 0; ; run++) {
  const passing = passingFolder(out, SET);
  process.removeAllListeners('exit');
  for (const name of SET) writeFileSync(join(passing, name), String(run) + process.pid);
  takePlace(passing, out, SET);
  if (run === 0) process.stdout.write('begun');
}`;

test(
  'the change of sets itself, killed at any moment',
  async () => {
    const parent = passingFolder();
    const out = join(parent, 'pond');
    const dice = new Dice(26);
    const args = ['--input-type=module', '--eval', CHANGER, out];
    await killed(args, 'SIGKILL', 0, 'word');
    writeFileSync(join(existsSync(out) ? out : join(parent, '.last-pond'), 'notes.txt'), 'mine');
    let aside = 0;
    const kills = await repeat(async () => {
      await killed(args, 'SIGKILL', dice.between(0, 20), 'word');
      const stands = existsSync(out) ? out : join(parent, '.last-pond');
      if (stands !== out) aside += 1;
      const { 'notes.txt': _, ...set } = contents(stands);
      expect(Object.keys(set)).toEqual(['a', 'b', 'c', 'd']);
      expect(new Set(Object.values(set)).size, JSON.stringify(set)).toBe(1);
      // What was not of the set lies in one of the two.
      expect([out, join(parent, '.last-pond')].some((folder) => existsSync(join(folder, 'notes.txt')))).toBe(
        true,
      );
      // Of the runs that were killed at most the last has left a folder.
      expect(readdirSync(parent).filter((name) => name.startsWith('.passing-')).length).toBeLessThan(3);
    });
    console.info(`${kills} kills, ${aside} between the two renames`);
  },
  LIMIT_MS,
);
