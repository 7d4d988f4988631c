/** Weather against the calendar, the latitude and itself. Limits: extremes of inhabited places, from memory. */

import { calendarOf } from '../climate/index.js';
import { dateText } from './calendar.js';
import { type Doubt, Doubts } from './doubt.js';
import type { Survey } from './survey.js';

/** Rain of a year outside deserts and rain forests, m. */
const DRIEST = 0.12;
const WETTEST = 6;
/** Demand of a year, m. */
const LEAST_DEMAND = 0.2;
const MOST_DEMAND = 2.8;
/** A value that repeats on so many wet days running was made up, or a cell filled down. */
const RUN = 12;
/** Days that say something of a year. */
const ENOUGH = 200;

interface Months {
  rain: number;
  demand: number | undefined;
  /** by month, °C; absent where a month is not known */
  temperature: number[] | undefined;
  file: string;
}

/** What is odd about weather and climate. */
export function weatherDoubts(survey: Survey, today: number): Doubt[] {
  const doubts = new Doubts();
  const { weather } = survey;
  const last = weather.at(-1);
  const here = { file: 'weather.csv' };
  doubts.when(
    last !== undefined && last.day > today,
    { ...here, column: 'date' },
    `${dateText(last?.day ?? 0)} has not come yet: check the year`,
  );
  const run = longestRun(weather.map(({ rain }) => rain));
  doubts.when(
    run >= RUN,
    { ...here, column: 'rain' },
    `the same rain on ${run} days running: check how the gaps were filled`,
  );
  const steady = (values: (number | undefined)[]) => new Set(values).size <= 2;
  doubts.when(
    weather.length > ENOUGH && weather[0]?.tmax !== undefined && steady(weather.map(({ tmax }) => tmax)),
    { ...here, column: 'tmax' },
    'the temperature never changes: check the column',
  );
  doubts.when(
    weather.length > ENOUGH && weather.every(({ tmin, tmax }) => tmin !== undefined && tmin === tmax),
    { ...here, column: 'tmin' },
    "the day's lowest and highest temperature are always the same: check the columns",
  );
  for (const months of [ofWeather(survey), ofClimate(survey)]) if (months) yearly(months, survey, doubts);
  return doubts.list;
}

function yearly({ rain, demand, temperature, file }: Months, { site }: Survey, doubts: Doubts): void {
  const millimetres = (value: number) => `${Math.round(1000 * value)} mm`;
  doubts.when(
    rain < DRIEST || rain > WETTEST,
    { file, column: 'rain' },
    `${millimetres(rain)} of rain in a year: check the unit`,
  );
  doubts.when(
    demand !== undefined && (demand < LEAST_DEMAND || demand > MOST_DEMAND),
    { file, column: 'et0' },
    `grass would use ${millimetres(demand ?? 0)} in a year: check the unit`,
  );
  if (!temperature) return;
  const mean = temperature.reduce((a, b) => a + b, 0) / 12;
  const degrees = (value: number) => `${Math.round(value)} °C`;
  const latitude = site.latitude;
  const away = Math.abs(latitude ?? 50);
  // About 27 °C at the equator, falling by 0.4 °C a degree beyond 20°.
  const usual = 27 - 0.5 * Math.max(away - 20, 0);
  const slack = latitude === undefined ? 22 : 14;
  doubts.when(
    Math.abs(mean - usual) > slack,
    { file, column: file === 'climate.csv' ? 'tmean' : 'tmax' },
    `${degrees(mean)} in the mean of a year${latitude === undefined ? '' : ` at ${latitude}°`}: check the unit and the latitude`,
  );
  const warm = temperature.indexOf(Math.max(...temperature)) + 1;
  const range = Math.max(...temperature) - Math.min(...temperature);
  if (latitude === undefined) return;
  const northern = warm >= 5 && warm <= 9;
  const southern = warm >= 11 || warm <= 3;
  doubts.when(
    away > 23 && range > 4 && (latitude > 0 ? southern : northern),
    { file, column: 'date' },
    `month ${warm} is the warmest, and at ${latitude}° it is winter: check the dates, and that a latitude in the south has a minus`,
  );
  doubts.when(
    away < 15 && range > 12,
    { file, column: 'date' },
    `the months differ by ${degrees(range)}, which they do not at ${latitude}°: check the latitude`,
  );
}

function ofWeather({ weather }: Survey): Months | undefined {
  if (weather.length < ENOUGH) return undefined;
  const sums = Array.from({ length: 12 }, () => ({ days: 0, warm: 0, rain: 0, demand: 0, asked: 0, all: 0 }));
  for (const { day, rain, tmin, tmax, et0 } of weather) {
    const of = sums[calendarOf(day).month - 1];
    if (!of) continue;
    of.all++;
    of.rain += rain ?? 0;
    if (tmin !== undefined && tmax !== undefined) {
      of.days++;
      of.warm += (tmin + tmax) / 2;
    }
    if (et0 !== undefined) {
      of.asked++;
      of.demand += et0;
    }
  }
  const month = 365.25 / 12;
  const known = (count: (of: (typeof sums)[number]) => number) => sums.every((of) => count(of) > 5);
  if (!known(({ all }) => all)) return undefined;
  return {
    file: 'weather.csv',
    rain: sums.reduce((sum, { rain, all }) => sum + (month * rain) / all, 0),
    demand: known(({ asked }) => asked)
      ? sums.reduce((sum, { demand, asked }) => sum + (month * demand) / asked, 0)
      : undefined,
    temperature: known(({ days }) => days) ? sums.map(({ warm, days }) => warm / days) : undefined,
  };
}

function ofClimate({ climate }: Survey): Months | undefined {
  if (climate.length < 12) return undefined;
  const means = climate.flatMap(({ tmean }) => (tmean === undefined ? [] : [tmean]));
  const demands = climate.flatMap(({ et0 }) => (et0 === undefined ? [] : [et0]));
  return {
    file: 'climate.csv',
    rain: climate.reduce((sum, { rain }) => sum + (rain ?? 0), 0),
    demand: demands.length === 12 ? demands.reduce((a, b) => a + b, 0) : undefined,
    temperature: means.length === 12 ? means : undefined,
  };
}

/** Length of the longest run of one value above nought. */
function longestRun(values: (number | undefined)[]): number {
  let longest = 0;
  let run = 0;
  values.forEach((value, i) => {
    run = value !== undefined && value > 0 && value === values[i - 1] ? run + 1 : 1;
    if (value) longest = Math.max(longest, run);
  });
  return longest;
}
