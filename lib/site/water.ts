import { type ClimateRecord, calendarOf, isWetHalf } from '../climate/index.js';
import { method } from '../formula/index.js';
import {
  columnSeries,
  runColumn,
  runTub,
  type TableFit,
  type TableParameters,
  type TubGeometry,
} from '../groundwater/index.js';
import { latinNormals } from '../sampling/index.js';
import { type LogEstimate, logValue } from '../soil/index.js';
import type { MonthlyWater } from './monthlyWater.js';
import { TABLE_FOLLOWS_GROUND } from './spots.js';
import { type Catchment, tubInflow } from './tubOf.js';
import type { Unknowns } from './unknowns.js';

export const waterEnsemble = method({
  title: 'The water outside, year by year',
  what:
    'For every sample of the unknown ground, every weather year: the highest level of each month in the clay at the ' +
    'low side, in the clay behind the uphill wall, and in the ring, with run-off as it is and with run-off kept out.',
  assumptions: [
    'simulated once, at the wished depth; depth, rim, state and option enter afterwards',
    'the clay table follows the ground uphill by 0.85 ± 0.15 of the rise where nobody measured there',
    'place to place 0.05 m (our choice); year to year beyond the model as much as the model misses the dips',
  ],
  source: 'water balance; common practice for the spreads',
});

/** Ways of keeping surface water: as it is, or turned away and the ring capped. */
export type Way = 'asIs' | 'keptOut';
export const WAYS: Way[] = ['asIs', 'keptOut'];

/** Highest levels, m above the datum; index (sample × years + year) × 12 + month − 1. */
export interface MonthlyLevels {
  month: Float32Array;
  /** over the days a pond emptied on the first of the month stands empty */
  window: Float32Array;
}

/** Daily levels of the first samples, for bands; index sample × days + day. */
export interface DailyLevels {
  firstDay: number;
  days: number;
  samples: number;
  clay: Float32Array;
  tub?: Record<Way, Float32Array>;
}

export interface WaterEnsemble {
  samples: number;
  years: number;
  clayLow: MonthlyLevels;
  clayHigh: MonthlyLevels;
  /** absent where no permeable layer touches the liner */
  tub?: Record<Way, MonthlyLevels>;
  daily?: DailyLevels;
  /** conductivity of the ground, m/s, one a sample */
  conductivity: Float64Array;
  /** largest closure error of any balance, m */
  closure: number;
}

const DAILY_SAMPLES = 100;
const PLACE_SPREAD = 0.05;
const SYNTHETIC_YEARS = 20;

function levels(n: number): MonthlyLevels {
  const nothing = Number.NEGATIVE_INFINITY;
  return { month: new Float32Array(n).fill(nothing), window: new Float32Array(n).fill(nothing) };
}

/** What both kinds of ensemble start from. */
interface Common {
  samples: number;
  seed: number;
  unknowns: Unknowns;
  ksat: LogEstimate;
  /** ground at the uphill rim, m above the datum */
  highRim: number;
}

function startEnsemble({ samples, ksat, unknowns }: Common, years: number, withTub: boolean): WaterEnsemble {
  const n = samples * years * 12;
  return {
    samples,
    years,
    clayLow: levels(n),
    clayHigh: levels(n),
    tub: withTub ? { asIs: levels(n), keptOut: levels(n) } : undefined,
    conductivity: unknowns.permeability.map((z) => logValue(ksat, z)),
    closure: 0,
  };
}

/** Rise of the table from the low side to behind the uphill wall, m, one a sample. */
function uphillRise({ highRim, unknowns }: Common): Float64Array {
  return unknowns['uphill rise'].map(
    (v) => highRim * Math.min(Math.max(TABLE_FOLLOWS_GROUND.mean + TABLE_FOLLOWS_GROUND.spread * v, 0), 1),
  );
}

/**
 * The ensemble where the water is known month by month.
 * @param record - weather for the ring, when there is some
 */
export function waterByMonth(
  common: Common,
  monthly: MonthlyWater,
  latitude: number,
  ring: RingInWeather | undefined,
  underLiner: number | undefined,
): WaterEnsemble {
  const record = ring?.record;
  const years = record && record.years > 0 ? record.years : SYNTHETIC_YEARS;
  const { samples, seed, unknowns } = common;
  const e = startEnsemble(common, years, ring !== undefined || underLiner !== undefined);
  const rise = uphillRise(common);
  const perYear = latinNormals(samples * years, 1, seed + 17);
  for (let s = 0; s < samples; s++)
    for (let y = 0; y < years; y++) {
      const z = monthly.fixed ? unknowns['water level'][s] : perYear[s * years + y];
      const shift = z * monthly.spread + 0.01 * unknowns.reading[s];
      for (let m = 0; m < 12; m++) {
        const i = (s * years + y) * 12 + m;
        const low = -monthly.low[m] + shift;
        e.clayLow.month[i] = e.clayLow.window[i] = low;
        e.clayHigh.month[i] = e.clayHigh.window[i] = monthly.high ? -monthly.high[m] + shift : low + rise[s];
        if (e.tub && !record) {
          // No weather: the ring is taken as full in the wet half-year, and as the clay is otherwise.
          const wet = isWetHalf(m + 1, latitude);
          const full = wet ? Math.max(ring?.tub.spill ?? 0, underLiner ?? Number.NEGATIVE_INFINITY) : low;
          e.tub.asIs.month[i] = e.tub.asIs.window[i] = full;
          e.tub.keptOut.month[i] = e.tub.keptOut.window[i] = low;
        }
      }
    }
  if (record && ring && e.tub) simulateRing(e, ring, monthlyClay(e, record));
  return e;
}

/** RingInWeather, its catchment and the weather it lies in. */
export interface RingInWeather {
  tub: TubGeometry;
  catchment: Catchment;
  record: ClimateRecord;
  daysEmpty: number;
  /** parameter sets for the run-off from above, one a sample */
  sets: TableParameters[];
}

/** Clay levels of a sample day by day from its monthly highs, straight between mid-months. */
function monthlyClay(e: WaterEnsemble, record: ClimateRecord): (sample: number, out: Float64Array) => void {
  return (s, out) => {
    for (let d = 0; d < out.length; d++) {
      const year = Math.max(record.year[d], 0);
      const i = (s * e.years + year) * 12;
      const c = calendarOf(record.firstDay + d);
      const t = (c.date - 15) / 30;
      const m = c.month - 1;
      const other = (m + (t < 0 ? 11 : 1)) % 12;
      out[d] = e.clayLow.month[i + m] * (1 - Math.abs(t)) + e.clayLow.month[i + other] * Math.abs(t);
    }
  };
}

/** The ensemble simulated day by day from weather. */
export function waterByWeather(
  common: Common,
  record: ClimateRecord,
  fit: TableFit,
  daysEmpty: number,
  ring: Omit<RingInWeather, 'sets' | 'record' | 'daysEmpty'> | undefined,
): WaterEnsemble {
  const { samples, seed, unknowns } = common;
  const e = startEnsemble(common, record.years, ring !== undefined);
  const rise = uphillRise(common);
  const byYear = latinNormals(samples * record.years, 1, seed + 29);
  const n = record.liquid.length;
  const series = columnSeries(n);
  const slots = slotsOf(record, daysEmpty);
  const kept = Math.min(DAILY_SAMPLES, samples);
  e.daily = { firstDay: record.firstDay, days: n, samples: kept, clay: new Float32Array(kept * n) };
  const clay = new Float64Array(n);
  const ringRun =
    ring && e.tub ? ringRunner(e, { ...ring, record, daysEmpty, sets: fit.sets }, slots) : undefined;
  for (let s = 0; s < samples; s++) {
    const p = fit.sets[s];
    e.closure = Math.max(e.closure, runColumn(record, p, series).closure, fit.closure);
    for (let d = 0; d < n; d++) {
      const y = record.year[d];
      const shift =
        PLACE_SPREAD * unknowns.place[s] + (y >= 0 ? fit.missing[s] * byYear[s * record.years + y] : 0);
      clay[d] = -Math.max(series.depth[d] - shift, p.spillDepth);
    }
    highest(e.clayLow, s * record.years * 12, slots, clay);
    if (s < kept) e.daily.clay.set(clay, s * n);
    ringRun?.(s, series, clay);
  }
  for (let i = 0; i < e.clayLow.month.length; i++) {
    const up = rise[Math.floor(i / (record.years * 12))];
    e.clayHigh.month[i] = e.clayLow.month[i] + up;
    e.clayHigh.window[i] = e.clayLow.window[i] + up;
  }
  return e;
}

function simulateRing(
  e: WaterEnsemble,
  ring: RingInWeather,
  clayOf: (sample: number, out: Float64Array) => void,
): void {
  const n = ring.record.liquid.length;
  const series = columnSeries(n);
  const clay = new Float64Array(n);
  const run = ringRunner(e, ring, slotsOf(ring.record, ring.daysEmpty));
  for (let s = 0; s < e.samples; s++) {
    e.closure = Math.max(e.closure, runColumn(ring.record, ring.sets[s], series).closure);
    clayOf(s, clay);
    run(s, series, clay);
  }
}

/** Runs the ring of one sample in both ways and keeps its monthly highs. */
function ringRunner(e: WaterEnsemble, ring: RingInWeather, slots: Slots) {
  const { record, tub, catchment } = ring;
  const n = record.liquid.length;
  const inflow = new Float64Array(n);
  const level = new Float64Array(n);
  const kept = Math.min(DAILY_SAMPLES, e.samples);
  if (e.daily) e.daily.tub = { asIs: new Float32Array(kept * n), keptOut: new Float32Array(kept * n) };
  const dry: Catchment = { ...catchment, uphillArea: 0, roofArea: 0, capped: true };
  return (s: number, series: ReturnType<typeof columnSeries>, clay: Float64Array) => {
    for (const way of WAYS) {
      tubInflow(record, series, tub, way === 'asIs' ? catchment : dry, e.conductivity[s], inflow);
      const { closure } = runTub(tub, { inflow, clay, conductivity: e.conductivity[s] }, level);
      e.closure = Math.max(e.closure, Math.abs(closure) / tub.ringArea);
      highest(e.tub![way], s * e.years * 12, slots, level);
      if (s < kept && e.daily?.tub) e.daily.tub[way].set(level, s * n);
    }
  };
}

/** For each day: year × 12 + month − 1, or −1; and the same where the day lies in the window of emptying. */
interface Slots {
  month: Int16Array;
  window: Int16Array;
}

function slotsOf(record: ClimateRecord, daysEmpty: number): Slots {
  const n = record.liquid.length;
  const slots = { month: new Int16Array(n).fill(-1), window: new Int16Array(n).fill(-1) };
  for (let d = 0; d < n; d++) {
    if (record.year[d] < 0) continue;
    const c = calendarOf(record.firstDay + d);
    slots.month[d] = record.year[d] * 12 + record.month[d] - 1;
    if (c.date <= Math.max(daysEmpty, 1)) slots.window[d] = slots.month[d];
  }
  return slots;
}

function highest(out: MonthlyLevels, offset: number, slots: Slots, series: Float64Array): void {
  for (let d = 0; d < series.length; d++) {
    const m = slots.month[d];
    if (m < 0) continue;
    if (series[d] > out.month[offset + m]) out.month[offset + m] = series[d];
    const w = slots.window[d];
    if (w >= 0 && series[d] > out.window[offset + w]) out.window[offset + w] = series[d];
  }
}
