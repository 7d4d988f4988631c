import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { VERSION } from '../../lib/notebook/project.js';
import { passingFolder } from './notebooks.js';
import { outOf, start } from './program.js';

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
