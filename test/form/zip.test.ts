/** Zips of strangers. */
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { plain, unzipped } from '../../lib/form/screen/zip.js';

const text = strToU8('item,value\n');

describe('what is no part of a survey stays out', () => {
  test('hidden files, folders of the system, names that lead elsewhere', () => {
    const zip = zipSync({
      'pond.csv': text,
      '.hidden': text,
      '__MACOSX/._pond.csv': text,
      '../evil.csv': text,
      'a/../b.csv': text,
      '/etc/x.csv': text,
      'c:\\x.csv': text,
      'later/heads.csv': text,
    });
    expect(Object.keys(unzipped(zip)).sort()).toEqual(['later/heads.csv', 'pond.csv']);
  });

  test('a folder that holds everything is looked into, the one for later kept', () => {
    const zip = zipSync({ 'garden/pond.csv': text, 'garden/later/heads.csv': text, 'garden/p1.jpg': text });
    expect(Object.keys(unzipped(zip)).sort()).toEqual(['later/heads.csv', 'p1.jpg', 'pond.csv']);
  });
});

describe('what would cost memory or is none is refused in words', () => {
  test.each([
    ['no zip', strToU8('item,value\ndepth,1\n')],
    ['an empty file', new Uint8Array()],
    ['a zip cut off', zipSync({ 'pond.csv': text }).subarray(0, 40)],
  ])('%s', (_, bytes) => {
    expect(() => unzipped(bytes)).toThrow(/This file cannot be opened: it is no zip/);
  });

  test('far more than a survey, by size or by number', () => {
    const large = zipSync({ 'a.csv': new Uint8Array(140e6) }, { level: 9 });
    expect(large.length).toBeLessThan(1e6);
    expect(() => unzipped(large)).toThrow(/it holds more than a survey does/);
    const many = zipSync(Object.fromEntries(Array.from({ length: 401 }, (__, at) => [`${at}.csv`, text])));
    expect(() => unzipped(many)).toThrow(/it holds more than a survey does/);
  });

  test('a packed file that is damaged', () => {
    expect(() => plain({ 'weather.csv.gz': strToU8('no gzip at all, whatever its name says') })).toThrow(
      "'weather.csv.gz' cannot be unpacked",
    );
  });
});
