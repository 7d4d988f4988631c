import {
  assertClosed,
  type ClimateRecord,
  crackBypass,
  DEPLETION_FRACTION,
  degreeDayMelt,
  excess,
  rootEvaporation,
} from '../climate/index.js';
import { dailyOutflow, leaving, type TableParameters, tableEvaporation, tableRise } from './tableStore.js';

/**
 * What a column of ground holds, m of water: snow; room left in the root zone; what is on its way from the roots to the
 * table; what stands above the table's base. An array of doubles: from an object V8 would box every day's numbers.
 */
export type ColumnState = Float64Array;

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
 * @returns series of zeros that {@link runColumn} fills, a value a day
 */
export function columnSeries(days: number): ColumnSeries {
  return {
    liquid: new Float64Array(days),
    recharge: new Float64Array(days),
    depth: new Float64Array(days),
    spill: new Float64Array(days),
  };
}

/**
 * What the loop needs of a parameter set, in one array of doubles: objects of one kind may differ in how V8 keeps them,
 * and the loop would be compiled for the first it meets.
 * @param p - the parameter set
 * @param step - days in a step of the loop; rain and demand are then of so many days, temperature their mean
 * @returns a double for each use of the loop, in its order
 */
export function columnConstants(p: TableParameters, step = 1): Float64Array {
  const { porosity, baseDepth, rootCapacity } = p;
  return Float64Array.of(
    p.meltFactor * step,
    p.crackShare,
    rootCapacity,
    (1 - DEPLETION_FRACTION) * rootCapacity,
    p.demandFactor,
    dailyOutflow.compute(step / p.delay),
    (baseDepth - p.spillDepth) * porosity,
    Math.max(baseDepth - p.drainDepth, 0) * porosity,
    dailyOutflow.compute(step * p.drainRate),
    baseDepth,
    tableRise.compute(1, porosity),
    p.extinctionDepth,
    dailyOutflow.compute(step * p.recession),
  );
}

/**
 * Snow, root zone and water table over a stretch of a record, in one pass. Order of the day: snow; cracks, root zone and
 * its demand; delay, spill, drain, evaporation and recession of the table.
 * @param weather - of the column
 * @param from - index of the first day in the record
 * @param to - index of the day after the last
 * @param constants - of the parameter set, from {@link columnConstants}
 * @param state - what it holds at the start, m; changed to what it holds at the end
 * @param out - filled from `from` to `to`, a value a day
 * @returns what fell less what left the column less what it holds more, m
 */
export function runDays(
  { rain, tmean, demand }: ColumnWeather,
  from: number,
  to: number,
  constants: Float64Array,
  state: ColumnState,
  { liquid, recharge, depth, spill }: ColumnSeries,
): number {
  const [meltFactor, crackShare, rootCapacity, stressedBelow, demandFactor, arrives] = constants;
  const [full, undrained, drains, baseDepth, rise, extinctionDepth, recedes] = constants.subarray(6);
  // In hand before the loop: looked up in it, they would be looked up every day.
  const [melted, cracked] = [degreeDayMelt.compute, crackBypass.compute];
  const [drawnByRoots, drawnFromTable] = [rootEvaporation.compute, tableEvaporation.compute];
  let snow = state[0];
  let deficit = state[1];
  let waiting = state[2];
  let held = state[3];
  let balance = snow - deficit + waiting + held;
  for (let d = from; d < to; d++) {
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
    const deep = baseDepth - held * rise;
    const taken = drawnFromTable(wanted - drawn, Math.max(deep, 0), extinctionDepth, held);
    held -= taken;
    const outflow = leaving(held, recedes);
    held -= outflow;

    liquid[d] = water;
    recharge[d] = through;
    depth[d] = baseDepth - held * rise;
    spill[d] = over;
    balance += fell - drawn - over - led - taken - outflow;
  }
  state[0] = snow;
  state[1] = deficit;
  state[2] = waiting;
  state[3] = held;
  return balance - (snow - deficit + waiting + held);
}

/** What a column of a parameter set is taken to hold where nothing is known of it: its store half full. */
export const usualState = (p: TableParameters): ColumnState =>
  Float64Array.of(0, 0.3 * p.rootCapacity, 0, 0.5 * (p.baseDepth - p.spillDepth) * p.porosity);

/** A stretch of days: what is run twice, and what is run at a time (V8 compiles a short loop better than a long one). */
const STRETCH = 365;

/**
 * A column over a record, and asserts that it closes; the first year is run before it once more, so that the start is
 * forgotten.
 * @param weather - of the column
 * @param p - parameters of root zone, snow and store
 * @param out - filled, day by day; from {@link columnSeries}
 * @param start - what it holds at the start instead, m, without that first year
 * @returns closure error, m, 0 or more, and what it holds at the end, m
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runColumn(
  { rain, tmean, demand }: ColumnWeather,
  p: TableParameters,
  out: ColumnSeries,
  start?: ColumnState,
): { closure: number; end: ColumnState } {
  const days = rain.length;
  const weather = { rain, tmean, demand };
  const constants = columnConstants(p);
  const state = start ? Float64Array.from(start) : usualState(p);
  let closure = start ? 0 : runDays(weather, 0, Math.min(STRETCH, days), constants, state, out);
  for (let d = 0; d < days; d += STRETCH)
    closure += runDays(weather, d, Math.min(d + STRETCH, days), constants, state, out);
  assertClosed('column', closure, days);
  return { closure: Math.abs(closure), end: state };
}
