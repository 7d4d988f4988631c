/** A CSV file as rows of cells, each with the line it stood on. */

// The build for browsers carries its own byte buffer, and runs the same under Node.
import { CsvError, parse } from 'csv-parse/browser/esm/sync';
import { decode } from './encoding.js';
import { isOfOrdinarySize, isShortEnough, MOST_IN_ROW } from './limits.js';
import type { Findings } from './problem.js';

export interface SheetRow {
  line: number;
  cells: string[];
}

export interface Sheet {
  file: string;
  header: SheetRow;
  rows: SheetRow[];
}

/**
 * Reads a CSV file: comma separated, quotes doubled inside quotes, lines beginning with `#` and empty rows passed over.
 * @param file its name
 * @param content bytes or text
 * @param findings receives a problem for each fault of form; rows at fault are left out of the sheet
 * @returns the sheet; undefined when the file can't be read as a table
 */
export function readSheet(file: string, content: string | Uint8Array, findings: Findings): Sheet | undefined {
  if (!isShortEnough(file, content, findings)) return undefined;
  const text = decode(file, content, findings);
  if (text === undefined) return undefined;
  const records = readRecords(file, text, findings);
  if (!records) return undefined;
  const [header] = records;
  const rows = records.slice(1);
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
  if (header.cells.length === 1 && /[;\t]/.test(header.cells[0] as string)) {
    findings.refuse({
      code: 'wrong-separator',
      file,
      line: header.line,
      message: `invalid separator in '${header.cells[0]}' - cells must be apart by commas`,
      found: header.cells[0],
      expected: 'commas',
      remedy: 'Save it again with commas between the cells and points in the numbers.',
    });
    return undefined;
  }
  warnOfCommentedRows(file, text, header, findings);
  const whole = rows.filter(
    (row) => isOfOrdinarySize(file, row, findings) && isWhole(file, row, header, findings),
  );
  return { file, header, rows: whole };
}

function readRecords(file: string, text: string, findings: Findings): SheetRow[] | undefined {
  const records: SheetRow[] = [];
  let lastLine = 0;
  try {
    parse(text, {
      comment: '#',
      comment_no_infix: true,
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

function isWhole(file: string, row: SheetRow, header: SheetRow, findings: Findings): boolean {
  const [found, expected] = [row.cells.length, header.cells.length];
  if (found === expected) return true;
  findings.refuse({
    code: 'ragged-row',
    file,
    line: row.line,
    message: `invalid row - ${found} cells where the header has ${expected}`,
    found: String(found),
    expected: `${expected} cells`,
    remedy:
      found > expected
        ? 'Put a cell that holds a comma in quotes, and write decimals with a point.'
        : 'Add the missing commas, also for cells left empty.',
  });
  return false;
}

/** A row whose first cell begins with `#` would be lost in silence otherwise. */
function warnOfCommentedRows(file: string, text: string, header: SheetRow, findings: Findings): void {
  text.split('\n').forEach((line, at) => {
    if (line.startsWith('#') && line.split(',').length === header.cells.length && header.cells.length > 1) {
      findings.warn({
        code: 'commented-row',
        file,
        line: at + 1,
        message: "a line with as many cells as the header begins with '#', so it was not read",
      });
    }
  });
}
