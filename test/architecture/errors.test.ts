import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { formatQuantity, parseQuantity, parseSurvey, siteModel, UnderpondError } from '../../lib/index.js';
import { newSurvey, readFolder } from '../../lib/node.js';
import { climate, soil } from '../../lib/physics.js';
import { checkedProfile, netHead } from '../../lib/uplift/index.js';
import { baseSurvey } from '../risk/base.js';

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
  // Of quantities, formulas, field tests, surroundings, inputs and the rest: 6, 4, 6, 6, 2 and 4.
  expect(codes.length).toBeGreaterThanOrEqual(28);
  const words = codes.map((code) => code.split(' ')[0]);
  expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([]);
});

/** Files that throw errors without a code, by the reason why nobody who calls the library meets one. */
const WITHOUT_CODE = {
  'it holds unless the library is wrong': [
    'climate/balance.ts',
    'climate/monthlyBookkeeping.ts',
    'decision/serving.ts',
    'groundwater/tub.ts',
    'page/pageReckoner.ts',
    'report/resultOf.ts',
    'report/workedNumbers.ts',
  ],
  'caught in its room, and told as a warning or a problem': [
    'notebook/files.ts',
    'notebook/jpeg.ts',
    'notebook/photos.ts',
    'notebook/png.ts',
  ],
  'thrown in a browser, and shown there': [
    'form/screen/photo.ts',
    'form/screen/reckonings.ts',
    'form/screen/session.ts',
    'form/screen/storage.ts',
    'form/screen/zip.ts',
    'page/pageWorker.ts',
  ],
  'of the command line alone': ['notebook/analyse.ts', 'notebook/verify.ts'],
};

test('an error without a code comes only from where no caller meets it', () => {
  const found = readdirSync(LIB, { recursive: true, encoding: 'utf8' }).filter(
    (name) =>
      name.endsWith('.ts') &&
      /new (Error|RangeError|TypeError|SyntaxError)\(/.test(readFileSync(join(LIB, name), 'utf8')),
  );
  expect(found.sort()).toEqual(Object.values(WITHOUT_CODE).flat().sort());
});

test.each([
  ['unknown-unit', () => parseQuantity('3 kg', 'length')],
  ['survey-refused', () => parseSurvey({})],
  ['outside-range', () => netHead.of({ p: 1e9, h: 0 })],
  ['pond-geometry', () => checkedProfile({ length: -1, width: 1, points: [] } as never)],
  ['invalid-input', () => formatQuantity(Number.NaN, 'length', 'metric')],
  ['invalid-input', () => siteModel(parseSurvey(baseSurvey()), { samples: 4 })],
  ['missing-input', () => climate.monthlySurplus([], 50, 0.1)],
  ['invalid-input', () => climate.thornthwaiteYear([1, 2, 3], 50)],
  ['folder-not-empty', () => newSurvey(LIB, 'metric')],
  ['missing-folder', () => readFolder('/nowhere')],
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
