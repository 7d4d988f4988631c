/** Answers from the files of a folder; a file that cannot be shown row by row is kept as it came. */

import { matchHeader } from '../survey/header.js';
import { surveyFileOf } from '../survey/index.js';
import { Findings } from '../survey/problem.js';
import { readSheet, type Sheet } from '../survey/sheet.js';
import {
  type Answers,
  type Cell,
  columnsOf,
  FORM_FILES,
  type FormFile,
  type FormRow,
  noAnswers,
} from './answers.js';

/** More rows than anybody types are a logger's: they are read, and not shown. */
const MOST_ROWS = 500;

/** What was found in a folder. */
interface Opened {
  answers: Answers;
  attached: Map<string, Uint8Array>;
  /** files of the survey that count as they are and cannot be changed in the form */
  asTheyCame: string[];
}

/**
 * Opens the files of a folder.
 * @param files bytes by name
 */
export function openedFolder(files: Readonly<Record<string, Uint8Array>>): Opened {
  let answers = noAnswers();
  const attached = new Map<string, Uint8Array>();
  const asTheyCame: string[] = [];
  const taken = new Set<FormFile>();
  for (const name of Object.keys(files).sort()) {
    const bytes = files[name]!;
    const file = name.includes('/') ? undefined : FORM_FILES.find((each) => each === surveyFileOf(name));
    const read = file && !taken.has(file) ? rowsIn(file, bytes, answers.next) : undefined;
    if (!file || !read) {
      attached.set(name, bytes);
      if (file) asTheyCame.push(name);
      continue;
    }
    taken.add(file);
    answers = {
      ...answers,
      rows: { ...answers.rows, [file]: read.rows },
      source: { ...answers.source, [file]: read.text },
      remarks: { ...answers.remarks, [file]: read.remarks },
      next: answers.next + read.rows.length,
    };
  }
  return { answers: { ...answers, attached: [...attached.keys()] }, attached, asTheyCame };
}

function rowsIn(
  file: FormFile,
  bytes: Uint8Array,
  firstId: number,
): { text: string; rows: FormRow[]; remarks: string[] } | undefined {
  const text = textOf(bytes);
  if (text === undefined) return undefined;
  const findings = new Findings();
  const sheet = readSheet(file, text, findings);
  if (!sheet || findings.problems.length > 0 || sheet.rows.length > MOST_ROWS) return undefined;
  const placed = placedColumns(file, sheet);
  const point = pointed(file, sheet, placed ?? []);
  if (!placed || !point) return undefined;
  const rows = sheet.rows.map(({ line, cells }, at): FormRow => {
    const named = placed.flatMap(({ at: column, name, unit }) => {
      const cell = point(name, cells[column]?.replace(/\s+/g, ' ') ?? '');
      return cell === '' ? [] : [[name, { text: cell, ...(unit && bareUnit(cell, unit)) } as Cell] as const];
    });
    return { id: firstId + at, line, cells: Object.fromEntries(named) };
  });
  const remarks = text.split(/\r\n?|\n/).filter((line) => /^"?#/.test(line));
  return { text, rows, remarks };
}

const NUMBERS = /^[-+\u2212]?\d+(,\d+)?(?![\d.,])/;

/**
 * Cells of a sheet with decimal commas as they are written where commas stand between the cells: with points. None
 * where that could change what a number means.
 */
function pointed(
  file: FormFile,
  { decimals, rows }: Sheet,
  placed: readonly { at: number; name: string }[],
): ((name: string, cell: string) => string) | undefined {
  if (decimals === 'point') return (_, cell) => cell;
  const facts = file === 'site.csv' || file === 'pond.csv';
  const counts = (name: string) =>
    facts ? name === 'value' : columnsOf(file)[name]?.dimension !== undefined;
  const numbers = rows.flatMap(({ cells }) =>
    placed.filter(({ name }) => counts(name)).map(({ at }) => cells[at] ?? ''),
  );
  if (numbers.some((cell) => /\d[.,]/.test(cell) && !NUMBERS.test(cell))) return undefined;
  return (name, cell) => (counts(name) ? cell.replace(NUMBERS, (number) => number.replace(',', '.')) : cell);
}

const bareUnit = (cell: string, unit: string) => (/[a-z'"′″‘’“”°%]/i.test(cell) ? {} : { unit });

/** Where each column stands; none where one is not known, or a row breaks off. */
function placedColumns(
  file: FormFile,
  { header, rows }: Sheet,
): { at: number; name: string; unit?: string }[] | undefined {
  const columns = columnsOf(file);
  const placed: { at: number; name: string; unit?: string }[] = [];
  for (const [at, written] of header.cells.entries()) {
    if (written === '') {
      if (rows.some(({ cells }) => cells[at])) return undefined;
      continue;
    }
    const found = matchHeader(written, columns);
    const match = 'code' in found ? found.of : found;
    if (!match || placed.some(({ name }) => name === match.name)) return undefined;
    const fixed = columns[match.name]?.unit !== undefined;
    placed.push({ at, name: match.name, unit: fixed ? undefined : match.unit });
  }
  const short = rows.some(({ cells }) =>
    placed.some(({ at, name }) => at >= cells.length && !columns[name]?.mayBeCut),
  );
  return short ? undefined : placed;
}

/** Text with its byte order mark, so that the same bytes are written again; none where it is not UTF-8. */
function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
