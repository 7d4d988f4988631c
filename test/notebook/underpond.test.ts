import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { readNotebook } from '../../lib/notebook/nbformat.js';
import { VERSION } from '../../lib/notebook/project.js';
import { passingFolder } from './notebooks.js';
import { lay, outOf, start } from './program.js';

it('refuses a faulty survey with every problem, status 2 and nothing written', () => {
  const folder = passingFolder();
  writeFileSync(join(folder, 'pond.csv'), 'item,value,unit,note\ndepth,deep,m,\nlenght,4,m,\n');
  const { status, stderr, stdout } = start(folder);
  expect(status).toBe(2);
  expect(stderr).toMatch(/pond\.csv:2[^\n]*deep/);
  expect(stderr).toMatch(/pond\.csv:3[^\n]*lenght/);
  expect(stdout).toMatch(/^underpond: starting\nreading [^\n]+\n$/);
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
    stderr: expect.stringContaining("unknown 'two three'. See underpond --help"),
  });
  expect(start('')).toMatchObject({ status: 1, stderr: expect.stringContaining('missing FOLDER') });
  expect(existsSync(outOf(nowhere))).toBe(false);
});

it('writes what a survey says to the terminal inert', () => {
  const folder = passingFolder();
  const hostile = '\u001b]52;c;aGk=\u0007\u001b[2J\u009b31m\u202e';
  writeFileSync(
    join(folder, 'pond.csv'),
    `item,value,unit,note\ndepth,${hostile},m,\n"len\n${hostile}",4,m,\n`,
  );
  const { status, stderr, stdout } = start(folder);
  expect(status).toBe(2);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
  expect(stderr + stdout).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
});

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

it('says how it is used, with examples, and what is wrong with what was typed', () => {
  const { status, stdout } = start('--help');
  expect(status).toBe(0);
  expect(stdout).toMatch(/npx underpond new garden/);
  for (const line of stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(start('--version').stdout).toBe(`${VERSION}\n`);
  for (const [args, said] of [
    [['--quik'], "Unknown option '--quik'"],
    [['compare', 'one'], 'missing AFTER'],
    [['new'], 'missing FOLDER'],
    [['new', 'one', 'two'], "unknown 'two'"],
  ] as const)
    expect(start(...args)).toMatchObject({ status: 1, stderr: expect.stringContaining(said) });
});
