import {
  assertClosed,
  type ClimateRecord,
  crackBypass,
  DEPLETION_FRACTION,
  degreeDayMelt,
  excess,
  rootEvaporation,
} from '../climate/index.js';
import { dailyOutflow, type TableParameters, tableEvaporation, tableRise } from './tableStore.js';

/** What a column of ground holds, m of water. */
export interface ColumnState {
  snow: number;
  /** room left in the root zone */
  deficit: number;
  /** on its way from the roots to the table */
  waiting: number;
  /** above the base of the table */
  held: number;
}

/** Daily series of one parameter set; the arrays are reused from run to run. */
export interface ColumnSeries {
  /** rain and melt reaching the ground, m a day */
  liquid: Float64Array;
  /** water below the roots, m a day */
  recharge: Float64Array;
  /** depth to water at the end of the day, m below the ground */
  depth: Float64Array;
  /** saturation excess, m a day */
  spill: Float64Array;
}

/** The weather of a column. */
export type ColumnWeather = Pick<ClimateRecord, 'rain' | 'tmean' | 'demand'>;

/**
 * Buffers for a record.
 * @param days - length of the record
 * @returns buffers that {@link runColumn} fills
 */
export function columnSeries(days: number): ColumnSeries {
  return {
    liquid: new Float64Array(days),
    recharge: new Float64Array(days),
    depth: new Float64Array(days),
    spill: new Float64Array(days),
  };
}

/** Water that leaves at once, m: numbers that fade on and on below it slow every processor down. */
const NOTHING = 1e-12;
const leaving = (held: number, share: number) => (held > NOTHING ? held * share : held);

/**
 * Snow, root zone and water table over the first days of a record, in one pass, and asserts that the column closes: what
 * fell has left it or is still held. Order of the day: snow; cracks, root zone and its demand; delay, spill, drain,
 * evaporation and recession of the table.
 * @param weather - of the column
 * @param days - that are run
 * @param p - parameters of the column
 * @param start - what it holds at the start
 * @param out - filled, a value a day
 * @returns what it holds at the end, and the closure error, m
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runDays(
  { rain, tmean, demand }: ColumnWeather,
  days: number,
  p: TableParameters,
  start: ColumnState,
  { liquid, recharge, depth, spill }: ColumnSeries,
): { end: ColumnState; closure: number } {
  const { porosity, baseDepth, extinctionDepth, rootCapacity, demandFactor, crackShare, meltFactor } = p;
  const rise = tableRise.compute(1, porosity);
  const stressedBelow = (1 - DEPLETION_FRACTION) * rootCapacity;
  const full = (baseDepth - p.spillDepth) * porosity;
  const undrained = Math.max(baseDepth - p.drainDepth, 0) * porosity;
  const arrives = dailyOutflow.compute(1 / p.delay);
  const drains = dailyOutflow.compute(p.drainRate);
  const recedes = dailyOutflow.compute(p.recession);
  // In hand before the loop: looked up in it, they would be looked up every day.
  const [melted, cracked] = [degreeDayMelt.compute, crackBypass.compute];
  const [drawnByRoots, drawnFromTable] = [rootEvaporation.compute, tableEvaporation.compute];
  let { snow, deficit, waiting, held } = start;
  let balance = 0;
  for (let d = 0; d < days; d++) {
    const fell = rain[d];
    const warmth = tmean[d];
    const melt = melted(meltFactor, warmth, snow);
    const snowfall = warmth < 0 ? fell : 0;
    const water = fell - snowfall + melt;
    snow += snowfall - melt;

    const bypass = cracked(crackShare, water, deficit, rootCapacity);
    const matrix = water - bypass;
    const through = bypass + excess(matrix, deficit);
    deficit = excess(deficit, matrix);
    const wanted = demand[d] * demandFactor;
    const drawn = drawnByRoots(wanted, rootCapacity - deficit, stressedBelow);
    deficit += drawn;

    waiting += through;
    const arriving = leaving(waiting, arrives);
    waiting -= arriving;
    held += arriving;
    const over = excess(held, full);
    held -= over;
    const led = excess(held, undrained) * drains;
    held -= led;
    const taken = drawnFromTable(wanted - drawn, baseDepth - held * rise, extinctionDepth, held);
    held -= taken;
    const outflow = leaving(held, recedes);
    held -= outflow;

    liquid[d] = water;
    recharge[d] = through;
    depth[d] = baseDepth - held * rise;
    spill[d] = over;
    balance += fell - drawn - over - led - taken - outflow;
  }
  const end = { snow, deficit, waiting, held };
  const closure = balance - (total(end) - total(start));
  assertClosed('column', closure, days);
  return { end, closure: Math.abs(closure) };
}

const total = ({ snow, deficit, waiting, held }: ColumnState) => snow - deficit + waiting + held;

/** Days run twice, so that the start is forgotten. */
const WARM_UP = 365;

/**
 * A column over a record; the first year is run before it once more, so that the start is forgotten.
 * @param record - daily climate
 * @param p - parameters of root zone, snow and store
 * @param out - filled, day by day
 * @returns closure error, m
 */
export function runColumn(record: ColumnWeather, p: TableParameters, out: ColumnSeries): { closure: number } {
  const start = {
    snow: 0,
    deficit: 0.3 * p.rootCapacity,
    waiting: 0,
    held: 0.5 * (p.baseDepth - p.spillDepth) * p.porosity,
  };
  const warm = runDays(record, Math.min(WARM_UP, record.rain.length), p, start, out);
  return runDays(record, record.rain.length, p, warm.end, out);
}
