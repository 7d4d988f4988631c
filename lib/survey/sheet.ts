/** A file of cells as rows, each with the line it stood on. */

// The build for browsers carries its own byte buffer, and runs the same under Node.
import { CsvError, parse } from 'csv-parse/browser/esm/sync';
import type { DecimalSign } from '../units/index.js';
import { decode } from './encoding.js';
import { isOfOrdinarySize, isShortEnough, MOST_IN_ROW } from './limits.js';
import type { Findings } from './problem.js';
import { decimalSign, findSeparator, type Separator, takeSeparatorLine } from './separator.js';

export interface SheetRow {
  line: number;
  /** may be fewer than the header has */
  cells: string[];
}

export interface Sheet {
  file: string;
  header: SheetRow;
  rows: SheetRow[];
  decimals: DecimalSign;
}

/**
 * Reads a file of cells apart by commas, semicolons or tabs, quotes doubled inside quotes; rows that begin with `#`
 * and empty ones are passed over.
 * @param file its name
 * @param content bytes or text
 * @param findings receives a problem for each fault of form; rows at fault are left out of the sheet
 * @returns the sheet; undefined when the file can't be read as a table
 */
export function readSheet(file: string, content: string | Uint8Array, findings: Findings): Sheet | undefined {
  if (!isShortEnough(file, content, findings)) return undefined;
  const decoded = decode(file, content, findings);
  if (decoded === undefined) return undefined;
  const { text, named } = takeSeparatorLine(decoded);
  const separator = findSeparator(file, text, named, findings);
  if (!separator) return undefined;
  const records = readRecords(file, text, separator, findings);
  if (!records) return undefined;
  const [header, ...rows] = records.filter(({ cells }) => !isRemark(cells));
  if (header && !isOfOrdinarySize(file, header, findings)) return undefined;
  if (!header || rows.length === 0) {
    findings.refuse({
      code: 'empty-file',
      file,
      line: header?.line,
      message: header
        ? 'missing rows - the file holds a header and nothing below it'
        : 'missing rows - the file is empty',
      expected: 'a header line and at least one row',
      remedy: 'Fill it in, or take the file out of the folder.',
    });
    return undefined;
  }
  if (header.cells.length === 1 && /[,;\t]/.test(header.cells[0] as string)) {
    findings.refuse({
      code: 'wrong-separator',
      file,
      line: header.line,
      message: `invalid row '${header.cells[0]}' - all of it stands in one cell`,
      found: header.cells[0],
      expected: 'one cell for each column',
      remedy: 'In the spreadsheet split the first column into cells (text to columns), and save it again.',
    });
    return undefined;
  }
  warnOfCommentedRows(file, text, separator, { header, rows, records }, findings);
  const whole = rows
    .map(({ line, cells }) => ({ line, cells: withoutPadding(cells, header.cells.length) }))
    .filter((row) => isOfOrdinarySize(file, row, findings) && isNotTooLong(file, row, header, findings));
  return { file, header, rows: whole, decimals: decimalSign(separator, whole) };
}

function readRecords(
  file: string,
  text: string,
  separator: Separator,
  findings: Findings,
): SheetRow[] | undefined {
  const records: SheetRow[] = [];
  let lastLine = 0;
  try {
    // As bytes: what it makes of a text itself takes a quarter of the time of reading a long record.
    parse(new TextEncoder().encode(text), {
      comment: '#',
      comment_no_infix: true,
      delimiter: separator,
      max_record_size: MOST_IN_ROW,
      relax_column_count: true,
      relax_quotes: true, // 3' 2" typed by hand is a length, not a broken quotation
      skip_empty_lines: true,
      trim: true,
      on_record: (record: string[], { lines }) => {
        lastLine = lines;
        if (record.some((cell) => cell !== '')) {
          // The parser counts the line on which a record ends.
          const breaks = record.reduce((sum, cell) => sum + (cell.match(/\n/g)?.length ?? 0), 0);
          records.push({ line: lastLine - breaks, cells: record.map((cell) => cell.trim()) });
        }
        return null;
      },
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    if (error.code === 'CSV_MAX_RECORD_SIZE') {
      findings.refuse({
        code: 'too-large',
        file,
        line: lastLine + 1,
        message: `outside ${MOST_IN_ROW} characters - the row that begins here, or one below, is longer`,
        found: `more than ${MOST_IN_ROW} characters`,
        expected: `at most ${MOST_IN_ROW} characters`,
        remedy: 'Shorten it, or look for a quotation mark that was never closed.',
      });
      return undefined;
    }
    const unclosed = error.code === 'CSV_QUOTE_NOT_CLOSED';
    findings.refuse({
      code: 'invalid-quotes',
      file,
      line: lastLine + 1,
      message: unclosed
        ? 'invalid quotes - one opened here, or in a row below, is never closed'
        : 'invalid quotes - something stands behind the closing one',
      expected: 'a cell wholly in quotes, quotes inside it doubled',
      remedy: 'Put quotes around the whole cell and double those inside it: "3\' 2""".',
    });
    return undefined;
  }
  return records;
}

/** A spreadsheet puts quotes around a remark that holds a separator. */
const isRemark = (cells: string[]) => cells[0]?.startsWith('#') ?? false;

/** Spreadsheets fill rows up with empty cells. */
function withoutPadding(cells: string[], width: number): string[] {
  let length = cells.length;
  while (length > width && cells[length - 1] === '') length--;
  return cells.slice(0, length);
}

function isNotTooLong(file: string, row: SheetRow, header: SheetRow, findings: Findings): boolean {
  const [found, expected] = [row.cells.length, header.cells.length];
  if (found <= expected) return true;
  findings.refuse({
    code: 'ragged-row',
    file,
    line: row.line,
    message: `invalid row - ${found} cells where the header has ${expected}`,
    found: String(found),
    expected: `${expected} cells`,
    remedy: 'Put a cell that holds a comma in quotes, and write decimals with a point.',
  });
  return false;
}

/** The first cell of a row set aside by `#` is no longer than this many times the longest that counts; our choice. */
const ORDINARY_LENGTH = 2;

/** A row whose first cell begins with `#` would be lost in silence otherwise. */
function warnOfCommentedRows(
  file: string,
  text: string,
  separator: Separator,
  { header, rows, records }: { header: SheetRow; rows: SheetRow[]; records: SheetRow[] },
  findings: Findings,
): void {
  if (header.cells.length < 2) return;
  const unquoted = text.split('\n').flatMap((line, at) => {
    const cells = line.startsWith('#') ? line.split(separator).map((cell) => cell.trim()) : [];
    return cells.length > 0 ? [{ line: at + 1, cells }] : [];
  });
  const longest = Math.max(header.cells[0]!.length, ...rows.map(({ cells }) => cells[0]!.length));
  for (const { line, cells } of [...unquoted, ...records.filter((record) => isRemark(record.cells))]) {
    // Prose that a spreadsheet has padded holds as many cells as a row.
    const like =
      cells.length === header.cells.length &&
      cells.filter((cell) => cell !== '').length > 1 &&
      cells[0]!.length - 1 <= ORDINARY_LENGTH * longest;
    if (like)
      findings.warn({
        code: 'commented-row',
        file,
        line,
        message: "a line with as many cells as the header begins with '#', so it was not read",
      });
  }
}
