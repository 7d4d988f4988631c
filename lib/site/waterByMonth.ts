import { type ClimateRecord, calendarOf } from '../climate/index.js';
import { latinNormals } from '../sampling/index.js';
import type { MonthlyWater } from './monthlyWater.js';
import { type RingInWeather, simulateRing } from './ring.js';
import { type Common, startEnsemble, uphillRise, type WaterEnsemble } from './water.js';

const SYNTHETIC_YEARS = 20;

/**
 * The ensemble where the water is known month by month.
 * @param wetMonths - 1–12, in which a ring is taken as full where there is no weather
 * @param ring - absent where no permeable layer touches the liner; its record where there is weather
 * @param underLiner - highest level seen under the liner, m above the datum
 */
export function waterByMonth(
  common: Common,
  monthly: MonthlyWater,
  wetMonths: readonly number[],
  ring: (Omit<RingInWeather, 'record'> & { record?: ClimateRecord }) | undefined,
  underLiner: number | undefined,
): WaterEnsemble {
  const record = ring?.record;
  const years = record?.years ?? SYNTHETIC_YEARS;
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
          // No weather: the ring is taken as full in the wet months, and as the clay is otherwise.
          const full = wetMonths.includes(m + 1)
            ? Math.max(ring?.tub.spill ?? Number.NEGATIVE_INFINITY, underLiner ?? Number.NEGATIVE_INFINITY)
            : low;
          e.tub.asIs.month[i] = e.tub.asIs.window[i] = full;
          e.tub.keptOut.month[i] = e.tub.keptOut.window[i] = low;
        }
      }
    }
  if (record && ring && e.tub) simulateRing(e, { ...ring, record }, monthlyClay(e, record));
  return e;
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
