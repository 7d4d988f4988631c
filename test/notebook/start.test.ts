import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { readNotebook } from '../../lib/notebook/nbformat.js';
import { PROJECT, passingFolder } from './notebooks.js';

const start = (...args: string[]) =>
  spawnSync(process.execPath, [join(PROJECT, 'dist', 'notebook', 'start.js'), ...args], { encoding: 'utf8' });

const outOf = (folder: string) => join(PROJECT, 'out', basename(folder));

it('refuses a faulty survey with every problem, status 2 and nothing written', () => {
  const folder = passingFolder();
  writeFileSync(join(folder, 'pond.csv'), 'item,value,unit,note\ndepth,deep,m,\nlenght,4,m,\n');
  const { status, stderr, stdout } = start(folder);
  expect(status).toBe(2);
  expect(stderr).toMatch(/pond\.csv:2[^\n]*deep/);
  expect(stderr).toMatch(/pond\.csv:3[^\n]*lenght/);
  expect(stdout).toBe('');
  expect(existsSync(outOf(folder))).toBe(false);
});

it('ends with status 1 and words where there is no such folder, or more than one', () => {
  const nowhere = join(passingFolder(), 'nowhere');
  expect(start(nowhere)).toMatchObject({
    status: 1,
    stderr: expect.stringContaining(`missing folder '${nowhere}'`),
  });
  expect(start('one', 'two', 'three')).toMatchObject({
    status: 1,
    stderr: expect.stringContaining("unknown 'three'"),
  });
  expect(existsSync(outOf(nowhere))).toBe(false);
});

it('lays the executed notebook, the page, the water year and the result into out/', async () => {
  const folder = passingFolder();
  const out = outOf(folder);
  onTestFinished(() => rmSync(out, { recursive: true, force: true }));
  cpSync(join(PROJECT, 'datasets', 'clay-slope'), folder, { recursive: true });
  const { status, stderr, stdout } = start(folder);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(readdirSync(out)).toEqual([
    'page.html',
    'pond-card.html',
    'result.json',
    'water-year.csv',
    'worked-analysis.ipynb',
    'worked.csv',
  ]);
  expect(readdirSync(join(out, '..')).filter((name) => name.startsWith(basename(folder)))).toEqual([
    basename(folder),
  ]);
  const result = JSON.parse(readFileSync(join(out, 'result.json'), 'utf8'));
  expect(stdout).toContain(`Recommendation. `);
  expect(stdout).toContain(result.recommendation.reason.trim());
  const notebook = await readNotebook(join(out, 'worked-analysis.ipynb'));
  for (const cell of notebook.cells.filter(({ cell_type }) => cell_type === 'code'))
    expect(cell.execution_count).toBeGreaterThan(0);
}, 120_000);

it('says what changed from one survey to another, and writes nothing', () => {
  const [before, after] = [passingFolder(), passingFolder()];
  for (const folder of [before, after])
    cpSync(join(PROJECT, 'datasets', 'clay-slope'), folder, { recursive: true });
  const pond = join(after, 'pond.csv');
  writeFileSync(pond, readFileSync(pond, 'utf8').replace('depth,1,m', 'depth,1.4,m'));
  const { status, stdout, stderr } = start(before, after);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toMatch(/pond\.csv depth +1 +1\.4/);
  expect(stdout).toMatch(/depth +1\.00 m +1\.\d\d m/);
  expect(stdout).toMatch(/Drain to an outlet: chance a year +0\.\d+ % +\d+ %/);
  expect(stdout).not.toContain('weather.csv');
  expect(existsSync(outOf(before))).toBe(false);
}, 60_000);
