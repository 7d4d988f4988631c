/** Files of one fact a row, `item,value,unit,note`: site.csv and pond.csv. */

import { type DecimalSign, findUnit, QuantityError, readQuantity } from '../units/index.js';
import { CellFault, type Column, faultOf, remark, required, text } from './column.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import { didYouMean } from './suggest.js';
import type { Origin } from './survey.js';
import { type Row, readTable, type Values } from './table.js';

/** The columns of a facts file. */
export const FACT_COLUMNS = {
  item: required(text()),
  value: text(),
  unit: remark(),
  note: remark('notes', 'remark', 'remarks', 'comment'),
};
type FactRow = Row<Values<typeof FACT_COLUMNS>>;

/** The readers of a facts file by item; `F` is the interface of what it yields. */
export type Items<F> = { [K in keyof F]-?: Column<NonNullable<F[K]>> };

export interface Facts<F> {
  facts: F;
  /** the value cell of each item */
  origins: Partial<Record<keyof F, Origin>>;
  /** where an item stood, for the problem of a later check */
  cell(item: keyof F): (Origin & { found?: string }) | undefined;
}

/**
 * Reads a facts file. An item left without a value is told and taken as not said.
 * @param sheet undefined when the file is absent or was refused as a whole
 * @param items its schema
 * @param findings receives every fault
 */
export function readFacts<F extends object>(
  sheet: Sheet | undefined,
  items: Items<F>,
  findings: Findings,
): Facts<F> {
  const names = Object.keys(items) as (keyof F & string)[];
  const facts: Partial<F> = {};
  const said = new Map<keyof F, FactRow>();
  const empty = new Map<keyof F, FactRow>();
  for (const row of readTable(sheet, FACT_COLUMNS, findings)) {
    const item = names.find((name) => name === itemName(row.values.item));
    if (item === undefined) {
      const found = row.values.item;
      const remedy = didYouMean(found, names);
      findings.refuse({
        ...row.cell('item'),
        code: 'unknown-item',
        message: `unknown item '${found}'`,
        found,
        expected: names.join(', '),
        remedy,
      });
      continue;
    }
    if (row.values.value === undefined) {
      empty.set(item, row);
      findings.warn({
        ...row.origin,
        column: 'value',
        code: 'empty-item',
        message: `'${item}' has no value, so the survey does not say it`,
      });
      continue;
    }
    const value = readValue(row, items[item], sheet?.decimals, findings);
    if (value === undefined) continue;
    const earlier = said.get(item);
    if (!earlier) {
      facts[item] = value;
      said.set(item, row);
    } else if (JSON.stringify(facts[item]) === JSON.stringify(value)) {
      findings.warn({
        ...row.origin,
        code: 'duplicate-row',
        message: `'${item}' already stands in line ${earlier.origin.line}`,
      });
    } else {
      findings.refuse({
        ...row.cell('value'),
        code: 'contradiction',
        message: `invalid '${row.values.value}' - line ${earlier.origin.line} says ${item} is '${earlier.values.value}'`,
        remedy: 'Keep the row that is right.',
      });
    }
  }
  const origins = Object.fromEntries(
    [...said].map(([item, row]) => [item, { ...row.origin, column: 'value' }]),
  );
  return {
    facts: facts as F,
    origins: origins as Facts<F>['origins'],
    cell: (item) => (said.get(item) ?? empty.get(item))?.cell('value'),
  };
}

/** An item as people write it: in capitals, with spaces or hyphens. */
export function itemName(written: string): string {
  return written.toLowerCase().replace(/[\s-]+/g, '_');
}

function readValue<T>(
  row: FactRow,
  column: Column<T>,
  decimals: DecimalSign | undefined,
  findings: Findings,
): T | undefined {
  const { unitWords } = column;
  // '1 years' and '1' with 'years' beside it are one.
  const found = unitWords
    ? (row.values.value as string).replace(new RegExp(`(\\d)\\s*(?:${unitWords.join('|')})$`, 'i'), '$1')
    : (row.values.value as string);
  const given = row.values.unit === '-' ? undefined : row.values.unit;
  let apart: string | undefined;
  try {
    apart = unitApart(found, given, column);
  } catch (error) {
    const { found: _value, ...place } = row.cell('unit');
    findings.refuse({ ...place, found: given ?? '', ...faultOf(error) });
    return undefined;
  }
  try {
    const plainUnit = given !== undefined && unitWords?.includes(given.toLowerCase());
    const unit = (plainUnit ? undefined : given) ?? column.unit;
    const value = column.read(found, { unit, decimals });
    const taken = column.taken?.(found) ?? apart;
    if (taken !== undefined) {
      const message = `${row.values.item} '${found}' is read as ${taken}`;
      findings.warn({ ...row.origin, column: 'value', code: 'read-as', message });
    }
    const odd = column.odd?.(value);
    if (odd) {
      const message = `${row.values.item} '${found}' is ${odd}`;
      findings.warn({ ...row.origin, column: 'value', code: 'odd-value', message });
    }
    return value;
  } catch (error) {
    findings.refuse({ ...row.cell('value'), ...faultOf(error) });
    return undefined;
  }
}

/** A unit cell has to fit the item. A unit written with the value goes before it, as what is then told says. */
function unitApart(value: string, unit: string | undefined, column: Column<unknown>): string | undefined {
  if (unit === undefined || column.unitWords?.includes(unit.toLowerCase())) return undefined;
  const { dimension } = column;
  if (dimension === undefined || dimension === 'none') {
    throw new CellFault(
      'unknown-unit',
      `unknown '${unit}' - this item takes no unit`,
      'an empty cell',
      'Empty the unit cell.',
    );
  }
  const cell = findUnit(unit, dimension);
  if (!cell && /^\d+$/.test(unit)) {
    // A comma that meant decimals has cut the value in two.
    throw new CellFault(
      'unknown-unit',
      `unknown unit '${unit}' - the number may have been '${value},${unit}', with a comma for its decimals`,
      `a unit of ${dimension}`,
      `Write ${value}.${unit}, or put the number in quotes.`,
    );
  }
  if (!cell) readQuantity(`1 ${unit}`, dimension);
  const own = unitsBeside(value, dimension);
  const same = own.some((name) => {
    const beside = findUnit(name, dimension);
    return beside?.factor === cell?.factor && beside?.offset === cell?.offset;
  });
  return own.length === 0 || same ? undefined : `written, not in the unit cell's '${unit}'`;
}

function unitsBeside(value: string, dimension: NonNullable<Column<unknown>['dimension']>): string[] {
  try {
    return readQuantity(value, dimension, undefined).units;
  } catch (error) {
    if (error instanceof QuantityError) return [];
    throw error;
  }
}
