/** The kinds of cell a survey has: what each may hold and how it is read. */

import { type Dimension, findUnit, QuantityError, readQuantity } from '../units/index.js';
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

/** How the cells of one column (or the value of one item) are read. */
export interface Column<T> {
  /** of a quantity; the header then ends in a unit, unless `unit` fixes it */
  dimension?: Dimension;
  /** of a bare number where neither header nor unit cell gives one */
  unit?: string;
  /** words the unit cell of an item may hold although the number is plain */
  unitWords?: readonly string[];
  /** the cell may not be empty */
  required?: true;
  /** @throws CellFault or QuantityError */
  read(text: string, unit: string | undefined): T;
  /** a remark on a value that is possible but rarely meant */
  odd?(value: T): string | undefined;
}

/** Limits in SI; `odd` beyond which the value is kept with a warning. */
export interface Limits {
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

/** Any text. */
export function text(): Column<string> {
  return { read: (cell) => cell };
}

/** One of a list of words; case, hyphens and doubled spaces don't matter. */
export function word<W extends string>(words: readonly W[]): Column<W> {
  const normal = (cell: string) =>
    cell
      .toLowerCase()
      .replace(/[\s_-]+/g, ' ')
      .trim();
  return {
    read(cell) {
      const known = words.find((candidate) => normal(candidate) === normal(cell));
      if (known !== undefined) return known;
      throw new CellFault('unknown-word', `unknown '${cell}'`, words.join(', '), didYouMean(cell, words));
    },
  };
}

/** A number with a unit, within limits. */
export function quantity(dimension: Dimension, limits: Limits): Column<number> {
  return {
    dimension,
    unit: limits.unit ?? (dimension === 'none' ? '' : undefined),
    unitWords: limits.unitWords,
    read(cell, unit) {
      const { value, units } = readQuantity(cell, dimension, unit);
      if (value < limits.min || value > limits.max) throw outside(cell, limits, dimension, units[0] ?? unit);
      return value;
    },
    odd(value) {
      if (limits.oddAbove !== undefined && value > limits.oddAbove) return 'unusually large';
      if (limits.oddBelow !== undefined && value < limits.oddBelow && value !== 0) return 'unusually small';
      return undefined;
    },
  };
}

function outside(cell: string, limits: Limits, dimension: Dimension, unit: string | undefined): CellFault {
  const { factor, offset = 0 } = findUnit(unit ?? '', dimension) ?? { factor: 1 };
  const shown = (limit: number) => String(Number(((limit - offset) / factor).toPrecision(3)));
  const range = `${shown(limits.min)} to ${shown(limits.max)}${unit ? ` ${unit}` : ''}`;
  return new CellFault(
    'outside-range',
    `outside '${cell}' - ${range} is possible`,
    range,
    'Check the number and its unit.',
  );
}

/** A calendar month, 1 to 12. */
export function month(): Column<number> {
  return {
    read(cell) {
      if (/^(0?[1-9]|1[0-2])$/.test(cell)) return Number(cell);
      throw new CellFault(
        'invalid-month',
        `invalid '${cell}' - not a month`,
        '1 to 12',
        'Write the month as a number, 1 to 12.',
      );
    },
  };
}

/** Months apart by semicolons, in order and each once. */
export function months(): Column<number[]> {
  const one = month();
  return {
    read(cell) {
      const list = cell.split(';').map((part) => one.read(part.trim(), undefined));
      return [...new Set(list)].sort((a, b) => a - b);
    },
  };
}

/** What `first` can't read is left to `second`, unless it is the word `first` takes. */
export function wordOr<W extends string, T>(known: W, other: Column<T>): Column<W | T> {
  return {
    read: (cell, unit) => (cell.trim().toLowerCase() === known ? known : other.read(cell, unit)),
  };
}

/** A day as `2024-11-03`: whole days since 1970-01-01. */
export function date(): Column<number> {
  const remedy = 'Write year-month-day, such as 2024-11-03.';
  return {
    read(cell) {
      const [, year, monthOfYear, dayOfMonth] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(cell) ?? []).map(Number);
      if (year === undefined || monthOfYear === undefined || dayOfMonth === undefined) {
        throw new CellFault('invalid-date', `invalid '${cell}' - not an ISO 8601 date`, 'YYYY-MM-DD', remedy);
      }
      const time = Date.UTC(year, monthOfYear - 1, dayOfMonth);
      if (new Date(time).getUTCDate() !== dayOfMonth || monthOfYear > 12) {
        throw new CellFault(
          'invalid-date',
          `invalid '${cell}' - no such day`,
          'a day of the calendar',
          remedy,
        );
      }
      if (year < 1800 || year > 2200) {
        throw new CellFault(
          'outside-range',
          `outside '${cell}' - years 1800 to 2200 are possible`,
          '1800 to 2200',
          remedy,
        );
      }
      return time / 86_400_000;
    },
  };
}

/** A day number as `2024-11-03`. */
export function dateText(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/** A time of day as `09:00`: fraction of the day. */
export function timeOfDay(): Column<number> {
  return {
    read(cell) {
      const [, hours, minutes, seconds = '0'] = /^(\d{1,2}):(\d{2})(?::(\d{2}))?$/.exec(cell) ?? [];
      if (hours === undefined || Number(hours) > 23 || Number(minutes) > 59 || Number(seconds) > 59) {
        throw new CellFault(
          'invalid-time',
          `invalid '${cell}' - not a time of day`,
          'HH:MM, 00:00 to 23:59',
          'Write it like 09:00 or 17:30.',
        );
      }
      return (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / 86_400;
    },
  };
}

/** A fraction of the day as `09:00:00`. */
export function timeText(fraction: number): string {
  return new Date(Math.round(fraction * 86_400) * 1000).toISOString().slice(11, 19);
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
