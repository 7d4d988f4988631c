import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { PROJECT, passingFolder } from './notebooks.js';

const START = join(PROJECT, 'dist', 'notebook', 'underpond.js');
const contents = (folder: string) =>
  Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]));

test('a second run gives the same result to the byte, an interrupted one leaves the last good output, and the survey is as it was', async () => {
  const folder = passingFolder();
  const out = join(PROJECT, 'out', basename(folder));
  onTestFinished(() => rmSync(out, { recursive: true, force: true }));
  cpSync(join(PROJECT, 'datasets', 'clay-slope'), folder, { recursive: true });
  const survey = contents(folder);
  const run = () => {
    expect(spawnSync(process.execPath, [START, folder], { encoding: 'utf8' })).toMatchObject({
      status: 0,
      stderr: '',
    });
    return contents(out);
  };
  const first = run();
  const second = run();
  for (const name of ['result.json', 'water-year.csv', 'page.html'])
    expect(second[name] === first[name], name).toBe(true);

  for (const [signal, cell, exit] of [
    ['SIGINT', 'cell 2 of', 130],
    ['SIGTERM', 'cell 9 of', 143],
    ['SIGHUP', 'cell 7 of', 129],
  ] as const) {
    const child = spawn(process.execPath, [START, folder], { stdio: ['ignore', 'pipe', 'ignore'] });
    let said = '';
    child.stdout.on('data', (text) => {
      said += text;
      if (said.includes(cell)) child.kill(signal);
    });
    const [status] = await once(child, 'exit');
    expect(said).toContain(cell);
    expect(status).toBe(exit);
    expect(contents(out)).toEqual(second);
  }
  expect(contents(folder)).toEqual(survey);
  expect(readdirSync(join(PROJECT, 'out')).filter((name) => name.includes(basename(folder)))).toEqual([
    basename(folder),
  ]);
});
