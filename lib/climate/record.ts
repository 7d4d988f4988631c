import { calendarOf } from './calendar.js';
import { referenceEvaporation } from './hargreaves.js';
import { liquidWater } from './snow.js';

/** A day as observed; absent = not observed. m and °C. */
export interface ObservedDay {
  day: number;
  rain?: number;
  tmin?: number;
  tmax?: number;
  et0?: number;
}

/** A gapless daily record ready for the balances. */
export interface ClimateRecord {
  firstDay: number;
  /** water reaching the ground, m a day */
  liquid: Float64Array;
  /** reference evapotranspiration, m a day */
  demand: Float64Array;
  /** 1–12 */
  month: Uint8Array;
  /** index of the hydrological year, counted from 0; −1 in the incomplete first and last year */
  year: Int16Array;
  years: number;
  filled: { rain: number; demand: number };
}

/**
 * A gapless record from observed days. Missing rain is taken as the mean of that month in the other years and
 * missing temperatures as the mean demand of that month, both counted. Years run from October in the north and
 * from April in the south, so that no wet season is cut.
 * @param days - sorted by day
 * @param latitude - degrees
 * @throws RangeError when there is no day with rain, or no day with temperatures or evaporation
 */
export function climateRecord(days: ObservedDay[], latitude: number): ClimateRecord {
  const firstDay = days[0].day;
  const n = days[days.length - 1].day - firstDay + 1;
  const rain = new Float64Array(n).fill(Number.NaN);
  const tmean = new Float64Array(n).fill(Number.NaN);
  const demand = new Float64Array(n).fill(Number.NaN);
  const month = new Uint8Array(n);
  const year = new Int16Array(n).fill(-1);
  for (const row of days) {
    const d = row.day - firstDay;
    if (row.rain !== undefined) rain[d] = row.rain;
    if (row.tmin !== undefined && row.tmax !== undefined) {
      tmean[d] = (row.tmin + row.tmax) / 2;
      demand[d] = referenceEvaporation(latitude, calendarOf(row.day).dayOfYear, row.tmin, row.tmax);
    }
    if (row.et0 !== undefined) demand[d] = row.et0;
  }
  for (let d = 0; d < n; d++) month[d] = calendarOf(firstDay + d).month;
  const filled = {
    rain: fillByMonth(rain, month, 'rain'),
    demand: fillByMonth(demand, month, 'evaporation'),
  };
  for (let d = 0; d < n; d++) if (Number.isNaN(tmean[d])) tmean[d] = 1; // no temperature: counted as rain
  const { liquid } = liquidWater(rain, tmean);
  return { firstDay, liquid, demand, month, year, years: numberYears(firstDay, n, latitude, year), filled };
}

function fillByMonth(series: Float64Array, month: Uint8Array, what: string): number {
  const sum = new Float64Array(13);
  const count = new Float64Array(13);
  series.forEach((v, d) => {
    if (Number.isNaN(v)) return;
    sum[month[d]] += v;
    count[month[d]]++;
  });
  let missing = 0;
  for (let d = 0; d < series.length; d++) {
    if (!Number.isNaN(series[d])) continue;
    missing++;
    if (count[month[d]] === 0)
      throw new RangeError(`missing ${what}: no day of month ${month[d]} has any in the whole record`);
    series[d] = sum[month[d]] / count[month[d]];
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
