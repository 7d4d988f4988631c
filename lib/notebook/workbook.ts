/** A spreadsheet workbook as files of a survey, a sheet a file: its numbers as they are kept, not as they are shown. */

import { createRequire } from 'node:module';
import { basename, extname } from 'node:path';
import type { CellObject, WorkBook, WorkSheet } from '@e965/xlsx';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { dateText, SurveyError, timeText } from '../survey/index.js';
import { missingPackage } from './optional.js';

const LIBRARY = '@e965/xlsx';
/** Rows of a sheet that are read; whoever has more has no garden's survey. */
const MOST_ROWS = 150_001;
const DAY_MS = 86_400_000;

/** Is that the name of a workbook? */
export function isWorkbook(name: string): boolean {
  return /\.(xlsx|ods)$/i.test(name);
}

/**
 * The sheets of a workbook as CSV text, each named by the workbook and the sheet: `garden.xlsx/pits.csv`. Where there is
 * but one sheet it is named by the workbook: `pits.xlsx/pits.csv`.
 * @param name of the workbook's file
 * @param bytes of it
 * @throws EnvironmentError when the library that reads workbooks is missing, SurveyError when it cannot read this one
 */
export function workbookFiles(name: string, bytes: Uint8Array): Record<string, string> {
  const { read, SSF, utils } = library();
  let book: WorkBook;
  try {
    book = read(bytes, {
      type: 'array',
      cellNF: true,
      cellText: false,
      cellFormula: false,
      sheetRows: MOST_ROWS,
    });
  } catch (cause) {
    const message = `invalid '${name}' - no workbook that can be read (${(cause as Error).message})`;
    const remedy = 'Save it again as .xlsx or .ods, or each of its sheets as a CSV file.';
    throw new SurveyError([{ file: name, code: 'not-a-file', message, remedy }], []);
  }
  const only = book.SheetNames.length === 1 ? basename(name, extname(name)) : undefined;
  const text = (sheet: WorkSheet) => {
    const { e } = utils.decode_range(sheet['!ref'] ?? 'A1');
    return Array.from({ length: e.r + 1 }, (_, r) =>
      Array.from({ length: e.c + 1 }, (_, c) =>
        quoted(cellText(sheet[utils.encode_cell({ r, c })] as CellObject | undefined, book, SSF)),
      ).join(','),
    ).join('\n');
  };
  return Object.fromEntries(
    book.SheetNames.map((sheet) => [`${name}/${only ?? sheet}.csv`, text(book.Sheets[sheet] as WorkSheet)]),
  );
}

function library(): typeof import('@e965/xlsx') {
  try {
    return createRequire(import.meta.url)(LIBRARY);
  } catch (cause) {
    throw missingPackage(LIBRARY, 'read a workbook; or save each of its sheets as a CSV file', cause);
  }
}

// A line break would move the lines below it; the row of the sheet is what people look for.
const quoted = (cell: string) => `"${cell.replace(/[\r\n]+/g, ' ').replaceAll('"', '""')}"`;

/** What a cell holds: days and times by its format, a share with its sign, numbers in full. */
function cellText(
  cell: CellObject | undefined,
  book: WorkBook,
  ssf: typeof import('@e965/xlsx').SSF,
): string {
  if (!cell || cell.t === 'z') return '';
  if (cell.t === 'e') return 'error';
  const { v, z } = cell;
  if (typeof v !== 'number') return String(v ?? '');
  const format = typeof z === 'string' ? z : '';
  if (/%/.test(format)) return `${Number((v * 100).toPrecision(13))} %`;
  if (!ssf.is_date(format)) return String(v);
  const { date1904 } = book.Workbook?.WBProps ?? {};
  const at = ssf.parse_date_code(v, { date1904 });
  const time = timeText((at.H * 3600 + at.M * 60 + at.S) / SECONDS_PER_DAY);
  if (v < 1) return time;
  const day = dateText(Date.UTC(at.y, at.m - 1, at.d) / DAY_MS);
  return time === '00:00:00' ? day : `${day} ${time}`;
}
