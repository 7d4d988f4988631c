import {
  type ClimateRecord,
  climateGaps,
  climateRecord,
  DAYS_OF_MONTH,
  isWetHalf,
  MONTHS,
  type MonthlySurplus,
  monthlySurplus,
  SUN_LATITUDE,
} from '../climate/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { InputError } from '../units/index.js';
import type { Assumptions } from './assumptions.js';

/** The latitude for the formulas of the sun, which end short of the polar circle. */
const sunLatitude = (latitude: number) => Math.sign(latitude) * Math.min(Math.abs(latitude), SUN_LATITUDE);

/**
 * What `climate.csv` says of an ordinary year, or undefined where there is none or it cannot be reckoned.
 * @param capacity - available water of the root zone, m
 */
export function ordinaryYearOf(
  survey: Survey,
  latitude: number,
  capacity: number,
  warnings: Warning[],
): MonthlySurplus | undefined {
  if (survey.climate.length === 0) return undefined;
  const refuse = (message: string) => {
    warnings.push({
      code: 'climate-not-used',
      message: `climate.csv is not used: ${message}`,
      file: 'climate.csv',
    });
    return undefined;
  };
  const gaps = climateGaps(survey.climate);
  if (gaps.length > 0) return refuse(gaps.join('; '));
  try {
    return monthlySurplus(survey.climate, sunLatitude(latitude), capacity);
  } catch (error) {
    if (error instanceof InputError) return refuse(error.message);
    throw error;
  }
}

/**
 * What a daily record says of an ordinary year: the means of its months, through the same bookkeeping as `climate.csv`.
 * @param capacity - available water of the root zone, m
 * @returns undefined where every month is too cold for anything to melt
 */
export function ordinaryYearOfRecord(
  record: Pick<ClimateRecord, 'rain' | 'tmean' | 'demand' | 'month' | 'noTemperature'>,
  latitude: number,
  capacity: number,
): MonthlySurplus | undefined {
  const { rain, tmean, demand, month, noTemperature } = record;
  const days = new Float64Array(13);
  const sums = { rain: new Float64Array(13), tmean: new Float64Array(13), demand: new Float64Array(13) };
  month.forEach((m, d) => {
    days[m]++;
    sums.rain[m] += rain[d];
    sums.tmean[m] += tmean[d];
    sums.demand[m] += demand[d];
  });
  const months = MONTHS.filter((m) => days[m] > 0).map((m) => ({
    month: m,
    rain: (sums.rain[m] / days[m]) * DAYS_OF_MONTH[m - 1],
    tmean: noTemperature ? undefined : sums.tmean[m] / days[m],
    et0: (sums.demand[m] / days[m]) * DAYS_OF_MONTH[m - 1],
  }));
  return climateGaps(months).length > 0 ? undefined : monthlySurplus(months, sunLatitude(latitude), capacity);
}

/**
 * Months in which the ground is expected to stand wet: those with water to spare in an ordinary year and the month
 * after each (our choice: tight ground drains slowly); without weather or `climate.csv` the wet half-year of the
 * hemisphere.
 * @param year - by the best record there is, and `file` that it comes from
 */
export function wetMonthsOf(
  year: { surplus: MonthlySurplus; file: 'weather.csv' | 'climate.csv' } | undefined,
  latitude: number,
  assume: Assumptions,
): number[] {
  const half = MONTHS.filter((m) => isWetHalf(m, latitude));
  if (!year) return half;
  const { surplus, file } = year;
  const spare = new Set([...surplus.wetMonths, ...surplus.doubtfulMonths]);
  const wet = MONTHS.filter((m) => spare.has(m) || spare.has(((m + 10) % 12) + 1));
  if (wet.length === 0) {
    assume.add(
      'wet months',
      half.join(';'),
      '',
      `no month of ${file} has water to spare: taken by hemisphere`,
    );
    return half;
  }
  assume.add(
    'wet months',
    wet.join(';'),
    '',
    `${file}: months with more rain than roots and sun take, and the month after each`,
  );
  return wet;
}

/** The daily weather as a record, or undefined where there is none or it cannot be used. */
export function recordOf(
  survey: Survey,
  latitude: number,
  year: MonthlySurplus | undefined,
  warnings: Warning[],
): ClimateRecord | undefined {
  if (survey.weather.length === 0) return undefined;
  const tell = (code: string, message: string) => warnings.push({ code, message, file: 'weather.csv' });
  let record: ClimateRecord;
  try {
    record = climateRecord(survey.weather, sunLatitude(latitude), year?.demand);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    tell('weather-not-used', `weather.csv is not used: ${error.message}`);
    return undefined;
  }
  if (record.years === 0) {
    tell('weather-too-short', 'weather.csv holds no whole year from one autumn to the next; it is not used');
    return undefined;
  }
  if (Math.abs(latitude) > SUN_LATITUDE)
    tell(
      'latitude-polar',
      `the sun of ${SUN_LATITUDE} deg is taken for ${latitude} deg: the formulas end there`,
    );
  const { rain, demand } = record.filled;
  if (rain > 0 || (demand > 0 && record.demandFrom !== 'an ordinary year'))
    tell(
      'weather-filled',
      `${rain} days without rain and ${demand} without temperatures or evaporation were filled with that month's mean`,
    );
  if (record.demandFrom === 'an ordinary year')
    tell('weather-no-evaporation', 'no day has temperatures or evaporation: those of climate.csv are taken');
  if (record.demandFrom.startsWith('Thornthwaite'))
    tell(
      'weather-means-only',
      `no day has a lowest and a highest temperature: evaporation by ${record.demandFrom}`,
    );
  if (record.noTemperature && record.demandFrom === 'given')
    tell('weather-no-temperature', 'no day has a temperature: snow is counted as rain');
  return record;
}
