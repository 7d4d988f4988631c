/** prices.csv: what a unit of something costs. */

import { quantity, required, text } from './column.js';
import type { Findings } from './problem.js';
import { distinct } from './rows.js';
import type { Sheet } from './sheet.js';
import type { PriceRow } from './survey.js';
import { readTable } from './table.js';

/** The columns of prices.csv. */
export const PRICE_COLUMNS = {
  item: required(text()),
  unit: required(text()),
  price: required(quantity('none', { min: 0, max: 1e7 })),
};

/** Reads prices.csv, one price for an item and unit, in a currency of the survey's own. */
export function readPrices(sheet: Sheet | undefined, findings: Findings): PriceRow[] {
  const once = distinct(
    readTable(sheet, PRICE_COLUMNS, findings),
    ({ item, unit }) => `item and unit (${item}, ${unit})`,
    ({ price }) => price,
    'price',
    findings,
  );
  return once.map((row) => ({ ...row.values, origin: row.origin }));
}
