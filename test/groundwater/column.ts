import { columnSeries, runColumn, type TableParameters } from '../../lib/groundwater/index.js';

/** A clay lawn without a drain. */
export const CLAY: TableParameters = {
  porosity: 0.03,
  recession: 0.012,
  baseDepth: 2,
  spillDepth: 0.06,
  extinctionDepth: 1.4,
  delay: 0.5,
  rootCapacity: 0.1,
  demandFactor: 1,
  crackShare: 0.1,
  drainDepth: 1,
  drainRate: 0,
  meltFactor: 0.003,
};

/** A clay lawn whose table neither recedes nor is drained, with recharge that arrives at once. */
export const STILL: TableParameters = {
  ...CLAY,
  recession: 0,
  spillDepth: 0.1,
  delay: 1e-3,
  crackShare: 0,
};

/** A day's weather: rain and demand in m, mean temperature in °C (10 unless said). */
export interface Weather {
  rain?: number;
  demand?: number;
  tmean?: number;
}

/** What a column holds at a time, m of water. */
interface Held {
  snow: number;
  deficit: number;
  waiting: number;
  held: number;
}

/** Runs a column over days from a start; full roots and an empty table unless said. */
export function run(days: Weather[], change: Partial<TableParameters> = {}, start: Partial<Held> = {}) {
  const p = { ...STILL, ...change };
  const series = columnSeries(days.length);
  const of = (key: keyof Weather, otherwise: number) =>
    Float64Array.from(days, (day) => day[key] ?? otherwise);
  const weather = { rain: of('rain', 0), demand: of('demand', 0), tmean: of('tmean', 10) };
  const from = { snow: 0, deficit: 0, waiting: 0, held: 0, ...start };
  const state = Float64Array.of(from.snow, from.deficit, from.waiting, from.held);
  const { closure, end } = runColumn(weather, p, series, state);
  const [snow, deficit, waiting, held] = end;
  return { ...series, end: { snow, deficit, waiting, held }, closure, p, from };
}

export const days = (n: number, day: Weather = {}): Weather[] => new Array(n).fill(day);
