import type { Report, WaterDay } from '../contract/report.js';
import { InputError } from '../units/index.js';

/** Most rows a figure draws: about a pixel each, and a small page. */
const MOST_ROWS = 1200;
const YEARS_SHOWN = 3;

interface WaterRows {
  monthly: boolean;
  /** dates, or months 1–12 */
  x: (string | number)[];
  rows: WaterDay[];
  /** looks that fall on the axis, with their place on it */
  dips: (Report['dips'][number] & { x: string | number })[];
  /** days from one row to the next */
  every: number;
}

/** Rows of the water year as drawn: the last three years, further back where looks are; thinned when many. */
export function waterRows({ water_year, dips }: Report): WaterRows {
  if (water_year.length === 0)
    throw new InputError('missing-input', 'missing water_year - at least one row is needed');
  if (water_year[0]!.date.startsWith('--')) {
    return {
      monthly: true,
      x: water_year.map((row) => Number(row.date.slice(2))),
      rows: water_year,
      dips: dips.map((dip) => ({ ...dip, x: monthPlace(dip.date) })),
      every: 1,
    };
  }
  const first = water_year[0]!.date;
  const last = water_year.at(-1)!.date;
  const held = dips.filter((dip) => dip.date >= first && dip.date <= last);
  const usual = `${String(Number(last.slice(0, 4)) - YEARS_SHOWN).padStart(4, '0')}${last.slice(4)}`;
  const from = [usual, ...held.map((dip) => dip.date)].sort()[0]!;
  const shown = water_year.filter((row) => row.date >= from);
  const every = Math.ceil(shown.length / MOST_ROWS);
  const rows = shown.filter((_, at) => (shown.length - 1 - at) % every === 0);
  return {
    monthly: false,
    x: rows.map((row) => row.date),
    rows,
    dips: held.map((dip) => ({ ...dip, x: dip.date })),
    every,
  };
}

/** A date on an axis on which month m reaches from m − ½ to m + ½. */
function monthPlace(date: string): number {
  const [, month, day] = date.split('-').map(Number);
  return Number((month! - 0.5 + (day! - 0.5) / 31).toFixed(3));
}
