/** A sheet read by its schema: one description of the columns does for headers, cells and their errors. */

import { type Column, faultOf, SUFFIXES } from './column.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import { didYouMean } from './suggest.js';
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

interface Placed {
  name: string;
  column: Column<unknown>;
  /** position in the row */
  at: number;
  header: string;
  /** of bare numbers below this header */
  unit?: string;
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
  for (const { line, cells } of sheet.rows) {
    const origin: Origin = { file: sheet.file, line };
    const values: Record<string, unknown> = {};
    let complete = true;
    for (const { name, column, at, header, unit } of placed) {
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
        values[name] = column.read(found, unit);
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

function placeColumns(sheet: Sheet, schema: Schema, findings: Findings): Placed[] {
  const { file, header } = sheet;
  const placed: Placed[] = [];
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
    const match = matchHeader(written.toLowerCase(), schema);
    if ('code' in match) {
      findings.refuse({ ...place, found: written, ...match });
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
    placed.push({ ...match, at, header: written });
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

type HeaderFault = { code: string; message: string; expected: string; remedy: string };

function matchHeader(
  written: string,
  schema: Schema,
): Pick<Placed, 'name' | 'column' | 'unit'> | HeaderFault {
  // Longest name first: depth_to_water_m is not a depth in 'to_water_m'.
  const names = Object.keys(schema).sort((a, b) => b.length - a.length);
  for (const name of names) {
    const column = schema[name] as Column<unknown>;
    const suffixes = suffixesOf(column);
    if (!suffixes) {
      if (written === name) return { name, column, unit: column.unit };
      continue;
    }
    const headers = headersOf(name, column);
    const unit = Object.entries(suffixes).find(([suffix]) => written === `${name}_${suffix}`)?.[1];
    if (unit) return { name, column, unit };
    const expected = headers.join(', ');
    if (written === name) {
      return {
        code: 'missing-unit',
        message: `missing unit in '${written}'`,
        expected,
        remedy: `Name it one of: ${expected}.`,
      };
    }
    if (written.startsWith(`${name}_`)) {
      const ending = written.slice(name.length + 1);
      return {
        code: 'unknown-unit',
        message: `unknown unit '${ending}' in '${written}'`,
        expected,
        remedy: didYouMean(written, headers),
      };
    }
  }
  // depth_m, depth_cm, ... are listed as depth_m/cm/mm/ft/in.
  const listed = Object.entries(schema).map(([name, column]) =>
    [name, Object.keys(suffixesOf(column) ?? {}).join('/')].filter(Boolean).join('_'),
  );
  const all = Object.entries(schema).flatMap(([name, column]) => headersOf(name, column));
  return {
    code: 'unknown-column',
    message: `unknown column '${written}'`,
    expected: listed.join(', '),
    remedy: `${didYouMean(written, all, listed)} A remark fits in a note or a line that begins with '#'.`,
  };
}

function suffixesOf(column: Column<unknown>): Record<string, string> | undefined {
  return column.dimension && column.unit === undefined ? SUFFIXES[column.dimension] : undefined;
}

function headersOf(name: string, column: Column<unknown>): string[] {
  return Object.keys(suffixesOf(column) ?? {})
    .map((suffix) => `${name}_${suffix}`)
    .concat(suffixesOf(column) ? [] : name);
}
