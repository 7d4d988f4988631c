/** A survey as an object: the facts of the files by name, with quantities as people write them. */

import { type Dimension, QuantityError, readQuantity } from '../units/index.js';
import { dateText } from './calendar.js';
import type { Column, Style } from './column.js';
import { FACT_COLUMNS, itemName } from './facts.js';
import { openFolder, SURVEY_FILES, type SurveyFile } from './folder.js';
import { HEAD_COLUMNS } from './heads.js';
import { LEVEL_COLUMNS } from './levels.js';
import { PIT_COLUMNS } from './pits.js';
import { POND_ITEMS } from './pondFacts.js';
import { PRICE_COLUMNS } from './prices.js';
import { Findings, type Problem, SurveyError } from './problem.js';
import { parseSurvey } from './read.js';
import type { Sheet } from './sheet.js';
import { SITE_ITEMS } from './siteFacts.js';
import { SOAKAGE_COLUMNS } from './soakage.js';
import type { PondFacts, SiteFacts, Survey } from './survey.js';
import { placeColumns, type Schema, type Values } from './table.js';
import { WATER_COLUMNS } from './water.js';
import { DAY_COLUMNS, MONTH_COLUMNS } from './weather.js';
import { plainWeather } from './weatherSheet.js';

/** Words as they are; numbers with their unit, bare where they have none; months as a list. */
type GivenValue<V> = V extends readonly number[]
  ? readonly number[] | string
  : V extends number
    ? number | string
    : V;
/** Facts of `site.csv` or `pond.csv`. */
type GivenFacts<F> = { [K in keyof F]?: GivenValue<NonNullable<F[K]>> };
type GivenRow<S> = { [K in keyof Values<S>]: GivenValue<Values<S>[K]> };

const COLUMNS = {
  pits: PIT_COLUMNS,
  water: WATER_COLUMNS,
  soakage: SOAKAGE_COLUMNS,
  heads: HEAD_COLUMNS,
  levels: LEVEL_COLUMNS,
  weather: DAY_COLUMNS,
  climate: MONTH_COLUMNS,
  prices: PRICE_COLUMNS,
} as const;
type Table = keyof typeof COLUMNS;
const isTable = (name: string): name is Table => name in COLUMNS;

/** A survey as an object: each file of the contract by its name, facts as properties, rows as a list. */
export type GivenSurvey = { site?: GivenFacts<SiteFacts>; pond: GivenFacts<PondFacts> } & {
  [T in Table]?: readonly GivenRow<(typeof COLUMNS)[T]>[];
};

/**
 * The files of a survey that is given as an object; headers carry no unit, cells their own.
 * @param given facts and rows
 * @returns text by file name, what {@link parseSurvey} takes and a folder holds
 */
export function surveyFiles(given: GivenSurvey): Partial<Record<SurveyFile, string>> {
  const files: Partial<Record<SurveyFile, string>> = {};
  for (const file of SURVEY_FILES) {
    const name = nameOf(file);
    if (isTable(name)) {
      const rows = (given[name] ?? []) as readonly Record<string, unknown>[];
      if (rows.length > 0) files[file] = tableText(rows, COLUMNS[name]);
      continue;
    }
    const facts = Object.entries(given[name] ?? {}).filter(([, value]) => value !== undefined);
    if (facts.length > 0)
      files[file] = rowsText([
        ['item', 'value', 'unit', 'note'],
        ...facts.map(([item, value]) => [item, cellOf(value), '', '']),
      ]);
  }
  return files;
}

/**
 * Reads a survey from an object, by the same reader as a folder and with the same errors, placed by property.
 * @param given such as `{ pond: { depth: '1.2 m', length: '14 ft', width: '3 m' }, pits: [{ pit: 'P1', top: 0, bottom: '1.8 m', texture: 'clay' }] }`
 * @param options `name`: what it is called when `site.name` does not say; `today`: as in {@link parseSurvey}
 * @returns what {@link siteModel} takes
 * @throws SurveyError with every problem, each with its property and a remedy
 * @example
 * ```ts
 * const survey = surveyFrom({
 *   pond: { depth: '3 ft', length: '4 m', width: '3 m' },
 *   pits: [{ pit: 'P1', top: 0, bottom: '1.5 m', texture: 'clay' }],
 * });
 * survey.pond.depth; // 0.9144
 * ```
 */
export function surveyFrom(given: GivenSurvey, options: { name?: string; today?: number } = {}): Survey {
  try {
    return parseSurvey(surveyFiles(given), options);
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
    throw new SurveyError(
      error.problems.map((problem) => placed(problem, given)),
      error.warnings,
    );
  }
}

/**
 * The object of a survey that lies in files; {@link surveyFiles} of it says the same, remarks apart.
 * @param files as {@link parseSurvey} takes them
 * @returns facts and rows, each quantity with its unit
 * @throws SurveyError when the files are refused
 */
export function givenSurvey(files: Readonly<Record<string, string | Uint8Array>>): GivenSurvey {
  parseSurvey(files);
  // Everything there is to tell has been told of already.
  const silent = new Findings();
  const { sheets } = openFolder(files, silent);
  const given: Record<string, unknown> = {};
  for (const file of SURVEY_FILES) {
    const [sheet, name] = [sheets[file], nameOf(file)];
    if (!sheet) continue;
    if (isTable(name)) {
      const plain = file === 'weather.csv' ? plainWeather(sheet, DAY_COLUMNS, silent) : sheet;
      given[name] = rowsOf(plain, COLUMNS[name], givenCell);
      continue;
    }
    const items: Readonly<Record<string, Column<unknown>>> = name === 'pond' ? POND_ITEMS : SITE_ITEMS;
    const facts = rowsOf(sheet, FACT_COLUMNS, (cell) => cell).flatMap(({ item = '', value, unit }) => {
      const column = items[itemName(item)] as Column<unknown>;
      const style = { unit: unit === '-' ? undefined : unit, decimals: sheet.decimals };
      return value === undefined ? [] : [[itemName(item), givenCell(value, column, style)]];
    });
    given[name] = Object.fromEntries(facts);
  }
  return given as GivenSurvey;
}

function nameOf(file: SurveyFile): Table | 'site' | 'pond' {
  return file.replace('.csv', '') as Table | 'site' | 'pond';
}

const cellOf = (value: unknown) => (Array.isArray(value) ? value.join(';') : String(value ?? ''));

/** Columns in the order of the contract; names that are none of it behind them, for the reader to refuse. */
function tableText(rows: readonly Record<string, unknown>[], columns: Schema): string {
  const used = new Set(rows.flatMap((row) => Object.keys(row).filter((name) => row[name] !== undefined)));
  const header = [
    ...Object.keys(columns).filter((name) => used.has(name)),
    ...[...used].filter((name) => !(name in columns)),
  ];
  return rowsText([header, ...rows.map((row) => header.map((name) => cellOf(row[name])))]);
}

/** Rows as the text of a file, cells quoted where they must be. */
export function rowsText(rows: readonly (readonly string[])[]): string {
  const quoted = (cell: string) => (/[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return `${rows.map((cells) => cells.map(quoted).join(',')).join('\n')}\n`;
}

/** The filled cells of a sheet by the names of its columns. */
function rowsOf(
  sheet: Sheet,
  columns: Schema,
  write: (cell: string, column: Column<unknown>, style: Style) => string,
): Record<string, string>[] {
  const placed = placeColumns(sheet, columns, new Findings());
  return sheet.rows.map(({ cells }) =>
    Object.fromEntries(
      placed
        .filter(({ at }) => (cells[at] ?? '') !== '')
        .map(({ name, column, at, style }) => [name, write(cells[at] as string, column, style)]),
    ),
  );
}

/** Units in which a value is written that has lost its own. */
const SI: Record<Dimension, string> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  time: 's',
  speed: 'm/s',
  flow: 'm3/s',
  pressure: 'Pa',
  fraction: 'ratio',
  temperature: 'C',
  angle: 'deg',
  none: '',
};

/** A cell as it means the same by itself: a day by the calendar, a quantity with its unit and a decimal point. */
function givenCell(cell: string, column: Column<unknown>, style: Style): string {
  if (column.study) return dateText(column.read(cell, style) as number);
  const { dimension } = column;
  if (dimension === undefined) return cell;
  const unit = dimension === 'none' ? undefined : (style.unit ?? column.unit);
  const point = style.decimals === undefined || style.decimals === 'point';
  try {
    const { value, units } = readQuantity(cell, dimension, unit ?? SI[dimension], style.decimals);
    if (!point) return [value, SI[dimension]].filter((part) => part !== '').join(' ');
    return units.length > 0 || unit === undefined ? cell : `${cell} ${unit}`;
  } catch (error) {
    // A word in the place of a quantity, such as 'never'.
    if (error instanceof QuantityError) return cell;
    throw error;
  }
}

/** A problem by the property it stands at instead of a file's line. */
function placed(problem: Problem, given: GivenSurvey): Problem {
  const { file, line, column, ...rest } = problem;
  const name = nameOf(file as SurveyFile);
  const at = (line ?? 1) - FIRST_ROW;
  if (isTable(name)) return { ...rest, file: at < 0 ? name : `${name}[${at}]`, column };
  const items = Object.entries(given[name] ?? {}).filter(([, value]) => value !== undefined);
  const item = items[at]?.[0];
  return { ...rest, file: item === undefined ? name : `${name}.${item}` };
}

/** The line of the first row below the header. */
const FIRST_ROW = 2;
