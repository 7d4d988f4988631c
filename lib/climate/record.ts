import { InputError } from '../units/index.js';
import { calendarOf } from './calendar.js';
import { DAYS_OF_MONTH } from './dayLength.js';
import { referenceEvaporation } from './hargreaves.js';
import { thornthwaiteYear } from './thornthwaite.js';

/** A day as observed; absent = not observed. */
export interface ObservedDay {
  /** days since 1970-01-01, whole */
  day: number;
  /** rain and snow, m */
  rain?: number;
  /** °C */
  tmin?: number;
  tmax?: number;
  /** reference evapotranspiration, m */
  et0?: number;
}

/** A gapless daily record ready for the balances. */
export interface ClimateRecord {
  /** days since 1970-01-01 */
  firstDay: number;
  /** precipitation, m a day */
  rain: Float64Array;
  /** mean temperature, °C */
  tmean: Float64Array;
  /** some of it fell as snow */
  snows: boolean;
  /** reference evapotranspiration, m a day */
  demand: Float64Array;
  /** 1–12 */
  month: Uint8Array;
  /** index of the hydrological year, counted from 0; −1 in the incomplete first and last year */
  year: Int16Array;
  /** whole hydrological years */
  years: number;
  /** days taken as the mean of their month */
  filled: { rain: number; demand: number };
  /** where most of the demand comes from */
  demandFrom: DemandSource;
  /** no day has a temperature: snow is counted as rain */
  noTemperature: boolean;
}

/** Where the evaporative demand of a record comes from. */
export type DemandSource =
  | 'given'
  | 'Hargreaves–Samani from daily temperatures'
  | 'Thornthwaite from the mean temperatures of its months'
  | 'an ordinary year';

/**
 * A gapless record from observed days. Missing rain, temperature and demand are each taken as the mean of that month
 * in the record, and rain and demand so filled are counted. Demand is what was given; else by Hargreaves–Samani from
 * the day's lowest and highest temperature; where no day of the record has a range of temperatures, by Thornthwaite
 * from its monthly means; where there is none in a month, that of an ordinary year. Years run from October in the north
 * and from April in the south, so that no wet season is cut.
 * @param days - at least one, sorted by day
 * @param latitude - degrees, −65 to 65, south negative
 * @param ordinary - demand of the twelve months of an ordinary year, m a month, January first
 * @returns daily series, with what was filled and where the demand comes from
 * @throws InputError when a month has no rain, or no temperatures or evaporation, in the whole record, and where demand is
 *   to come from temperatures also for latitudes nearer the poles or a month warmer than 38 °C
 */
export function climateRecord(
  days: ObservedDay[],
  latitude: number,
  ordinary?: readonly number[],
): ClimateRecord {
  const firstDay = days[0].day;
  const n = days[days.length - 1].day - firstDay + 1;
  const rain = new Float64Array(n).fill(Number.NaN);
  const tmean = new Float64Array(n).fill(Number.NaN);
  const demand = new Float64Array(n).fill(Number.NaN);
  const month = new Uint8Array(n);
  const year = new Int16Array(n).fill(-1);
  const ranged = days.some(({ tmin, tmax }) => tmin !== undefined && tmax !== undefined && tmax > tmin);
  const given = days.some(({ et0 }) => et0 !== undefined);
  for (const { day, rain: fell, tmin, tmax, et0 } of days) {
    const d = day - firstDay;
    if (fell !== undefined) rain[d] = fell;
    if (tmin !== undefined && tmax !== undefined) {
      tmean[d] = (tmin + tmax) / 2;
      if (ranged) demand[d] = referenceEvaporation(latitude, calendarOf(day).dayOfYear, tmin, tmax);
    }
    if (et0 !== undefined) demand[d] = et0;
  }
  for (let d = 0; d < n; d++) month[d] = calendarOf(firstDay + d).month;
  const noTemperature = tmean.every((t) => Number.isNaN(t));
  let demandFrom: DemandSource = given
    ? 'given'
    : ranged
      ? 'Hargreaves–Samani from daily temperatures'
      : 'an ordinary year';
  if (noTemperature) tmean.fill(1);
  else fillByMonth(tmean, month, 'temperature');
  if (!(noTemperature || ranged || given)) {
    const monthly = thornthwaiteYear(meansOf(tmean, month), latitude);
    for (let d = 0; d < n; d++) demand[d] = monthly[month[d] - 1] / DAYS_OF_MONTH[month[d] - 1];
    demandFrom = 'Thornthwaite from the mean temperatures of its months';
  }
  const filled = {
    rain: fillByMonth(rain, month, 'rain'),
    demand: fillByMonth(demand, month, 'evaporation', ordinary),
  };
  const snows = tmean.some((t, d) => t < 0 && rain[d] > 0);
  const years = numberYears(firstDay, n, latitude, year);
  return {
    firstDay,
    rain,
    tmean,
    snows,
    demand,
    month,
    year,
    years,
    filled,
    demandFrom,
    noTemperature,
  };
}

/** Mean of each month, January first. */
function meansOf(series: Float64Array, month: Uint8Array): number[] {
  const sum = new Float64Array(13);
  const count = new Float64Array(13);
  series.forEach((v, d) => {
    if (Number.isNaN(v)) return;
    sum[month[d]] += v;
    count[month[d]]++;
  });
  return Array.from({ length: 12 }, (_, m) => sum[m + 1] / count[m + 1]);
}

/** Fills every gap of a series with its month's mean, else with that of an ordinary year. */
function fillByMonth(
  series: Float64Array,
  month: Uint8Array,
  what: string,
  ordinary?: readonly number[],
): number {
  const means = meansOf(series, month);
  let missing = 0;
  for (let d = 0; d < series.length; d++) {
    if (!Number.isNaN(series[d])) continue;
    missing++;
    const m = month[d] - 1;
    const value = Number.isNaN(means[m]) && ordinary ? ordinary[m] / DAYS_OF_MONTH[m] : means[m];
    if (Number.isNaN(value))
      throw new InputError(
        'missing-input',
        `missing ${what}: no day of month ${m + 1} has any in the whole record`,
      );
    series[d] = value;
  }
  return missing;
}

function numberYears(firstDay: number, n: number, latitude: number, year: Int16Array): number {
  const startMonth = latitude >= 0 ? 10 : 4;
  const starts: number[] = [];
  for (let d = 0; d < n; d++) {
    const c = calendarOf(firstDay + d);
    if (c.month === startMonth && c.date === 1) starts.push(d);
  }
  // The day after the record may be the start of the next year.
  const after = calendarOf(firstDay + n);
  if (after.month === startMonth && after.date === 1) starts.push(n);
  for (let y = 0; y + 1 < starts.length; y++) year.fill(y, starts[y], starts[y + 1]);
  return Math.max(starts.length - 1, 0);
}
