/** What the reader of surveys found, at the field it belongs to and in the form's words. */
import { itemName } from '../survey/facts.js';
import { matchHeader } from '../survey/header.js';
import type { Problem, Warning } from '../survey/index.js';
import { type Answers, columnsOf, FORM_FILES, type FormFile, textOf } from './answers.js';
import { writtenFiles } from './folder.js';

/** Something said at a field. */
export interface Remark {
  /** `wrong` keeps the answer back, so does `open`, which only waits to be filled in; `noticed` is worth a look */
  kind: 'wrong' | 'open' | 'noticed';
  text: string;
}

/** Remarks by the key of their field. */
export type Remarks = ReadonlyMap<string, readonly Remark[]>;

/** Key of a fact's field. */
export const factKey = (file: FormFile, item: string) => `${file} ${item}`;
/** Key of a cell, or of a whole row. */
export const cellKey = (file: FormFile, id: number, name = '') => `${file} ${id} ${name}`.trim();
/** Key of a whole file, or of what has no field. */
export const fileKey = (file: string) => file;

/** Codes of what is only not filled in yet. */
const OPEN = [
  'missing-value',
  'missing-item',
  'missing-file',
  'missing-month',
  'missing-column',
  'empty-file',
];
/** Noticed by the reader, and no news to somebody who fills in a form. */
const SILENT = ['empty-item', 'missing-latitude', 'out-of-order'];

/** Names of files as the form calls its steps. */
const STEP_NAMES: Readonly<Record<string, string>> = {
  'site.csv': 'the place',
  'pond.csv': 'the pond',
  'pits.csv': 'the holes',
  'water.csv': 'looks at water',
  'soakage.csv': 'tests with a watch',
  'heads.csv': 'water already known',
  'levels.csv': 'levels',
  'climate.csv': 'the ordinary year',
  'weather.csv': 'daily weather',
};

/**
 * Remarks by field.
 * @param label what the form calls an item or column
 */
export function remarksOf(
  answers: Answers,
  problems: readonly Problem[],
  warnings: readonly Warning[],
  label: (file: FormFile, name: string) => string | undefined,
): Remarks {
  const written = writtenFiles(answers);
  const all = new Map<string, Remark[]>();
  const add = (key: string, remark: Remark) => {
    const here = all.get(key) ?? [];
    if (!here.some(({ text }) => text === remark.text)) all.set(key, [...here, remark]);
  };
  const rowAt = (file: FormFile, line: number) => {
    const [id] = [...(written[file]?.lines ?? [])].find(([, at]) => at === line) ?? [];
    return answers.rows[file].find((row) => row.id === id);
  };
  const keyOf = (file: string, line?: number, column?: string, item?: string) => {
    const own = FORM_FILES.find((one) => one === file);
    if (!own) return fileKey(file);
    if (item !== undefined) return factKey(own, item);
    const row = line === undefined ? undefined : rowAt(own, line);
    if (!row) return fileKey(own);
    if (own === 'site.csv' || own === 'pond.csv') return factKey(own, itemName(textOf(row, 'item')));
    return cellKey(own, row.id, column === undefined ? '' : columnName(own, column));
  };
  const words = (text: string, file: string) => plainWords(text, file, rowNumber, label);
  const rowNumber = (file: string, line: number) => {
    const own = FORM_FILES.find((one) => one === file);
    const row = own && rowAt(own, line);
    return own && row ? answers.rows[own].indexOf(row) + 1 : undefined;
  };
  for (const { file, line, column, code, message, expected, remedy } of problems) {
    const open = OPEN.includes(code);
    const item = code === 'missing-item' ? expected : undefined;
    const told =
      expected === undefined ||
      expected.length > 60 ||
      message.includes(expected) ||
      remedy.includes(expected);
    const text = open
      ? (OPEN_WORDS[code] ?? 'Still to fill in.')
      : words(`${capital(message)}. ${told ? '' : `Possible: ${expected}. `}${remedy}`, file);
    add(keyOf(file, line, column, item), { kind: open ? 'open' : 'wrong', text });
  }
  for (const { file, line, column, code, message } of warnings)
    if (!SILENT.includes(code))
      add(keyOf(file, line, column), { kind: 'noticed', text: `${words(capital(message), file)}.` });
  return all;
}

const OPEN_WORDS: Readonly<Record<string, string>> = {
  'missing-item': 'Needed before there can be an answer.',
  'missing-value': 'Still to fill in.',
  'missing-month': 'All twelve months are needed, or none.',
};

function columnName(file: FormFile, column: string): string {
  const found = matchHeader(column, columnsOf(file));
  return 'code' in found ? (found.of?.name ?? column) : found.name;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A sentence about files, lines and columns as one about steps, rows and questions. */
function plainWords(
  text: string,
  file: string,
  rowNumber: (file: string, line: number) => number | undefined,
  label: (file: FormFile, name: string) => string | undefined,
): string {
  const own = FORM_FILES.find((one) => one === file);
  return text
    .replace(/\b([a-z]+\.csv)\b/g, (name) => (STEP_NAMES[name] ? `“${STEP_NAMES[name]}”` : name))
    .replace(/\bline (\d+)\b/g, (said, line: string) => {
      const row = rowNumber(file, Number(line));
      return row === undefined ? said : `row ${row}`;
    })
    .replace(/\b[a-z]+(?:_[a-z]+)+\b/g, (name) => {
      const words = (own && label(own, name)) ?? label('pond.csv', name) ?? label('site.csv', name);
      return words === undefined ? name.replaceAll('_', ' ') : `“${words}”`;
    });
}
