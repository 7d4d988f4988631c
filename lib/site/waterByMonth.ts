import { type ClimateRecord, calendarOf } from '../climate/index.js';
import { latinNormals } from '../sampling/index.js';
import { keepMonthlyEmptyings, type MonthShares, monthShares } from './emptyingWater.js';
import type { MonthlyLevels } from './monthlyHighs.js';
import type { MonthlyWater } from './monthlyWater.js';
import { type PondInWeather, pairByMonth, pondRunner } from './pondYears.js';
import { type RingInWeather, simulateRing } from './ring.js';
import { fullRing, stormRing } from './tubOf.js';
import {
  asMet,
  type Common,
  noPondYears,
  startEnsemble,
  uphillLevel,
  WAYS,
  type WaterEnsemble,
  type WaterMet,
} from './water.js';

const SYNTHETIC_YEARS = 20;

/**
 * The ensemble where the water is known month by month.
 * @param wetMonths - 1–12, in which a ring is taken as full where there is no weather
 * @param ring - absent where no permeable layer touches the liner
 * @param underLiner - highest level seen under the liner, m above the datum
 * @param daysEmpty - an emptying as planned, days
 * @param weather - the days, and the pond where its days matter; absent: no weather
 */
export function waterByMonth(
  common: Common,
  monthly: MonthlyWater,
  wetMonths: readonly number[],
  ring: Omit<RingInWeather, 'record'> | undefined,
  underLiner: number | undefined,
  daysEmpty: number,
  weather?: { record: ClimateRecord; pond?: PondInWeather },
): WaterEnsemble {
  const record = ring || weather?.pond ? weather?.record : undefined;
  const years = record?.years ?? SYNTHETIC_YEARS;
  const simulated = ring !== undefined && record !== undefined;
  const { samples, seed, unknowns } = common;
  const e = startEnsemble(common, years, ring !== undefined || underLiner !== undefined, daysEmpty);
  const most = monthly.aboveGround
    ? { low: Number.POSITIVE_INFINITY, high: Number.POSITIVE_INFINITY }
    : { low: 0, high: common.highRim };
  const met = asMet(e).map((water) => ({ water, shares: monthShares(water.daysEmpty) }));
  const perYear = latinNormals(samples * years, 1, seed + 17);
  for (let s = 0; s < samples; s++)
    for (let y = 0; y < years; y++) {
      const z = monthly.fixed ? unknowns['water level'][s] : perYear[s * years + y];
      const shift = z * monthly.spread + 0.01 * unknowns.reading[s];
      for (let m = 0; m < 12; m++) {
        const i = (s * years + y) * 12 + m;
        const low = Math.min(-monthly.low[m] + shift, most.low);
        const high = monthly.high ? -monthly.high[m] + shift : uphillLevel(low, e.rise[s], e.highRim);
        e.clayLow.month[i] = low;
        e.clayHigh.month[i] = Math.min(high, most.high);
        if (e.tub && !simulated) {
          // No weather: the ring is taken as full in the wet months, and filled by a heavy day in the others.
          const ground = { level: low, permeability: e.permeability[s] };
          e.tub.asIs.month[i] = wetMonths.includes(m + 1)
            ? Math.max(
                ring ? fullRing(ring.tub, ring.catchment, ground) : Number.NEGATIVE_INFINITY,
                underLiner ?? Number.NEGATIVE_INFINITY,
              )
            : ring
              ? stormRing(ring.tub, ring.catchment, ground)
              : low;
          e.tub.keptOut.month[i] = low;
        }
      }
      for (const { water, shares } of met) keepEmptyingsOf(water, s * years + y, shares, !simulated);
    }
  if (!record) return e;
  const pond = weather?.pond;
  if (pond && !('held' in pond.kept)) e.pond = noPondYears(samples * years * 12, e.tub !== undefined);
  if (ring) simulateRing(e, { ...ring, record }, pond, monthlyClay(e, record));
  else if (pond) {
    const runPond = pondRunner(e, pond, record);
    for (let s = 0; s < samples; s++) runPond(s);
  }
  if (e.pond) pairByMonth(e, e.pond, simulated);
  return e;
}

/** What the emptyings of a year meet, of its months; of the ring only where it is not simulated. */
function keepEmptyingsOf(e: WaterMet, year: number, shares: MonthShares, ring: boolean): void {
  const first = year * 12;
  const yearOf = ({ month }: MonthlyLevels) => month.subarray(first, first + 12);
  const keep = (levels: MonthlyLevels) =>
    keepMonthlyEmptyings({ highest: levels.emptied }, first, shares, yearOf(levels));
  const [low, high] = [yearOf(e.clayLow), yearOf(e.clayHigh)];
  keep(e.clayLow);
  keep(e.clayHigh);
  const higher = high.map((level, m) => Math.max(level, low[m]));
  keepMonthlyEmptyings({ rises: e.rises }, first, shares, higher);
  if (!(ring && e.tub)) return;
  for (const way of WAYS) keep(e.tub[way]);
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
