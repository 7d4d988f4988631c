/** The rows of the sheet that are printed. */

import type { DesignRow, DesignSheet } from '../contract/index.js';

/** Rows of the year, and of each situation told by months the one with the least in hand, of those allowed too. */
export function shownRows({ rows }: DesignSheet): DesignRow[] {
  const names = [...new Set(rows.map(({ situation }) => situation))];
  return names.flatMap((name) => {
    const of = rows.filter(({ situation }) => situation === name);
    const yearly = of.filter(({ month }) => month === null);
    // The year has the worst of its months.
    if (name === 'drawn-down') return yearly;
    const months = of.filter(({ month }) => month !== null);
    const least = [leastOf(months), leastOf(months.filter(({ allowed }) => allowed))];
    return [...yearly, ...new Set(least.filter((row) => row !== undefined))];
  });
}

function leastOf(rows: DesignRow[]): DesignRow | undefined {
  return rows.reduce<DesignRow | undefined>(
    (least, row) => (least && (least.margin_m ?? Infinity) <= (row.margin_m ?? Infinity) ? least : row),
    undefined,
  );
}
