import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const LIB = fileURLToPath(new URL('../../lib/', import.meta.url));
/** A variable of a file that is no counter, or a store that is empty when the file is loaded. */
const STATE = /^(let \w+(?! = 0;)\b|const \w+(: [^=]*)? = (new (Map|WeakMap|Set)(<.*>)?\(\)|\[\]|\{\}))/gm;

test('a file keeps nothing between calls but what is remembered of an object handed in', () => {
  const found = readdirSync(LIB, { recursive: true, encoding: 'utf8' })
    // What a browser shows is a state.
    .filter((name) => name.endsWith('.ts') && !name.startsWith('form/screen/'))
    .flatMap((name) =>
      [...readFileSync(join(LIB, name), 'utf8').matchAll(STATE)].map(([state]) => `${name}: ${state}`),
    );
  expect(found).toEqual([]);
});
