/** weather.csv, a row a day, and climate.csv, a row a month of an ordinary year. */

import { MONTHS } from '../climate/index.js';
import { date, dateText, month } from './calendar.js';
import { named, quantity, required } from './column.js';
import { matchHeader } from './header.js';
import type { Findings } from './problem.js';
import { distinct, sorted } from './rows.js';
import type { Sheet } from './sheet.js';
import type { ClimateMonth, WeatherDay } from './survey.js';
import { readTable } from './table.js';
import { plainWeather } from './weatherSheet.js';

/** More days missing than this times those there are: a record would be mostly made up. */
const SPARSE = 2;
const TEMPERATURE = { min: -60, max: 60 };

/** What weather services call rain, and what grass under the sun would take. */
const RAIN = ['rainfall', 'rainfall_amount', 'precipitation', 'precipitation_amount', 'precip', 'prcp'];
const ET0 = ['evapotranspiration', 'reference_evapotranspiration', 'potential_evapotranspiration', 'pet'];

/** The columns of weather.csv. */
export const DAY_COLUMNS = {
  date: required(date()),
  rain: named(quantity('length', { min: 0, max: 2, oddAbove: 0.4 }), ...RAIN),
  tmin: named(
    quantity('temperature', TEMPERATURE),
    'temp_min',
    'min_temp',
    'min_temperature',
    'minimum_temp',
    'minimum_temperature',
  ),
  tmax: named(
    quantity('temperature', TEMPERATURE),
    'temp_max',
    'max_temp',
    'max_temperature',
    'maximum_temp',
    'maximum_temperature',
  ),
  et0: named(quantity('length', { min: -0.005, max: 0.03, oddAbove: 0.015 }), ...ET0),
};

/** Does a row of names head daily weather: a date, and rain with a unit? */
export function headsWeather(names: readonly string[]): boolean {
  const found = names.flatMap((name) => {
    const match = matchHeader(name, DAY_COLUMNS);
    return 'code' in match ? [] : [match.name];
  });
  return found.includes('date') && found.includes('rain');
}

/** Reads weather.csv: one row a day in order; days without a row are told. */
export function readWeather(sheet: Sheet | undefined, findings: Findings): WeatherDay[] {
  const once = distinct(
    readTable(sheet && plainWeather(sheet, DAY_COLUMNS, findings), DAY_COLUMNS, findings),
    ({ date: day }) => `day (${dateText(day)})`,
    (said) => said,
    'date',
    findings,
  );
  const rows = sorted(
    once,
    () => 'day',
    ({ date: day }) => day,
    findings,
  );
  let missing = 0;
  rows.forEach((row, at) => {
    const { date: day, tmin, tmax } = row.values;
    const before = rows[at - 1]?.values.date;
    if (before !== undefined) missing += day - before - 1;
    if (tmin !== undefined && tmax !== undefined && tmin > tmax) {
      const place = row.cell('tmin');
      const message = `invalid '${place.found}' - the day's lowest is above its highest, '${row.cell('tmax').found}'`;
      findings.refuse({
        ...place,
        code: 'contradiction',
        message,
        remedy: 'Check the two temperatures and their units.',
      });
    }
  });
  const first = rows[0];
  if (first && missing > SPARSE * rows.length) {
    findings.refuse({
      ...first.cell('date'),
      code: 'missing-days',
      message: `missing days - ${missing} without a row, ${rows.length} with one`,
      remedy: 'Look for a slip in a year, or take out the rows that stand apart.',
    });
  } else if (missing > 0 && findings.clean('weather.csv')) {
    findings.warn({
      file: 'weather.csv',
      code: 'missing-days',
      message: `missing days - ${missing} between the first and the last have no row`,
    });
  }
  return rows.map(({ values: { date: day, ...rest } }) => ({ day, ...rest }));
}

/** The columns of climate.csv. */
export const MONTH_COLUMNS = {
  month: required(month()),
  rain: named(quantity('length', { min: 0, max: 5, oddAbove: 1 }), ...RAIN),
  tmean: named(quantity('temperature', TEMPERATURE), 'mean_temp', 'mean_temperature', 'temperature'),
  et0: named(quantity('length', { min: 0, max: 0.6, oddAbove: 0.3 }), ...ET0),
};

/** Reads climate.csv: all twelve months, in order. */
export function readClimate(sheet: Sheet | undefined, findings: Findings): ClimateMonth[] {
  const once = distinct(
    readTable(sheet, MONTH_COLUMNS, findings),
    ({ month }) => `month (${month})`,
    (said) => said,
    'month',
    findings,
  );
  const rows = sorted(
    once,
    () => 'year',
    ({ month }) => month,
    findings,
  );
  const absent = MONTHS.filter((month) => !rows.some((row) => row.values.month === month));
  if (sheet && absent.length > 0 && findings.clean('climate.csv')) {
    findings.refuse({
      file: 'climate.csv',
      column: 'month',
      code: 'missing-month',
      message: `missing ${absent.length === 1 ? 'month' : 'months'} ${absent.join(', ')} - an ordinary year has twelve`,
      expected: '1 to 12',
      remedy: 'Add the rows, or take the file out.',
    });
  }
  return rows.map((row) => ({ ...row.values, origin: row.origin }));
}
