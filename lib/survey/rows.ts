/** Checks that hold between the rows of one table. */

import type { Findings } from './problem.js';
import type { Row } from './table.js';

/**
 * Leaves out rows that repeat an earlier one (with a warning) and refuses those that contradict one.
 * @param key what a row speaks of
 * @param says what it says of it, compared as JSON
 * @param column the column at which a contradiction is shown
 */
export function distinct<V>(
  rows: Row<V>[],
  key: (values: V) => string,
  says: (values: V) => unknown,
  column: keyof V & string,
  findings: Findings,
): Row<V>[] {
  const first = new Map<string, Row<V>>();
  return rows.filter((row) => {
    const earlier = first.get(key(row.values));
    if (!earlier) {
      first.set(key(row.values), row);
      return true;
    }
    const line = earlier.origin.line;
    if (JSON.stringify(says(earlier.values)) === JSON.stringify(says(row.values))) {
      findings.warn({
        ...row.origin,
        code: 'duplicate-row',
        message: `the row repeats line ${line}, so it counts once`,
      });
      return false;
    }
    const place = row.cell(column);
    const message = `invalid '${place.found ?? ''}' - line ${line} says something else of the same ${key(row.values)}`;
    findings.refuse({ ...place, code: 'contradiction', message, remedy: 'Keep the row that is right.' });
    return false;
  });
}

/**
 * Sorts rows, with one warning where rows of the same group were not in order.
 * @param group rows of different groups may be mixed
 * @param order ascending
 */
export function sorted<V>(
  rows: Row<V>[],
  group: (values: V) => string,
  order: (values: V) => number,
  findings: Findings,
): Row<V>[] {
  const last = new Map<string, number>();
  let late: Row<V> | undefined;
  for (const row of rows) {
    const [key, value] = [group(row.values), order(row.values)];
    if (value < (last.get(key) ?? Number.NEGATIVE_INFINITY)) late ??= row;
    last.set(key, value);
  }
  if (late) {
    findings.warn({
      ...late.origin,
      code: 'out-of-order',
      message: 'rows are not in order from here on; they were sorted',
    });
  }
  return [...rows].sort((a, b) => order(a.values) - order(b.values));
}

/** Things that share a key, in their order; keys in that of their first. */
export function groupBy<T>(all: Iterable<T>, key: (one: T) => string): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const one of all) {
    const name = key(one);
    const group = found.get(name);
    if (group) group.push(one);
    else found.set(name, [one]);
  }
  return found;
}

/** Names as people order them: P2 before P10. */
export const byName = new Intl.Collator('en', { numeric: true }).compare;
