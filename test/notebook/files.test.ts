import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
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

it.each(['folder', 'link to nothing', 'link to itself', 'link to a file without end'])(
  'refuses a survey file that is a %s',
  (kind) => {
    const folder = passingFolder();
    const path = join(folder, 'water.csv');
    if (kind === 'folder') mkdirSync(path);
    else {
      const to = { 'link to itself': 'water.csv', 'link to a file without end': '/dev/zero' }[kind];
      symlinkSync(to ?? 'nothing', path);
    }
    expect(() => readFolder(folder)).toThrow(/water\.csv: invalid 'water\.csv' - a folder, a pipe or a link/);
  },
);

it('refuses a file that stands there packed and unpacked, one that unpacks without end, and one that is no packed file', () => {
  const packed: [Buffer, RegExp][] = [
    [gzipSync('date,rain_mm\n2024-01-01,1\n'), /unpacked too/],
    [gzipSync(Buffer.alloc(40_000_000)), /larger than/],
    [Buffer.from('no gzip'), /incorrect header/],
  ];
  for (const [bytes, reason] of packed) {
    const folder = passingFolder();
    writeFileSync(join(folder, 'weather.csv.gz'), bytes);
    if (reason.test('it stands there unpacked too'))
      writeFileSync(join(folder, 'weather.csv'), 'date,rain_mm\n');
    expect(() => readFolder(folder)).toThrow(reason);
  }
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
