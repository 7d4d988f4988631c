/** A sheet read by its schema: one description of the columns does for headers, cells and their errors. */

import { readQuantity } from '../units/index.js';
import { type Column, faultOf, isNothing, type Style } from './column.js';
import { type HeaderFault, headersOf, matchHeader } from './header.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import type { Origin } from './survey.js';

export type Schema = Record<string, Column<unknown>>;
type ValueOf<C> = C extends Column<infer T> ? T : never;
type RequiredKey<S> = { [K in keyof S]: S[K] extends { required: true } ? K : never }[keyof S];

/** The values of a row: required columns always, the others where the cell was filled. */
export type Values<S> = { [K in RequiredKey<S>]: ValueOf<S[K]> } & {
  [K in Exclude<keyof S, RequiredKey<S>>]?: ValueOf<S[K]>;
};

export interface Row<V> {
  values: V;
  origin: Origin;
  /** Where a cell of this row stood, by the header as written, and what it held. */
  cell(name: keyof V & string): Origin & { found?: string };
}

/** A column where it stands in a sheet. */
interface Placed {
  name: string;
  column: Column<unknown>;
  /** position in the row */
  at: number;
  header: string;
  style: Style;
}

/**
 * Reads every row of a sheet.
 * @param sheet undefined when the file is absent or was refused as a whole
 * @param schema its columns by name without unit suffix
 * @param findings receives every fault; a row with a fault in a required cell is left out
 */
export function readTable<S extends Schema>(
  sheet: Sheet | undefined,
  schema: S,
  findings: Findings,
): Row<Values<S>>[] {
  if (!sheet) return [];
  const placed = placeColumns(sheet, schema, findings);
  const rows: Row<Values<S>>[] = [];
  const told = new Set<string>();
  for (const { line, cells } of sheet.rows) {
    const origin: Origin = { file: sheet.file, line };
    if (placed.some(({ column, at }) => at >= cells.length && !column.mayBeCut)) {
      findings.refuse({ ...origin, ...tooShort(cells.length, sheet.header.cells.length) });
      continue;
    }
    const values: Record<string, unknown> = {};
    let complete = true;
    for (const { name, column, at, header, style } of placed) {
      const found = cells[at] ?? '';
      const place = { ...origin, column: header };
      if (found === '') {
        if (!column.required) continue;
        complete = false;
        const message = 'missing value - this cell may not be empty';
        findings.refuse({
          ...place,
          code: 'missing-value',
          message,
          found,
          remedy: 'Fill it in, or take the row out.',
        });
        continue;
      }
      try {
        values[name] = column.read(found, style);
        const taken = column.taken?.(found);
        if (taken !== undefined && !told.has(`${name} ${found}`)) {
          told.add(`${name} ${found}`);
          findings.warn({ ...place, code: 'read-as', message: `'${found}' is read as ${taken}` });
        }
        const odd = column.odd?.(values[name]);
        if (odd) findings.warn({ ...place, code: 'odd-value', message: `'${found}' is ${odd}` });
      } catch (error) {
        if (column.required) complete = false;
        findings.refuse({ ...place, found, ...faultOf(error) });
      }
    }
    const present = Object.keys(schema).every(
      (name) => !schema[name]?.required || placed.some((one) => one.name === name),
    );
    if (!complete || !present) continue;
    const cell = (name: string) => {
      const column = placed.find((one) => one.name === name);
      return { ...origin, column: column?.header ?? name, found: column && cells[column.at] };
    };
    rows.push({ values: values as Values<S>, origin, cell });
  }
  return rows;
}

/** A header without a unit is complete where cells carry their own; those that do not are refused by themselves. */
function unitsInCells(
  { of }: HeaderFault,
  sheet: Sheet,
  at: number,
): Pick<Placed, 'name' | 'column'> | undefined {
  const dimension = of?.column.dimension;
  if (!of || !dimension) return undefined;
  const carriesUnit = (cell: string) => {
    try {
      return readQuantity(cell, dimension, undefined, sheet.decimals).units.length > 0;
    } catch {
      return false;
    }
  };
  const filled = sheet.rows.map(({ cells }) => cells[at] ?? '').filter(Boolean);
  const complete =
    filled.some(carriesUnit) || (filled.length > 0 && filled.every((cell) => isNothing(cell, dimension)));
  return complete ? of : undefined;
}

function tooShort(found: number, expected: number) {
  return {
    code: 'ragged-row',
    message: `invalid row - ${found} cells where the header has ${expected}`,
    found: String(found),
    expected: `${expected} cells`,
    remedy: 'Add the missing commas, also for cells left empty.',
  };
}

/** The columns of a sheet in their places, each with how its cells are written; every fault of the header is told. */
export function placeColumns(sheet: Sheet, schema: Schema, findings: Findings): Placed[] {
  const { file, header } = sheet;
  const placed: Placed[] = [];
  const styleOf = (
    { column, unit }: { column: Column<unknown>; unit?: string },
    at: number,
    place: Origin,
  ): Style => {
    const cells = column.study ? sheet.rows.map((row) => row.cells[at] ?? '').filter(Boolean) : [];
    const studied = column.study?.(cells);
    if (studied?.told) findings.warn({ ...place, code: 'read-as', message: studied.told });
    return { unit, decimals: sheet.decimals, ...studied?.style };
  };
  header.cells.forEach((written, at) => {
    const place = { file, line: header.line, column: written };
    if (written === '') {
      const used = sheet.rows.find((row) => row.cells[at] !== '');
      if (!used) return;
      const message = `missing name of column ${at + 1}, which holds '${used.cells[at]}' in line ${used.line}`;
      findings.refuse({
        ...place,
        code: 'missing-column',
        message,
        remedy: 'Name the column in the header, or empty it.',
      });
      return;
    }
    const found = matchHeader(written, schema);
    const match = 'code' in found ? unitsInCells(found, sheet, at) : found;
    if (!match) {
      const { of: _of, ...fault } = found as HeaderFault;
      findings.refuse({ ...place, found: written, ...fault });
      return;
    }
    const twin = placed.find((one) => one.name === match.name);
    if (twin) {
      const message = `invalid '${written}' - '${twin.header}' already gives ${match.name}`;
      findings.refuse({
        ...place,
        code: 'duplicate-column',
        message,
        found: written,
        remedy: 'Keep one of the two columns.',
      });
      return;
    }
    placed.push({
      name: match.name,
      column: match.column,
      at,
      header: written,
      style: styleOf(match, at, place),
    });
  });
  for (const [name, column] of Object.entries(schema)) {
    if (!column.required || placed.some((one) => one.name === name)) continue;
    const [expected = name] = headersOf(name, column);
    // A column refused for its unit has been told of already.
    const refused = header.cells.filter((cell) => placed.every((one) => one.header !== cell));
    if (refused.some((cell) => cell.toLowerCase().startsWith(name))) continue;
    const message = `missing column '${expected}'`;
    findings.refuse({
      file,
      line: header.line,
      column: expected,
      code: 'missing-column',
      message,
      expected,
      remedy: 'Add it to the header and fill it in.',
    });
  }
  return placed;
}
