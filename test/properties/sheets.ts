/** Survey files as rows of cells, and a change of some of them. */
import { parse } from 'csv-parse/browser/esm/sync';
import { type Dice, type Sheet, textOf } from '../survey/generated.js';

export type Files = Record<string, string>;

export function sheetOf(text: string): Sheet {
  const [header = [], ...rows] = parse(text, { skip_empty_lines: true }) as string[][];
  return { header, rows };
}

/** The files with one sheet changed; as they are where it is absent. */
export function changed(files: Files, name: string, change: (sheet: Sheet) => Sheet): Files {
  const text = files[name];
  return text === undefined ? files : { ...files, [name]: textOf(change(sheetOf(text))) };
}

/** Every cell of the columns that a pattern names, empty ones aside. */
export function eachCell(
  files: Files,
  name: string,
  columns: RegExp,
  change: (cell: string, row: string[], column: string) => string,
): Files {
  return changed(files, name, ({ header, rows }) => ({
    header,
    rows: rows.map((row) =>
      row.map((cell, at) =>
        columns.test(header[at] ?? '') && cell !== '' ? change(cell, row, header[at]!) : cell,
      ),
    ),
  }));
}

/** The value and unit cells of items of site.csv or pond.csv. */
export function eachItem(
  files: Files,
  name: 'site.csv' | 'pond.csv',
  items: RegExp,
  change: (value: string, unit: string, item: string) => [value: string, unit: string],
): Files {
  return changed(files, name, ({ header, rows }) => ({
    header,
    rows: rows.map((row) => {
      const [item = '', value = '', unit = '', ...rest] = row;
      return items.test(item) ? [item, ...change(value, unit, item), ...rest] : row;
    }),
  }));
}

/** The files with rows added at the end of one, by column without its unit. */
export function withRows(files: Files, name: string, added: Record<string, string>[], first = false): Files {
  return changed(files, name, ({ header, rows }) => {
    const cells = added.map((row) => header.map((column) => row[column.replace(/_(m|ft|cm|in)$/, '')] ?? ''));
    return { header, rows: first ? [...cells, ...rows] : [...rows, ...cells] };
  });
}

export function shuffled<T>(rows: readonly T[], dice: Dice): T[] {
  return rows
    .map((row) => ({ row, key: dice.uniform() }))
    .sort((a, b) => a.key - b.key)
    .map(({ row }) => row);
}

const METRES: Record<string, number> = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254 };

/** Metres of a plain number, or of '3 ft 2 in', in a column or beside a unit. */
export function metresOf(cell: string, unit: string): number {
  if (/^-?[\d.]+$/.test(cell.trim())) return Number(cell) * METRES[unit]!;
  const sign = cell.trim().startsWith('-') ? -1 : 1;
  const parts = [...cell.matchAll(/([\d.]+)\s*(mm|cm|m|ft|in)\b/g)];
  if (parts.length === 0) throw new Error(`no length in '${cell}'`);
  return sign * parts.reduce((sum, [, amount, of]) => sum + Number(amount) * METRES[of!]!, 0);
}

/** The unit that a header ends in. */
export const unitOf = (column: string): string => /_(m|cm|mm|ft|in)$/.exec(column)?.[1] ?? 'm';

/** A length of a cell moved by metres, in the cell's own unit. */
export const movedBy = (cell: string, unit: string, metres: number): string =>
  String((metresOf(cell, unit) + metres) / METRES[unit]!);
