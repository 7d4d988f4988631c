/** The files of a survey folder from what was typed: what the reader reads, and what the zip holds. */
import { SUFFIXES } from '../survey/column.js';
import { rowsText, SURVEY_FILES } from '../survey/index.js';
import type { UnitSystem } from '../units/index.js';
import {
  type Answers,
  type Cell,
  columnsOf,
  FORM_FILES,
  type FormFile,
  type FormRow,
  isBare,
  textOf,
  unitsOf,
} from './answers.js';

/** A file as it is written, and on which line of it each of the form's rows stands. */
interface Written {
  text: string;
  lines: ReadonlyMap<number, number>;
}

/** The files that anything was typed into. */
export function writtenFiles(answers: Answers): Partial<Record<FormFile, Written>> {
  const written: Partial<Record<FormFile, Written>> = {};
  for (const file of FORM_FILES) {
    const one = writtenFile(answers, file);
    if (one) written[file] = one;
  }
  return written;
}

/** Rows that say something. */
function saying(file: FormFile, rows: readonly FormRow[]): FormRow[] {
  const facts = file === 'site.csv' || file === 'pond.csv';
  return rows.filter((row) => {
    if (row.draft) return false;
    if (facts) return textOf(row, 'value') !== '' || textOf(row, 'note') !== '';
    return Object.values(row.cells).some(({ text }) => text.trim() !== '');
  });
}

function writtenFile(answers: Answers, file: FormFile): Written | undefined {
  const source = answers.source[file];
  const all = answers.rows[file];
  if (source !== undefined) {
    const lines = new Map(all.flatMap(({ id, line }) => (line === undefined ? [] : [[id, line] as const])));
    return { text: source, lines };
  }
  const rows = saying(file, all);
  if (rows.length === 0) return undefined;
  const columns = columnsOf(file);
  const needed = Object.entries(columns).filter(([name, { required }]) => {
    return required || rows.some((row) => textOf(row, name) !== '');
  });
  const units = unitsOf(answers);
  const headed = needed.map(([name]) => ({ name, ...headerOf(file, name, rows, units) }));
  const remarks = answers.remarks[file] ?? [];
  const cellIn = (row: FormRow, name: string, unit: string | undefined) => cellText(row.cells[name], unit);
  const cells = rows.map((row) => headed.map(({ name, unit }) => cellIn(row, name, unit)));
  const text =
    remarks.map((line) => `${line}\n`).join('') + rowsText([headed.map(({ header }) => header), ...cells]);
  const first = remarks.length + 2;
  return {
    text,
    lines: new Map(rows.map(({ id }, at) => [id, first + at])),
  };
}

/** Suffixes that a column's header may end in, by unit. */
function suffixes(file: FormFile, name: string): Map<string, string> | undefined {
  const { dimension, unit } = columnsOf(file)[name] ?? {};
  const known = dimension && unit === undefined ? SUFFIXES[dimension] : undefined;
  return known && new Map(Object.entries(known).map(([suffix, each]) => [each, suffix]));
}

/** Of a bare number, where nobody chose another. */
const USUAL: Readonly<Record<string, Record<UnitSystem, string>>> = {
  length: { metric: 'm', us: 'ft' },
  speed: { metric: 'm/s', us: 'in/h' },
  fraction: { metric: '%', us: '%' },
  pressure: { metric: 'kPa', us: 'psf' },
  temperature: { metric: 'C', us: 'F' },
};

/** The header of a column, with the unit that the first bare number below it was typed in. */
function headerOf(
  file: FormFile,
  name: string,
  rows: readonly FormRow[],
  units: UnitSystem,
): { header: string; unit?: string } {
  const known = suffixes(file, name);
  if (!known) return { header: name };
  const used = rows
    .map((row) => row.cells[name])
    .find((cell) => cell?.text && cell.unit && known.has(cell.unit));
  const dimension = columnsOf(file)[name]?.dimension ?? 'length';
  const unit = used?.unit ?? USUAL[dimension]![units];
  return { header: `${name}_${known.get(unit)}`, unit };
}

/** A cell below a header: a number in another unit carries its own. */
function cellText(cell: Cell | undefined, unit: string | undefined): string {
  const { text = '', unit: own } = cell ?? {};
  return own !== undefined && own !== unit && isBare(text) ? `${text} ${own}` : text;
}

/** Files that may hold rows; of others the reader needs the name alone. */
const HOLDS_ROWS = /\.(csv|tsv|dly|txt)$/i;

/**
 * What the reader of surveys is given.
 * @param attached bytes of the files kept as they are, by name
 */
export function readable(
  answers: Answers,
  attached: ReadonlyMap<string, Uint8Array>,
): Record<string, string | Uint8Array> {
  const files: Record<string, string | Uint8Array> = {};
  for (const name of answers.attached)
    files[name] = (HOLDS_ROWS.test(name) && attached.get(name)) || new Uint8Array();
  for (const [name, { text }] of Object.entries(writtenFiles(answers))) files[name] = text;
  return files;
}

/**
 * The folder as bytes, files of the contract first.
 * @param attached bytes of the files kept as they are, by name; a name without bytes is left out
 */
export function folderOf(
  answers: Answers,
  attached: ReadonlyMap<string, Uint8Array>,
): Record<string, Uint8Array> {
  const written = writtenFiles(answers);
  const kept = answers.attached.flatMap((name) => {
    const bytes = attached.get(name);
    return bytes ? [[name, bytes] as const] : [];
  });
  const own = SURVEY_FILES.flatMap((name) => {
    const one = written[name as FormFile];
    return one ? [[name, new TextEncoder().encode(one.text)] as const] : [];
  });
  return Object.fromEntries([...own, ...kept]);
}
