import type { ClimateRecord } from '../climate/index.js';
import { columnSeries, runColumn, type TableFit } from '../groundwater/index.js';
import { latinNormals } from '../sampling/index.js';
import { keepHighest, slotsOf } from './monthlyHighs.js';
import { type RingInWeather, ringRunner } from './ring.js';
import { type Common, DAILY_SAMPLES, startEnsemble, uphillRise, type WaterEnsemble } from './water.js';

const PLACE_SPREAD = 0.05;

/**
 * The ensemble simulated day by day from weather.
 * @param records - of the same days; the first as it was, of which daily levels are kept
 * @param fit - a parameter set a sample
 * @param ring - absent where no permeable layer touches the liner
 */
export function waterByWeather(
  common: Common,
  records: readonly ClimateRecord[],
  fit: TableFit,
  daysEmpty: number,
  ring: Pick<RingInWeather, 'tub' | 'catchment'> | undefined,
): WaterEnsemble {
  const { samples, seed, unknowns } = common;
  const [{ firstDay, years, rain }] = records;
  const n = rain.length;
  const e = startEnsemble(common, years * records.length, ring !== undefined);
  const byYear = latinNormals(samples * e.years, 1, seed + 29);
  const kept = Math.min(DAILY_SAMPLES, samples);
  e.daily = { firstDay, days: n, samples: kept, clay: new Float32Array(kept * n) };
  const series = columnSeries(n);
  const clay = new Float64Array(n);
  records.forEach((record, r) => {
    const slots = slotsOf(record, daysEmpty);
    const runRing = ring && ringRunner(e, { ...ring, record, daysEmpty }, r * years);
    for (let s = 0; s < samples; s++) {
      const p = fit.sets[s];
      const first = s * e.years + r * years;
      e.closure = Math.max(e.closure, runColumn(record, p, series).closure, fit.closure);
      for (let d = 0; d < n; d++) {
        const y = record.year[d];
        const shift = PLACE_SPREAD * unknowns.place[s] + (y >= 0 ? fit.missing[s] * byYear[first + y] : 0);
        clay[d] = -Math.max(series.depth[d] - shift, p.spillDepth);
      }
      keepHighest(e.clayLow, first * 12, slots, clay);
      if (r === 0 && s < kept) e.daily!.clay.set(clay, s * n);
      runRing?.(s, series, clay);
    }
  });
  uphillRise(common).forEach((up, s) => {
    for (let i = s * e.years * 12; i < (s + 1) * e.years * 12; i++) {
      e.clayHigh.month[i] = e.clayLow.month[i] + up;
      e.clayHigh.window[i] = e.clayLow.window[i] + up;
    }
  });
  return e;
}
