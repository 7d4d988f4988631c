import { assertClosed } from '../climate/index.js';
import { method } from '../formula/index.js';
import {
  type ColumnState,
  type ColumnWeather,
  columnConstants,
  columnSeries,
  runDays,
  usualState,
} from './columnRun.js';
import type { TableParameters } from './tableStore.js';

export const spinUpMethod = method({
  title: 'Spin-up of a column',
  what:
    'What a column of ground holds on a day, whatever it held long before: it is run in steps of a week for as long as ' +
    'its store remembers, and day by day through the year before.',
  assumptions: [
    'a store forgets as fast as it recedes: what a metre too much leaves after seven times that long is a millimetre; ten years at most',
    'a week at a time is off by centimetres in the water it ends with, of which a year of days leaves nothing where water recedes in months',
    'before a record the weather was as whole years later in it',
  ],
  source: 'linear reservoir; weeks against days over whole records, see test/groundwater/spinUp',
});

/** Times the recession's own time after which a start is forgotten. */
const FORGOTTEN = 7;
const WEEK = 7;
/** Weeks at most, at least a year of them for snow and roots, and days after them. */
const WEEKS = 520;
const YEAR = 52;
const DAYS = 365;

/**
 * Source of what columns hold at the start of a day, see {@link spinUpMethod}.
 * @param record - daily weather, a day or more
 * @param day - index in it of that day
 * @returns of a parameter set what its column holds, m; throws an Error where a balance does not close to 1e-9 m
 */
export function spinUp(record: ColumnWeather, day: number): (p: TableParameters) => ColumnState {
  const first = day - DAYS;
  const daily = weatherOf(record, first, 1, DAYS);
  const weekly = weatherOf(record, first - WEEKS * WEEK, WEEK, WEEKS);
  const series = columnSeries(WEEKS);
  return (p) => {
    const state = usualState(p);
    const remembered = Math.ceil((FORGOTTEN / p.recession - DAYS) / WEEK);
    const weeks = Math.min(Math.max(remembered, YEAR), WEEKS);
    const closure =
      runDays(weekly, WEEKS - weeks, WEEKS, columnConstants(p, WEEK), state, series) +
      runDays(daily, 0, DAYS, columnConstants(p), state, series);
    assertClosed('column', closure, weeks * WEEK + DAYS);
    return state;
  };
}

/** Weather in steps of some days, from a day that may lie before the record. */
function weatherOf(record: ColumnWeather, first: number, step: number, steps: number): ColumnWeather {
  const { length } = record.rain;
  const cycle = Math.round(Math.floor(length / 365.25) * 365.25) || length;
  const out = {
    rain: new Float64Array(steps),
    tmean: new Float64Array(steps),
    demand: new Float64Array(steps),
  };
  for (let i = 0; i < steps * step; i++) {
    const d = first + i;
    const day = d < 0 ? d + cycle * Math.ceil(-d / cycle) : d;
    const k = Math.floor(i / step);
    out.rain[k] += record.rain[day];
    out.demand[k] += record.demand[day];
    out.tmean[k] += record.tmean[day] / step;
  }
  return out;
}
