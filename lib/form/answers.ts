/** What has been answered so far: the rows of the survey's files as they were typed, and how they are changed. */
import type { Column } from '../survey/column.js';
import { FACT_COLUMNS, itemName } from '../survey/facts.js';
import { HEAD_COLUMNS } from '../survey/heads.js';
import { LEVEL_COLUMNS } from '../survey/levels.js';
import { PIT_COLUMNS } from '../survey/pits.js';
import { SOAKAGE_COLUMNS } from '../survey/soakage.js';
import { WATER_COLUMNS } from '../survey/water.js';
import { MONTH_COLUMNS } from '../survey/weather.js';
import type { UnitSystem } from '../units/index.js';

/** The files whose rows are asked for, with their columns. */
export const COLUMNS = {
  'site.csv': FACT_COLUMNS,
  'pond.csv': FACT_COLUMNS,
  'pits.csv': PIT_COLUMNS,
  'water.csv': WATER_COLUMNS,
  'soakage.csv': SOAKAGE_COLUMNS,
  'heads.csv': HEAD_COLUMNS,
  'levels.csv': LEVEL_COLUMNS,
  'climate.csv': MONTH_COLUMNS,
} as const;
export type FormFile = keyof typeof COLUMNS;
export type FactFile = 'site.csv' | 'pond.csv';
export type TableFile = Exclude<FormFile, FactFile>;
export const FORM_FILES = Object.keys(COLUMNS) as FormFile[];
/** Columns of a file by name. */
export const columnsOf = (file: FormFile): Readonly<Record<string, Column<unknown>>> => COLUMNS[file];

/** A cell as typed. */
export interface Cell {
  text: string;
  /** of a bare number; absent where the text carries its own, or needs none */
  unit?: string;
}

/** A row of a file. */
export interface FormRow {
  id: number;
  cells: Readonly<Record<string, Cell>>;
  /** made by the form and not written in yet: no part of the survey */
  draft?: true;
  /** of the file as it came */
  line?: number;
}

/** A stop-watch that runs, by the clock, so that a phone may sleep. */
export interface Watch {
  pit: string;
  test: string;
  /** ms since 1970 */
  started: number;
}

/** All that is typed. Never changed in place. */
export interface Answers {
  version: 1;
  rows: Readonly<Record<FormFile, readonly FormRow[]>>;
  /** files as they came, for as long as nothing in them was changed */
  source: Readonly<Partial<Record<FormFile, string>>>;
  /** lines of them that begin with # */
  remarks: Readonly<Partial<Record<FormFile, readonly string[]>>>;
  /** names of files that are kept as they are: photos, weather, whatever else lay in the folder */
  attached: readonly string[];
  watch?: Watch;
  /** heights are typed as measured down from a level string */
  levelsDown?: boolean;
  next: number;
}

/** A form with nothing in it. */
export function noAnswers(): Answers {
  const rows = Object.fromEntries(FORM_FILES.map((file) => [file, []])) as unknown as Answers['rows'];
  return { version: 1, rows, source: {}, remarks: {}, attached: [], next: 1 };
}

/** With other rows in a file, which is then no longer as it came. */
export function withRows(answers: Answers, file: FormFile, rows: readonly FormRow[]): Answers {
  const { [file]: _, ...source } = answers.source;
  return { ...answers, source, rows: { ...answers.rows, [file]: rows } };
}

/** A number that carries no unit, as far as its signs tell. */
export function isBare(text: string): boolean {
  return /\d/.test(text) && !/[a-z'"′″‘’“”°%]/i.test(text);
}

const typed = (text: string, unit: string | undefined): Cell =>
  unit === undefined || (text !== '' && !isBare(text)) ? { text } : { text, unit };

/** The text of a cell. */
export const textOf = (row: FormRow | undefined, name: string): string => row?.cells[name]?.text ?? '';

/**
 * With a cell written.
 * @param unit of a bare number
 */
export function withCell(
  answers: Answers,
  file: FormFile,
  id: number,
  name: string,
  text: string,
  unit?: string,
): Answers {
  return withRows(
    answers,
    file,
    answers.rows[file].map((row) => {
      if (row.id !== id) return row;
      const { draft: _, ...rest } = row;
      return { ...rest, cells: { ...row.cells, [name]: typed(text, unit) } };
    }),
  );
}

/** With a row added behind another, or at the end; a draft counts once something is written in it. */
export function withRow(
  answers: Answers,
  file: FormFile,
  cells: Readonly<Record<string, Cell>>,
  { draft = true, behind }: { draft?: boolean; behind?: number } = {},
): Answers {
  const row: FormRow = { id: answers.next, cells, ...(draft ? { draft: true } : {}) };
  const rows = [...answers.rows[file]];
  const at = rows.findIndex(({ id }) => id === behind);
  rows.splice(at < 0 ? rows.length : at + 1, 0, row);
  return { ...withRows(answers, file, rows), next: answers.next + 1 };
}

/** Without some rows of a file. */
export function withoutRows(answers: Answers, file: FormFile, gone: (row: FormRow) => boolean): Answers {
  return withRows(
    answers,
    file,
    answers.rows[file].filter((row) => !gone(row)),
  );
}

/** The row of a fact. */
export function factRow(answers: Answers, file: FactFile, item: string): FormRow | undefined {
  return answers.rows[file].find((row) => itemName(textOf(row, 'item')) === item);
}

/** With a fact said; an empty value takes it back, with its note. */
export function withFact(
  answers: Answers,
  file: FactFile,
  item: string,
  value: string,
  unit?: string,
): Answers {
  const row = factRow(answers, file, item);
  const cells: FormRow['cells'] = {
    value: { text: value },
    unit: { text: isBare(value) || value === '' ? (unit ?? '') : '' },
  };
  if (row === undefined) return withRow(answers, file, { item: { text: item }, ...cells }, { draft: false });
  const note: FormRow['cells'] = value === '' ? {} : { note: row.cells.note ?? { text: '' } };
  const { draft: _, ...rest } = row;
  return withRows(
    answers,
    file,
    answers.rows[file].map((one) =>
      one.id === row.id ? { ...rest, cells: { item: row.cells.item!, ...cells, ...note } } : one,
    ),
  );
}

/** The units asked in: those in which the answer is told. */
export function unitsOf(answers: Answers): UnitSystem {
  const said = textOf(factRow(answers, 'site.csv', 'show_units'), 'value')
    .trim()
    .toLowerCase();
  return said === 'us' || said === 'feet' || said === 'us customary' ? 'us' : 'metric';
}

const GUESS = /^guess\b[;:,.]?\s*/i;

/** Does a note say that what it stands beside is a guess? */
export const isGuess = (note: string): boolean => GUESS.test(note);

/** A note that says so, or no longer. */
export function guessNote(note: string, guess: boolean): string {
  const rest = note.replace(GUESS, '');
  if (!guess) return rest;
  return rest === '' ? 'guess' : `guess; ${rest}`;
}
