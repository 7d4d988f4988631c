import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { FRONTS, handedOut } from './handedOut.js';

const root = fileURLToPath(new URL('../../', import.meta.url));

function filesIn(folder: string, ending: RegExp): string[] {
  return readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name);
    return statSync(join(root, path)).isDirectory() ? filesIn(path, ending) : ending.test(name) ? [path] : [];
  });
}

const textOf = (path: string) => readFileSync(join(root, path), 'utf8');
const lib = filesIn('lib', /\.ts$/).map((path) => ({ path: relative('lib', path), text: textOf(path) }));
const others = [
  ...filesIn('test', /\.m?[jt]s$/),
  ...filesIn('notebooks', /\.ipynb$/),
  ...['.build.mjs', '.check.mjs', '.notebooks.mjs', 'README.md'],
].map((path) => ({ path, text: textOf(path) }));

/** What a room's index hands on is no use of it, but what a front does: that is for users. */
const FRONT = /^(\w+|figures\/index)\.ts$/;
/** Rooms of `underpond/physics`, whose types users may want to name. */
const PHYSICS = /^(soil|climate|groundwater|uplift|pond|drain)\//;

/** Words of a file, without comments and without what it only hands on. */
function wordsOf({ path, text }: { path: string; text: string }): Set<string> {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/ .*/g, '');
  return new Set(
    (FRONT.test(path) ? code : code.replace(/export (type )?\{[^}]*\} from .*/g, '')).split(/[^\w$]+/),
  );
}

const filesWith = new Map<string, Set<string>>();
for (const file of [...lib, ...others])
  for (const word of wordsOf(file)) {
    const files = filesWith.get(word) ?? new Set();
    filesWith.set(word, files.add(file.path));
  }

/** Types that users meet and must be able to name. */
const handed = new Set(FRONTS.flatMap((front) => [...handedOut(front).keys()]));

test('what is exported is used by another file, by a test or by a notebook', () => {
  const idle = lib.flatMap(({ path, text }) =>
    [...text.matchAll(/^export (?:async )?(const|function|class|interface|type) (\w+)(.*)/gm)]
      .filter(
        ([, kind, name, rest]) =>
          !/= (formula|method)\(/.test(rest!) &&
          !(PHYSICS.test(path) && /^(interface|type)$/.test(kind!)) &&
          !handed.has(`${path}: ${name}`) &&
          [...filesWith.get(name!)!].every((file) => file === path),
      )
      .map(([, , name]) => `${path}: ${name}`),
  );
  expect(idle).toEqual([]);
});
