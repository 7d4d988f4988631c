/** Daily weather as a service gives it out: other columns, days in three columns, gaps by code, traces. */

import { headersOf, matchHeader } from './header.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import { suggest } from './suggest.js';
import type { Schema } from './table.js';

/** Rows of nines below nought, and words for nothing measured: no rain or temperature is any of them. */
const GAP = /^(-9{2,5}([.,]\d+)?|n\/?a|nan|null|missing|m|-{1,3})$/i;
const TRACE = /^(t|tr|trace)$/i;
/** Behind the unit of a sum of a day. */
const A_DAY = /\s*(\/|per )\s*(d|day)\b/i;

/**
 * The sheet with the columns of the contract: what is none of them is told and left out, unless it is nearly one.
 * @param schema of weather.csv
 */
export function plainWeather(sheet: Sheet, schema: Schema, findings: Findings): Sheet {
  const dated = withDate(sheet);
  const { file, header } = dated;
  const cells = header.cells.map((name) => name.replace(A_DAY, ''));
  const known = Object.entries(schema).flatMap(([name, column]) => headersOf(name, column));
  const match = (name: string) => matchHeader(name, schema);
  const keep = cells.map((name) => {
    const found = match(name);
    return (
      name !== '' &&
      (!('code' in found) || found.code !== 'unknown-column' || suggest(name, known) !== undefined)
    );
  });
  const unused = cells.filter((name, at) => !keep[at] && name !== '');
  if (unused.length > 0)
    findings.warn({
      file,
      line: header.line,
      code: 'unused-column',
      message: `columns that are not used: ${unused.join(', ')}`,
    });
  const names = cells.map((name) => {
    const found = match(name);
    return 'code' in found ? undefined : found.name;
  });
  const gaps = new Map<string, number>();
  let traces = 0;
  const plain = (cell: string, at: number) => {
    if (names[at] === undefined || names[at] === 'date') return cell;
    if (names[at] === 'rain' && TRACE.test(cell)) {
      traces++;
      return '0';
    }
    if (!GAP.test(cell)) return cell;
    gaps.set(cell, (gaps.get(cell) ?? 0) + 1);
    return '';
  };
  const kept = (all: string[]) => all.filter((_, at) => keep[at] ?? true);
  const rows = dated.rows.map((row) => ({ ...row, cells: kept(row.cells.map(plain)) }));
  for (const [code, count] of gaps)
    findings.warn({ file, code: 'read-as', message: `'${code}' is read as missing, in ${count} cells` });
  if (traces > 0)
    findings.warn({ file, code: 'read-as', message: `a trace of rain is read as none, in ${traces} cells` });
  return { ...dated, header: { ...header, cells: kept(cells) }, rows };
}

/** Year, month and day in columns of their own put together. */
function withDate(sheet: Sheet): Sheet {
  const cells = sheet.header.cells.map((name) => name.toLowerCase());
  const [year, month, day] = ['year', 'month', 'day'].map((name) => cells.indexOf(name));
  if (cells.includes('date') || year === undefined || month === undefined || day === undefined) return sheet;
  if (Math.min(year, month, day) < 0) return sheet;
  const parts = new Set([year, month, day]);
  const rest = (all: string[]) => all.filter((_, at) => !parts.has(at));
  const two = (text = '') => text.padStart(2, '0');
  return {
    ...sheet,
    header: { ...sheet.header, cells: ['date', ...rest(sheet.header.cells)] },
    rows: sheet.rows.map(({ line, cells: row }) => ({
      line,
      cells: [`${row[year]}-${two(row[month])}-${two(row[day])}`, ...rest(row)],
    })),
  };
}
