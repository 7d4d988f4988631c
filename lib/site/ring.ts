import type { ClimateRecord } from '../climate/index.js';
import {
  type ColumnSeries,
  columnSeries,
  runColumn,
  runTub,
  type TableParameters,
  type TubForcing,
  type TubGeometry,
  tubHeads,
} from '../groundwater/index.js';
import type { PondSeries } from '../pond/index.js';
import { keepEmptyings } from './emptyingWater.js';
import { keepHighestOf, keepHighestSum, monthsOfRecord } from './monthlyHighs.js';
import { type PondInWeather, pondRunner } from './pondYears.js';
import { type Catchment, overflowToRing, tubInflow } from './tubOf.js';
import { asMet, DAILY_SAMPLES, WAYS, type WaterEnsemble } from './water.js';

/** The ring, its catchment and the weather it lies in. */
export interface RingInWeather {
  tub: TubGeometry;
  catchment: Catchment;
  record: ClimateRecord;
  /** of the pond, m above the datum */
  fullLevel: number;
  /** parameter sets for the run-off from above, one a sample */
  sets: TableParameters[];
}

/**
 * Runs the ring of one sample in both ways and keeps its monthly highs.
 * @param firstYear - of the ensemble, that the record's first year stands for; daily levels are kept of the first
 */
export function ringRunner(e: WaterEnsemble, ring: Omit<RingInWeather, 'sets'>, firstYear = 0) {
  const { record, tub, catchment } = ring;
  const months = monthsOfRecord(record);
  const met = asMet(e);
  const n = record.rain.length;
  const inflow = new Float64Array(n);
  const level = new Float64Array(n);
  const kept = Math.min(DAILY_SAMPLES, e.samples);
  const { daily } = e;
  if (daily) daily.tub ??= { asIs: new Float32Array(kept * n), keptOut: new Float32Array(kept * n) };
  const fed = new Float64Array(n);
  /** Adds what leaks out of the pond: it runs only as long as the pond stands higher, so that it raises no ring above it. */
  const raiseByLeak = (drawdown: Float64Array, leaked: Float64Array, forcing: TubForcing) => {
    for (let d = 0; d < n; d++) forcing.inflow[d] += leaked[d];
    runTub(tub, forcing, fed);
    for (let d = 0; d < n; d++) level[d] = Math.min(fed[d], Math.max(level[d], ring.fullLevel - drawdown[d]));
  };
  const away: Catchment = { ...catchment, uphillArea: 0, roofArea: 0, overflow: 'away', capped: true };
  return (s: number, series: ColumnSeries, clay: Float64Array, pond?: PondSeries) => {
    for (const way of WAYS) {
      tubInflow(record, series, tub, way === 'asIs' ? catchment : away, e.permeability[s], inflow);
      if (pond) overflowToRing(way === 'asIs' ? catchment : away, pond.overflow, inflow);
      const forcing = { inflow, clay, permeability: e.permeability[s] };
      const { closure } = runTub(tub, forcing, level);
      e.closure = Math.max(e.closure, Math.abs(closure) / tub.ringArea);
      if (pond?.leaked) raiseByLeak(pond.drawdown, pond.leaked, forcing);
      if (firstYear === 0 && s < kept && daily?.tub) daily.tub[way].set(level, s * n);
      // On which days the swale is in flood nobody knows: it may be any. Shown day by day is the ring without.
      if (tub.flooded !== undefined)
        for (let d = 0; d < n; d++) if (level[d] < tub.flooded) level[d] = tub.flooded;
      tubHeads(tub, level);
      const first = (s * e.years + firstYear) * 12;
      keepHighestOf(e.tub![way].month, first, months, level);
      if (pond && e.pond?.tub) keepHighestSum(e.pond.tub[way], first, months, level, pond.drawdown);
      for (const water of met) keepEmptyings(water.tub![way], first, months, water.daysEmpty, level);
    }
  };
}

/** Runs the ring of every sample where the clay is known month by month. */
export function simulateRing(
  e: WaterEnsemble,
  ring: RingInWeather,
  pond: PondInWeather | undefined,
  clayOf: (sample: number, out: Float64Array) => void,
): void {
  const n = ring.record.rain.length;
  const series = columnSeries(n);
  const clay = new Float64Array(n);
  const run = ringRunner(e, ring);
  const runPond = pond && pondRunner(e, pond, ring.record);
  for (let s = 0; s < e.samples; s++) {
    e.closure = Math.max(e.closure, runColumn(ring.record, ring.sets[s], series).closure);
    clayOf(s, clay);
    run(s, series, clay, runPond?.(s));
  }
}
