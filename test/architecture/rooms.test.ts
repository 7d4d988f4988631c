import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { everyFormula, everyMethod } from '../formula/rooms.js';

const lib = fileURLToPath(new URL('../../lib/', import.meta.url));

/** The way of the data: a room imports only itself and rooms before it. */
const ROOMS = [
  'units',
  'formula',
  'sampling',
  'soil',
  'climate',
  'seepage',
  'groundwater',
  'uplift',
  'pond',
  'drain',
  'survey',
  'site',
  'risk',
  'figures',
  'page',
  'form',
  'notebook',
];

function sources(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? sources(path) : path.endsWith('.ts') ? [path] : [];
  });
}

const files = sources(lib).map((path) => ({
  path,
  name: relative(lib, path),
  text: readFileSync(path, 'utf8'),
}));
const imports = (text: string) =>
  [...text.matchAll(/(?:from|import\()\s*['"]([^'"]+)['"]/g)].map((m) => m[1]);
const roomOf = (path: string) => relative(lib, path).split('/')[0];

test('every folder of lib is a room on the list', () => {
  expect(
    readdirSync(lib)
      .filter((n) => statSync(join(lib, n)).isDirectory())
      .sort(),
  ).toEqual([...ROOMS].sort());
});

describe.each(files.filter((f) => f.name.includes('/')))('$name', ({ path, text }) => {
  test('imports no later room', () => {
    for (const target of imports(text).filter((i) => i.startsWith('.')))
      expect(ROOMS.indexOf(roomOf(join(dirname(path), target))), target).toBeLessThanOrEqual(
        ROOMS.indexOf(roomOf(path)),
      );
  });
});

test('no file imports itself by way of others, types included', () => {
  const targets = new Map(
    files.map(({ path, text }) => [
      path,
      imports(text)
        .filter((i) => i.startsWith('.'))
        .map((i) => join(dirname(path), i.replace(/\.js$/, '.ts'))),
    ]),
  );
  const done = new Set<string>();
  const visit = (path: string, way: string[]): void => {
    expect(way.indexOf(path), [...way, path].map((p) => relative(lib, p)).join(' -> ')).toBe(-1);
    if (done.has(path)) return;
    for (const target of targets.get(path) ?? []) visit(target, [...way, path]);
    done.add(path);
  };
  for (const { path } of files) visit(path, []);
});

test('nothing outside notebook and node.ts needs Node', () => {
  for (const f of files) {
    if (f.name === 'node.ts' || f.name.startsWith('notebook/')) continue;
    expect(
      imports(f.text).filter((i) => i.startsWith('node:')),
      f.name,
    ).toEqual([]);
  }
});

test('every formula and method that is declared is given out by its room', () => {
  const declared = files.flatMap(({ text }) =>
    [...text.matchAll(/^export const (\w+) = (?:formula|method)\(/gm)].map((m) => m[1]),
  );
  const given = { ...everyFormula, ...everyMethod };
  expect(declared.length).toBeGreaterThan(200);
  expect(declared.filter((name) => !(name in given))).toEqual([]);
});

test('no file is longer than 300 lines', () => {
  for (const f of files) expect(f.text.split('\n').length, f.name).toBeLessThanOrEqual(300);
});
