/** The program from folder to answer. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { readNotebook } from '../../lib/notebook/nbformat.js';
import { OUTPUTS } from '../../lib/notebook/outputs.js';
import { passingFolder } from './notebooks.js';
import { lay, outOf, start } from './program.js';

it('lays the executed notebook, the page, the water year and the result into out/', async () => {
  const folder = passingFolder();
  const out = outOf(folder);
  onTestFinished(() => rmSync(out, { recursive: true, force: true }));
  lay('clay-slope', folder);
  const { status, stderr, stdout } = start(folder);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(readdirSync(out)).toEqual([
    '.survey',
    'page.html',
    'pond-card.html',
    'result.json',
    'setting-out.csv',
    'water-year.csv',
    'worked-analysis.ipynb',
    'worked.csv',
    'yearly-heads.csv',
  ]);
  expect(readdirSync(join(out, '..')).filter((name) => name.includes(basename(folder)))).toEqual([
    basename(folder),
  ]);
  const result = JSON.parse(readFileSync(join(out, 'result.json'), 'utf8'));
  const said = stdout.trimEnd().split('\n').slice(-6);
  expect(said[0]).toMatch(/^Drain to an outlet, dug 1\.00 m deep$/);
  expect(said.at(-1)).toMatch(
    new RegExp(`^open {7}(xdg-open|open|start) out/${basename(folder)}/page\\.html$`),
  );
  for (const line of said) expect(line.length).toBeLessThanOrEqual(80);
  for (const { message } of result.warnings) expect(stdout).toContain(message);
  const notebook = await readNotebook(join(out, 'worked-analysis.ipynb'));
  for (const cell of notebook.cells.filter(({ cell_type }) => cell_type === 'code'))
    expect(cell.execution_count).toBeGreaterThan(0);
}, 120_000);

it('says what changed from one survey to another, and leaves one page of it', () => {
  const parent = passingFolder();
  const [before, after] = [passingFolder(), passingFolder()];
  for (const folder of [before, after]) lay('clay-slope', folder);
  const pond = join(after, 'pond.csv');
  writeFileSync(pond, readFileSync(pond, 'utf8').replace('depth,1,m', 'depth,1.4,m'));
  const { status, stdout, stderr } = start('compare', before, after, '--out', parent);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout).toMatch(/pond\.csv depth +1\.00 m +1\.40 m/);
  expect(stdout).toMatch(/depth +1\.00 m +1\.\d\d m/);
  expect(stdout).toMatch(
    /Drain to an outlet: chance +about 1 year in \d+; set by how it is kept +[\d.]+ % a year/,
  );
  expect(stdout).not.toContain('weather.csv');
  expect(existsSync(outOf(before))).toBe(false);
  const made = `${basename(before)}-to-${basename(after)}`;
  expect(readdirSync(parent)).toEqual([made]);
  const page = join(parent, made, 'compared.html');
  expect(stdout.trimEnd().split('\n').at(-1)).toMatch(/^open {7}\S+ .*compared\.html$/);
  expect(readFileSync(page, 'utf8')).toContain(`What changed from ${basename(before)} to ${basename(after)}`);
}, 120_000);

it('answers without the notebook where that is asked for, beside a survey of the same name', () => {
  const parent = passingFolder();
  const gardens = ['east', 'west'].map((side) => join(passingFolder(), side, 'garden'));
  for (const folder of gardens) lay('loam-terrace', folder);
  const pond = join(gardens[1] as string, 'pond.csv');
  writeFileSync(pond, `${readFileSync(pond, 'utf8')}margin,6 in,,\n`);
  // Tried, and of no use to the answer yet: a test in a hole that nobody logged, and a file that was left aside.
  const [, west = ''] = gardens;
  writeFileSync(
    join(west, 'soakage.csv'),
    'pit,test,minutes,depth_to_water_in,hole_depth_in,hole_diameter_in\nQ9,1,0,10,24,6\nQ9,1,60,11,,\nQ9,1,120,12,,\n',
  );
  mkdirSync(join(west, 'later'));
  writeFileSync(join(west, 'later', 'heads.csv'), 'place,month,depth_ft\nsite,3,2\n');
  const read = (name: string) => readFileSync(join(parent, name, 'result.json'), 'utf8');
  const [first] = gardens.map((folder) => {
    // A path to one of its files is as good as the folder.
    const { status, stderr, stdout } = start(join(folder, 'pond.csv'), '--quick', '--out', parent);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout.trimEnd().split('\n').slice(-6)[0]).toMatch(/^No drain, dug /);
    if (folder === west) {
      expect(stdout).toMatch(/^Given and not used:$/m);
      expect(stdout).toMatch(/^ {2}soakage\.csv:2[^\n]*Q9[^\n]*Log that hole too, or name the pit/m);
      expect(stdout).toMatch(
        /^ {2}heads\.csv: 'later\/heads\.csv' holds 1 row and was not read: move it up/m,
      );
    }
    return read('garden');
  });
  expect(readdirSync(parent).sort()).toEqual(['garden', 'garden-2']);
  expect(read('garden')).toBe(first);
  expect(JSON.parse(read('garden-2')).survey.sha256).not.toBe(JSON.parse(read('garden')).survey.sha256);
  expect(readdirSync(join(parent, 'garden')).sort()).toEqual(['.survey', ...OUTPUTS].sort());
}, 120_000);
