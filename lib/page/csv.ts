/** CSV that a spreadsheet reads as it was meant, whichever separator it was told. */
import { visible } from '../figures/visible.js';

/**
 * Where a spreadsheet would run what follows as a formula: at the beginning of a cell, and after a semicolon within
 * one, which begins a cell to who splits there. A plain number is none.
 */
const FORMULA = /(^\s*|;\s*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])(?!-*[\d.]+(?:;|$))/g;

/** A cell by RFC 4180, quoted where it holds a separator of either kind; a formula gets an apostrophe before it. */
function csvCell(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = visible(value).replace(FORMULA, "$1'");
  return /[",;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows ended by CR LF (RFC 4180). */
export function csvText(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}
