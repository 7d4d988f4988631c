import type { ClimateRecord } from '../climate/index.js';
import {
  columnSeries,
  errorSeries,
  pondedLevel,
  runColumn,
  spinUp,
  type TableFit,
} from '../groundwater/index.js';
import { keepEmptyings, keepRises } from './emptyingWater.js';
import { keepHighestOf, keepHighestSum, monthsOfRecord } from './monthlyHighs.js';
import { type PondInWeather, pondRunner } from './pondYears.js';
import { type RingInWeather, ringRunner } from './ring.js';
import {
  asMet,
  type Common,
  DAILY_SAMPLES,
  noPondYears,
  PLACE_SPREAD,
  startEnsemble,
  takeClay,
  uphillLevel,
  uphillLevels,
  type WaterEnsemble,
} from './water.js';

/**
 * The ensemble simulated day by day from weather.
 * @param records - of the same days; the first as it was, of which daily levels are kept
 * @param fit - a parameter set a sample
 * @param free - level to which the model error lifts the water freely, m above the datum
 * @param ring - absent where no permeable layer touches the liner
 * @param pond - absent where a level is held and nothing that runs over reaches a ring
 * @param before - of the same ground, weather and emptyings: the clay's water is taken over
 */
export function waterByWeather(
  common: Common,
  records: readonly ClimateRecord[],
  fit: TableFit,
  free: number,
  daysEmpty: number,
  ring: Pick<RingInWeather, 'tub' | 'catchment' | 'fullLevel'> | undefined,
  pond: PondInWeather | undefined,
  before?: WaterEnsemble,
): WaterEnsemble {
  const { samples, seed, unknowns } = common;
  const [{ firstDay, years, rain }] = records;
  const n = rain.length;
  const e = startEnsemble(common, years * records.length, ring !== undefined, daysEmpty);
  // Some of the years only, where a what-if counts those.
  const clayOf = before?.years === e.years ? before : undefined;
  if (clayOf) takeClay(e, clayOf);
  const met = asMet(e);
  const missed = errorSeries(seed + 29);
  const error = new Float64Array(n);
  const kept = Math.min(DAILY_SAMPLES, samples);
  e.daily = { firstDay, days: n, samples: kept, clay: clayOf?.daily?.clay ?? new Float32Array(kept * n) };
  if (pond && !('held' in pond.kept)) e.pond = noPondYears(samples * e.years * 12, ring !== undefined);
  const series = columnSeries(n);
  const clay = new Float64Array(n);
  const uphill = new Float64Array(n);
  records.forEach((record, r) => {
    const months = monthsOfRecord(record);
    const start = spinUp(record, 0);
    const runRing = ring && ringRunner(e, { ...ring, record }, r * years);
    const runPond = pond && pondRunner(e, pond, record, r * years);
    for (let s = 0; s < samples; s++) {
      const p = fit.sets[s];
      const first = s * e.years + r * years;
      e.closure = Math.max(e.closure, runColumn(record, p, series, start(p)).closure, fit.closure);
      missed(error);
      const place = PLACE_SPREAD * unknowns.place[s];
      levelsWithError(series.depth, error, place, fit.modelError[s], free, p.porosity, clay);
      uphillLevels(clay, e.rise[s], e.highRim, uphill);
      if (!clayOf) {
        keepHighestOf(e.clayLow.month, first * 12, months, clay);
        for (const water of met) {
          keepEmptyings(water.clayLow, first * 12, months, water.daysEmpty, clay);
          keepRises(water.rises, first * 12, months, water.daysEmpty, uphill);
        }
        if (r === 0 && s < kept) e.daily!.clay.set(clay, s * n);
      }
      const beside = runPond?.(s);
      runRing?.(s, series, clay, beside);
      if (!beside || !e.pond) continue;
      keepHighestSum(e.pond.clayLow, first * 12, months, clay, beside.drawdown);
      keepHighestSum(e.pond.clayHigh, first * 12, months, uphill, beside.drawdown);
    }
  });
  if (clayOf) return e;
  for (const { clayLow, clayHigh } of met)
    e.rise.forEach((up, s) => {
      for (let i = s * e.years * 12; i < (s + 1) * e.years * 12; i++) {
        clayHigh.month[i] = uphillLevel(clayLow.month[i], up, e.highRim);
        clayHigh.emptied[i] = uphillLevel(clayLow.emptied[i], up, e.highRim);
      }
    });
  return e;
}

/** Levels of a sample, m above the datum: depths lifted by the place and by the error, above the ground only as it may. */
function levelsWithError(
  depth: Float64Array,
  error: Float64Array,
  place: number,
  spread: number,
  free: number,
  porosity: number,
  out: Float64Array,
): void {
  for (let d = 0; d < out.length; d++) {
    const level = place + spread * error[d] - depth[d];
    out[d] = level <= free ? level : pondedLevel.compute(level, free, porosity);
  }
}
