/** Whatever is built into a file brings its licence with it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { PROJECT } from './notebooks.js';

const read = (path: string) => readFileSync(join(PROJECT, path), 'utf8');
const { dependencies, license } = JSON.parse(read('package.json'));

it('the page carries the licences of the packages in its script, and the package those of all that is built in', () => {
  expect(license).toBe('MIT');
  expect(read('LICENSE')).toContain('MIT License');
  const [script, notices] = [read('dist/page/live.min.js'), read('dist/NOTICES.txt')];
  for (const name of [...Object.keys(dependencies), '@stdlib/math-base-special-erfc']) {
    const { version, license } = JSON.parse(read(`node_modules/${name}/package.json`));
    for (const text of [script, notices]) expect(text).toContain(`${name} ${version} (${license})`);
  }
  expect(notices).toMatch(/jpeg-js [\d.]+ \(BSD-3-Clause\)/);
  for (const words of ['Permission is hereby granted, free of charge', 'Apache License', 'ISC License'])
    for (const text of [script, notices]) expect(text).toContain(words);
  expect(notices).toContain('Neither the name');
});
