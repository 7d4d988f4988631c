/** heads.csv: water levels already known. */

import { month } from './calendar.js';
import { type Column, quantity, remark, required, wordOr } from './column.js';
import type { Findings } from './problem.js';
import { byName, distinct, sorted } from './rows.js';
import type { Sheet } from './sheet.js';
import type { HeadRow } from './survey.js';
import { readTable } from './table.js';

/** The columns of heads.csv. */
export const HEAD_COLUMNS = {
  place: required(place()),
  month: required(wordOr('high', month())),
  depth: required(quantity('length', { min: -10, max: 30, oddBelow: -3, oddAbove: 15 })),
  spread: quantity('length', { min: 0, max: 5, oddAbove: 1 }),
  source: remark(),
};

/** `site`, `uphill` and `below:` in any case; what else is written is the name of a pit. */
function place(): Column<string> {
  return {
    read: (cell) => cell.replace(/^(site|uphill)$|^below:\s*/i, (known) => known.trim().toLowerCase()),
  };
}

/** Reads heads.csv: one level for a place and month, by place, months in order with `high` last. */
export function readHeads(sheet: Sheet | undefined, findings: Findings): HeadRow[] {
  const once = distinct(
    readTable(sheet, HEAD_COLUMNS, findings),
    ({ place, month }) => `place and month (${place}, ${month})`,
    ({ depth, spread }) => ({ depth, spread }),
    'depth',
    findings,
  );
  const kind = (month: number | 'high') => (month === 'high' ? 'high' : 'month');
  const rows = sorted(
    once,
    (head) => `${head.place} ${kind(head.month)}`,
    (head) => (head.month === 'high' ? 13 : head.month),
    findings,
  );
  return rows.map((row) => ({ ...row.values, origin: row.origin })).sort((a, b) => byName(a.place, b.place));
}
