import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { parseQuantity, parseSurvey, UnderpondError } from '../../lib/index.js';
import { soil } from '../../lib/physics.js';
import { checkedProfile, netHead } from '../../lib/uplift/index.js';

const LIB = fileURLToPath(new URL('../../lib/', import.meta.url));
/** Caught in the room that throws them. */
const INSIDE = ['CellFault', 'Misuse', 'Stumbled'];

const classes = readdirSync(LIB, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) => [
    ...readFileSync(join(LIB, name), 'utf8').matchAll(/class (\w+) extends (\w*Error)\b([\s\S]*?)\n}/g),
  ]);

test('every error that leaves the library has one base', () => {
  const own = classes.filter(([, , base]) => base === 'Error').map(([, name]) => name!);
  expect(own.sort()).toEqual([...INSIDE, 'UnderpondError'].sort());
});

/** What a code may be where its type has a name of its own. */
const named = new Map(
  readdirSync(LIB, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .flatMap((name) =>
      [...readFileSync(join(LIB, name), 'utf8').matchAll(/^type (\w+Fault) =([^;]*);/gm)].map(
        ([, type, codes]) => [type!, codes!] as const,
      ),
    ),
);

test('a code has one meaning: no two errors share one', () => {
  const codes = classes.flatMap(([, name, base, body]) =>
    base === 'UnderpondError'
      ? [...body!.matchAll(/code(?::| =)\s*([^,;]*)/g)].flatMap(([, type]) =>
          [...(named.get(type!.trim()) ?? type!).matchAll(/'([a-z-]+)'/g)].map(
            ([, code]) => `${code} ${name}`,
          ),
        )
      : [],
  );
  // Of quantities, formulas, field tests and the rest: 6, 4, 6 and 3.
  expect(codes.length).toBeGreaterThanOrEqual(19);
  const words = codes.map((code) => code.split(' ')[0]);
  expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([]);
});

test.each([
  ['unknown-unit', () => parseQuantity('3 kg', 'length')],
  ['survey-refused', () => parseSurvey({})],
  ['outside-range', () => netHead.of({ p: 1e9, h: 0 })],
  ['pond-geometry', () => checkedProfile({ length: -1, width: 1, points: [] } as never)],
  ['geometry', () => soil.augerHoleTest([], { diameter: 1, depthBelowTable: 1 } as never)],
])('a program tells what is wrong by its code: %s', (code, run) => {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(UnderpondError);
    expect((error as UnderpondError).code).toBe(code);
    return;
  }
  expect.unreachable();
});
