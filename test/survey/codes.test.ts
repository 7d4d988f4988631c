/** The table of codes in the contributors' guide, walked. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey, SurveyError } from '../../lib/survey/index.js';
import { PROJECT } from '../notebook/notebooks.js';
import { GOOD } from './folder.js';

const DAY_MS = 86_400_000;
const ROW = /^\| `([a-z0-9-]+)` +\| (refused|told) +\| (.*?) +\| (.+?) +\|$/;
const rows = readFileSync(join(PROJECT, 'DEVELOPERS.md'), 'utf8')
  .split('\n')
  .flatMap((line) => {
    const [, code, kind, example] = ROW.exec(line) ?? [];
    return code && kind && example ? [{ code, kind, example }] : [];
  });

/** A row a day from one to the other. */
function days(first: string, last: string, cells: string): string {
  const count = (Date.parse(last) - Date.parse(first)) / DAY_MS + 1;
  const date = (at: number) => new Date(Date.parse(first) + at * DAY_MS).toISOString().slice(0, 10);
  return Array.from({ length: count }, (_, at) => `${date(at)},${cells}`).join('\n');
}

/** Written out, and as bytes where the example names any. */
function contentOf(text: string): string | Uint8Array {
  const written = text
    .replaceAll('↵', '\n')
    .replace(/(.)\{×(\d+)\}/g, (_, sign: string, times: string) => sign.repeat(Number(times)))
    .replace(/\{(\S+) to (\S+): (\S+)\}/g, (_, first: string, last: string, cells: string) =>
      days(first, last, cells),
    );
  if (!text.includes('\\x')) return `${written}\n`;
  const bytes = written.replace(/\\x(..)/g, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
  return Uint8Array.from(bytes, (sign) => sign.charCodeAt(0));
}

function filesOf(example: string): Record<string, string | Uint8Array> {
  const files: Record<string, string | Uint8Array> = { ...GOOD };
  for (const [, name = '', content] of example.matchAll(/`([a-z/ (1)]+\.csv)` (?:`(.*?)`|absent)/g))
    if (content === undefined) delete files[name];
    else files[name] = contentOf(content);
  return files;
}

function codesOf(files: Record<string, string | Uint8Array>): { refused: string[]; told: string[] } {
  const codes = (of: readonly { code: string }[]) => of.map(({ code }) => code);
  try {
    return { refused: [], told: codes(siteModel(parseSurvey(files), { samples: 20 }).warnings) };
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
    return { refused: codes(error.problems), told: codes(error.warnings) };
  }
}

describe("each code of the contributors' guide", () => {
  test.each(rows)('$code', ({ code, kind, example }) => {
    const found = codesOf(filesOf(example));
    if (kind === 'refused') expect(found.refused).toContain(code);
    else {
      expect(found.told).toContain(code);
      expect(found.refused).toEqual([]);
    }
  });

  test('stands there once', () => {
    const codes = rows.map(({ code }) => code);
    expect(codes.length).toBeGreaterThan(50);
    expect(new Set(codes).size).toBe(codes.length);
  });
});

test('every code of the reader and the site is in the table', () => {
  const known = new Set(rows.map(({ code }) => code));
  const sources = ['survey', 'units', 'site'].flatMap((room) =>
    readdirSync(join(PROJECT, 'lib', room)).map((file) => join(PROJECT, 'lib', room, file)),
  );
  const written = sources.flatMap((file) => {
    const text = readFileSync(file, 'utf8');
    const codes = [
      ...text.matchAll(
        /code: '([a-z-]+)'|(?:QuantityError|CellFault)\(\s*'([a-z-]+)'|(?:refuse|tell)\(\s*'([a-z]+(?:-[a-z0-9]+)+)'/g,
      ),
    ];
    return codes.map(([, ...of]) => of.find(Boolean) as string);
  });
  expect(written.length).toBeGreaterThan(50);
  expect([...new Set(written)].filter((code) => !known.has(code))).toEqual([]);
});
