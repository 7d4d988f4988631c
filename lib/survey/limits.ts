/** How much of a file is read: more is refused in words rather than taken until memory runs out. */

import type { Findings } from './problem.js';

/** Bytes, or characters of text, of one file. */
export const MOST_BYTES = 32 * 1024 * 1024;
const MOST_CHARACTERS = 2000;
const MOST_COLUMNS = 100;
/** Characters of one row, at which the parser gives up. */
export const MOST_IN_ROW = MOST_COLUMNS * MOST_CHARACTERS;
/** Four centuries of days; and more looks, layers or points than anybody writes down. */
const MOST_DAYS = 150_000;
const MOST_ROWS = 20_000;
/** What is shown of a text that is too long. */
const SHOWN = 60;

/** Whether a file is short enough to be read; otherwise it is refused. */
export function isShortEnough(file: string, content: string | Uint8Array, findings: Findings): boolean {
  const most = file === 'weather.csv' ? MOST_DAYS : MOST_ROWS;
  const long = content.length > MOST_BYTES;
  const rows = long ? 0 : rowsOf(content);
  if (!long && rows <= most) return true;
  const found = long ? `more than ${MOST_BYTES / 1024 / 1024} MB` : `${rows} lines`;
  findings.refuse({
    code: 'too-large',
    file,
    message: `outside ${found} - at most ${most} lines are read`,
    found,
    expected: `at most ${most} lines`,
    remedy:
      file === 'weather.csv'
        ? 'Write a row a day: the sum of its rain, its lowest and highest temperature.'
        : 'Keep what tells something: of a logger, one level a day.',
  });
  return false;
}

function rowsOf(content: string | Uint8Array): number {
  const ends = (sign: '\n' | '\r') => {
    const next = (from: number) =>
      typeof content === 'string' ? content.indexOf(sign, from) : content.indexOf(sign.charCodeAt(0), from);
    let count = 0;
    for (let at = next(0); at !== -1; at = next(at + 1)) count++;
    return count;
  };
  return Math.max(ends('\n'), ends('\r'));
}

/** Whether the cells of a row are short enough, and few enough; otherwise the row is refused. */
export function isOfOrdinarySize(
  file: string,
  row: { line: number; cells: string[] },
  findings: Findings,
): boolean {
  const refuse = (message: string, found: string, expected: string, remedy: string, column?: string) => {
    findings.refuse({ code: 'too-large', file, line: row.line, column, message, found, expected, remedy });
    return false;
  };
  if (row.cells.length > MOST_COLUMNS)
    return refuse(
      `outside ${row.cells.length} cells - a row has at most ${MOST_COLUMNS}`,
      `${row.cells.length} cells`,
      `at most ${MOST_COLUMNS} cells`,
      'Look for a line break that was lost.',
    );
  const at = row.cells.findIndex((cell) => cell.length > MOST_CHARACTERS);
  if (at === -1) return true;
  const found = `${row.cells[at]?.slice(0, SHOWN)}…`;
  return refuse(
    `outside '${found}' - cell ${at + 1} holds ${row.cells[at]?.length} characters, at most ${MOST_CHARACTERS} are read`,
    found,
    `at most ${MOST_CHARACTERS} characters`,
    'Shorten it, or look for a quotation mark that was never closed.',
  );
}
