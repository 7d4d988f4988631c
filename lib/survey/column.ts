/** The kinds of cell a survey has: what each may hold and how it is read. */

import { type DecimalSign, type Dimension, findUnit, QuantityError, readQuantity } from '../units/index.js';
import type { DateOrder } from './dateOrder.js';
import { didYouMean } from './suggest.js';

/** A cell that can't be read; the reader of the table adds the place. */
export class CellFault extends Error {
  constructor(
    readonly code: string,
    message: string,
    readonly expected: string,
    readonly remedy: string,
  ) {
    super(message);
  }
}

/** What the cells of a column leave to where they stand. */
export interface Style {
  /** of a bare number */
  unit?: string;
  /** the sign before decimals, a point unless said */
  decimals?: DecimalSign;
  /** of day and month where both are numbers */
  dates?: DateOrder;
}

/** How the cells of one column (or the value of one item) are read. */
export interface Column<T> {
  /** other names that people give the column */
  also?: readonly string[];
  /** a row may end before it: a comma forgotten further left would show, since this holds words only */
  mayBeCut?: true;
  /** of a quantity; the header then ends in a unit, unless `unit` fixes it */
  dimension?: Dimension;
  /** of a bare number where neither header nor unit cell gives one */
  unit?: string;
  /** words the unit cell of an item may hold although the number is plain */
  unitWords?: readonly string[];
  /** the cell may not be empty */
  required?: true;
  /** @throws CellFault or QuantityError */
  read(text: string, style: Style): T;
  /** what the cell was taken for, where that is not what stands in it */
  taken?(text: string): string | undefined;
  /** what all filled cells together say of how they are written, and what is to be told of that */
  study?(cells: readonly string[]): { style: Style; told?: string };
  /** a remark on a value that is possible but rarely meant */
  odd?(value: T): string | undefined;
}

/** Limits in SI; `odd` beyond which the value is kept with a warning. */
interface Limits {
  min: number;
  max: number;
  oddAbove?: number;
  oddBelow?: number;
  unit?: string;
  unitWords?: readonly string[];
}

/** The unit each header suffix stands for. */
export const SUFFIXES: Partial<Record<Dimension, Record<string, string>>> = {
  length: { m: 'm', cm: 'cm', mm: 'mm', ft: 'ft', in: 'in' },
  speed: { m_s: 'm/s', m_d: 'm/d', mm_h: 'mm/h', in_h: 'in/h' },
  fraction: { pct: '%' },
  pressure: { kpa: 'kPa', psf: 'psf' },
  temperature: { c: 'C', f: 'F' },
};

/** Makes a column one whose cells may not be empty. */
export function required<T>(column: Column<T>): Column<T> & { required: true } {
  return { ...column, required: true };
}

/** Any text, on one line. */
export function text(): Column<string> {
  return { read: (cell) => cell.replace(/[\t\r\n]+/g, ' ') };
}

/** Text that a row may end before. */
export function remark(...also: string[]): Column<string> {
  return { ...text(), also, mayBeCut: true };
}

/** Gives a column other names. */
export function named<C extends Column<unknown>>(column: C, ...also: string[]): C {
  return { ...column, also };
}

/**
 * One of a list of words; case, hyphens and doubled spaces don't matter.
 * @param also other words for them that have one meaning; what they are taken for is told
 */
export function word<W extends string>(
  words: readonly W[],
  also: Readonly<Record<string, W>> = {},
): Column<W> {
  const normal = (cell: string) =>
    cell
      .toLowerCase()
      .replace(/[\s_-]+/g, ' ')
      .trim();
  const byName = new Map(words.map((known) => [normal(known), known]));
  const byOther = new Map(Object.entries(also));
  return {
    read(cell) {
      const known = byName.get(normal(cell)) ?? byOther.get(normal(cell));
      if (known !== undefined) return known;
      throw new CellFault('unknown-word', `unknown '${cell}'`, words.join(', '), didYouMean(cell, words));
    },
    taken: (cell) => (byName.has(normal(cell)) ? undefined : byOther.get(normal(cell))),
  };
}

const NOTHING = /^0+([.,]0+)?$/;
const ZERO_UNIT: Partial<Record<Dimension, string>> = { length: 'm', area: 'm2' };

/** Nothing is nothing in every unit of length or area. */
export function isNothing(cell: string, dimension: Dimension): boolean {
  return NOTHING.test(cell) && dimension in ZERO_UNIT;
}

/** A number with a unit, within limits. */
export function quantity(dimension: Dimension, limits: Limits): Column<number> {
  return {
    dimension,
    unit: limits.unit ?? (dimension === 'none' ? '' : undefined),
    unitWords: limits.unitWords,
    read(cell, { unit = isNothing(cell, dimension) ? ZERO_UNIT[dimension] : undefined, decimals }) {
      const { value, units } = readQuantity(cell, dimension, unit, decimals);
      // An end of the range written in another unit is that end, whatever its last digit.
      const [low, high] = [limits.min - LAST_DIGIT * Math.abs(limits.min), limits.max * (1 + LAST_DIGIT)];
      if (value < low || value > high) throw outside(cell, limits, dimension, units[0] ?? unit);
      return value;
    },
    odd(value) {
      if (limits.oddAbove !== undefined && value > limits.oddAbove) return 'unusually large';
      if (limits.oddBelow !== undefined && value < limits.oddBelow && value !== 0) return 'unusually small';
      return undefined;
    },
  };
}

const LAST_DIGIT = 1e-9;

function outside(cell: string, limits: Limits, dimension: Dimension, unit: string | undefined): CellFault {
  const { factor, offset = 0 } = findUnit(unit ?? '', dimension) ?? { factor: 1 };
  const shown = (limit: number, inwards: 'up' | 'down') => rounded((limit - offset) / factor, inwards);
  const range = `${shown(limits.min, 'up')} to ${shown(limits.max, 'down')}${unit ? ` ${unit}` : ''}`;
  return new CellFault(
    'outside-range',
    `outside '${cell}' - ${range} is possible`,
    range,
    'Check the number and its unit.',
  );
}

/** To three digits, and never beyond: what a range is told to allow is allowed. */
function rounded(value: number, way: 'up' | 'down'): string {
  const nearest = Number(value.toPrecision(3));
  const isBeyond = way === 'up' ? nearest < value : nearest > value;
  if (!isBeyond || Math.abs(nearest - value) <= LAST_DIGIT * Math.abs(value)) return String(nearest);
  const digit = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  return String(Number((nearest + (way === 'up' ? digit : -digit)).toPrecision(3)));
}

/** What `first` can't read is left to `second`, unless it is the word `first` takes. */
export function wordOr<W extends string, T>(known: W, other: Column<T>): Column<W | T> {
  const { odd, ...column } = other;
  return {
    ...column,
    read: (cell, style) => (cell.trim().toLowerCase() === known ? known : other.read(cell, style)),
    odd: (value) => (value === known ? undefined : odd?.(value as T)),
  };
}

/** Turns what a cell reader threw into the parts of a problem. */
export function faultOf(error: unknown): {
  code: string;
  message: string;
  expected?: string;
  remedy: string;
} {
  if (error instanceof CellFault || error instanceof QuantityError) {
    const expected = error instanceof CellFault ? error.expected : undefined;
    return { code: error.code, message: error.message, expected, remedy: error.remedy };
  }
  throw error;
}
