import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readFolder, writeAtomically } from '../../lib/notebook/files.js';
import { passingFolder } from './notebooks.js';

it('reads the files of a folder, not its hidden files or subfolders', () => {
  const folder = passingFolder();
  mkdirSync(join(folder, 'photos'));
  for (const name of ['water.csv', 'pond.csv', '.hidden']) writeFileSync(join(folder, name), name);
  const files = readFolder(folder);
  expect(Object.keys(files)).toEqual(['pond.csv', 'water.csv']);
  expect(new TextDecoder().decode(files['water.csv'])).toBe('water.csv');
});

it('says which folder is missing', () => {
  expect(() => readFolder(join(passingFolder(), 'nowhere'))).toThrow('nowhere');
});

it('writes a file whole, over an older one, and leaves nothing else', () => {
  const folder = passingFolder();
  const path = join(folder, 'result.json');
  for (const text of ['first, and longer', 'second']) {
    writeAtomically(path, text);
    expect(readFileSync(path, 'utf8')).toBe(text);
  }
  expect(readdirSync(folder)).toEqual(['result.json']);
});

it('leaves the old state when it cannot finish', () => {
  const folder = passingFolder();
  // A folder stands in the place of the file, so that the last step fails.
  mkdirSync(join(folder, 'result.json', 'inside'), { recursive: true });
  expect(() => writeAtomically(join(folder, 'result.json'), 'text')).toThrow();
  expect(readdirSync(folder)).toEqual(['result.json']);
});
