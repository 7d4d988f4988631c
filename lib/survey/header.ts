/** Names of columns as people write them: `depth_m`, `Depth (m)`, `depth in feet` are one. */

import { findUnit } from '../units/index.js';
import { type Column, SUFFIXES } from './column.js';
import { didYouMean } from './suggest.js';

type Schema = Readonly<Record<string, Column<unknown>>>;
export type HeaderFault = {
  code: string;
  message: string;
  expected: string;
  remedy: string;
  /** the column whose unit is missing */
  of?: Placed;
};
interface Placed {
  name: string;
  column: Column<unknown>;
  /** of bare numbers below this header */
  unit?: string;
}

/**
 * The column that a header names.
 * @param written as it stands in the file
 * @returns the column and the unit of bare numbers below it, or why there is none
 */
export function matchHeader(written: string, schema: Schema): Placed | HeaderFault {
  const header = plainHeader(written);
  // Longest name first: depth_to_water_m is not a depth in 'to_water_m'.
  const names = Object.entries(schema)
    .flatMap(([name, column]) => [name, ...(column.also ?? [])].map((said) => ({ said, name, column })))
    .sort((a, b) => b.said.length - a.said.length);
  for (const { said, name, column } of names) {
    if (!suffixesOf(column)) {
      if (header === said) return { name, column, unit: column.unit };
      continue;
    }
    const unit = unitIn(header, said, column);
    if (unit !== undefined) return { name, column, unit };
    const headers = headersOf(name, column);
    const expected = headers.join(', ');
    if (header === said) {
      return {
        code: 'missing-unit',
        message: `missing unit in '${written}'`,
        expected,
        remedy: `Name it one of: ${expected}; or write the unit into every cell.`,
        of: { name, column },
      };
    }
    if (header.startsWith(`${said}_`)) {
      const ending = header.slice(said.length + 1);
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
    remedy: `${didYouMean(header, all, listed)} A remark fits in a note or a line that begins with '#'.`,
  };
}

/** Lower case, one underscore for whatever parts words and units: `Top (ft)`, `top, ft` and `TOP_FT`. */
function plainHeader(written: string): string {
  return written
    .toLowerCase()
    .replace(/\s+in\s+(?=[a-z])/g, '_')
    .replace(/%/g, 'pct')
    .replace(/[°º]\s*(?=[cf]\b)/g, '')
    .replace(/[\s,([{)\]}_-]+/g, '_')
    .replace(/^_+|[_:]+$/g, '');
}

/** The unit behind a name, as a suffix of the contract or as people write it. */
function unitIn(header: string, name: string, column: Column<unknown>): string | undefined {
  const { dimension } = column;
  if (dimension === undefined || !header.startsWith(`${name}_`)) return undefined;
  const ending = header.slice(name.length + 1);
  const known = SUFFIXES[dimension]?.[ending];
  if (known !== undefined) return known;
  return [ending, ending.replaceAll('_', ' ')].find((unit) => findUnit(unit, dimension) !== undefined);
}

function suffixesOf(column: Column<unknown>): Record<string, string> | undefined {
  return column.dimension && column.unit === undefined ? SUFFIXES[column.dimension] : undefined;
}

/** A column's names in the contract, one for each unit. */
export function headersOf(name: string, column: Column<unknown>): string[] {
  return Object.keys(suffixesOf(column) ?? {})
    .map((suffix) => `${name}_${suffix}`)
    .concat(suffixesOf(column) ? [] : name);
}
