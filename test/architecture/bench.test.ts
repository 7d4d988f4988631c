/** What a bench measures is there: it runs seldom, and a name that moved would be found late. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';

const BENCH = fileURLToPath(new URL('../bench/', import.meta.url));
const files = readdirSync(BENCH, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.mjs'),
);

test.each(files)('%s imports what the library has', async (name) => {
  const code = readFileSync(join(BENCH, name), 'utf8');
  const missing: string[] = [];
  for (const [, names, target] of code.matchAll(
    /import (?:\* as \w+|\{([^}]*)\}) from '(\.[^']*dist[^']*)'/g,
  )) {
    const module = (await import(pathToFileURL(join(dirname(join(BENCH, name)), target!)).href)) as object;
    for (const each of (names ?? '').split(','))
      if (each.trim() && !(each.trim().split(' as ')[0]! in module)) missing.push(each.trim());
  }
  expect(missing).toEqual([]);
});
