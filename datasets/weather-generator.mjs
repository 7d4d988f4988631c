/**
 * Writes weather.csv and water.csv of the invented surveys beside it, the same bytes every time:
 *
 *   node datasets/weather-generator.mjs
 *
 * Rain: a chain of two states, wet and dry, with chances by month, and gamma amounts on wet days (the usual
 * daily weather generator: Richardson 1981). Temperature: a yearly cosine, an anomaly that remembers yesterday
 * (first-order autoregression), a daily range that is wider in summer; wet days are cooler and narrower.
 * Numbers of each climate are our choice, shaped on a cool temperate country with rain in all months and a
 * winter surplus; no station was copied.
 */

import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gamma, mulberry32, normal } from './random.mjs';
import { readPipe } from './standpipes.mjs';
import { SURVEYS } from './surveys.mjs';
import { simulateTable } from './water-table.mjs';

const DAY_MS = 86400000;

/** @param {string} iso @returns {number} days since 1970-01-01 */
export const dayOf = (iso) => Date.parse(`${iso}T00:00:00Z`) / DAY_MS;
/** @param {number} day @returns {string} ISO 8601 */
export const isoOf = (day) => new Date(day * DAY_MS).toISOString().slice(0, 10);

const FIRST_DAY = dayOf('1999-10-01');
const LAST_DAY = dayOf('2024-09-30');

const DAYS_IN_MONTH = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Chance of a wet day after a dry one, January to December. */
const WET_AFTER_DRY = [0.33, 0.29, 0.28, 0.26, 0.25, 0.24, 0.23, 0.25, 0.26, 0.33, 0.35, 0.35];
/** Chance of a wet day after a wet one. */
const WET_AFTER_WET = [0.66, 0.63, 0.62, 0.6, 0.58, 0.56, 0.54, 0.56, 0.58, 0.66, 0.67, 0.67];
/** Below 1: many small falls, a few large ones. */
const GAMMA_SHAPE = 0.75;
const WARMEST_DAY_OF_YEAR = 203;
const ANOMALY_MEMORY = 0.75;
const ANOMALY_SPREAD_C = 2.6;
const WET_COOLING_C = 0.8;
const WET_NARROWING = 0.75;

/**
 * @param {{ rainByMonth: number[], meanTemperature: number, temperatureSwing: number, winterRange: number,
 *   summerRange: number }} climate mm a month; °C: yearly mean, half the yearly swing, daily ranges
 * @param {number} seed
 * @returns {{ day: number, rain: number, tmin: number, tmax: number }[]} mm and °C, unrounded
 */
export function generateWeather(climate, seed) {
  const uniform = mulberry32(seed);
  const days = [];
  let wet = false;
  let anomaly = 0;
  for (let day = FIRST_DAY; day <= LAST_DAY; day++) {
    const month = new Date(day * DAY_MS).getUTCMonth();
    const wetFraction = WET_AFTER_DRY[month] / (1 + WET_AFTER_DRY[month] - WET_AFTER_WET[month]);
    const wetDayMean = climate.rainByMonth[month] / (DAYS_IN_MONTH[month] * wetFraction);
    wet = uniform() < (wet ? WET_AFTER_WET[month] : WET_AFTER_DRY[month]);
    const rain = wet ? gamma(uniform, GAMMA_SHAPE, wetDayMean) : 0;

    const dayOfYear = day - dayOf(`${new Date(day * DAY_MS).getUTCFullYear()}-01-01`) + 1;
    const season = Math.cos((2 * Math.PI * (dayOfYear - WARMEST_DAY_OF_YEAR)) / 365.25);
    const innovation = ANOMALY_SPREAD_C * Math.sqrt(1 - ANOMALY_MEMORY * ANOMALY_MEMORY);
    anomaly = ANOMALY_MEMORY * anomaly + innovation * normal(uniform);
    const mean =
      climate.meanTemperature + climate.temperatureSwing * season + anomaly - (wet ? WET_COOLING_C : 0);
    const clearRange =
      (climate.summerRange + climate.winterRange) / 2 +
      ((climate.summerRange - climate.winterRange) / 2) * season;
    const range = clearRange * (wet ? WET_NARROWING : 1) * (0.75 + 0.5 * uniform());
    days.push({ day, rain, tmin: mean - range / 2, tmax: mean + range / 2 });
  }
  return days;
}

const trimmed = (value, decimals) => `${Number(value.toFixed(decimals))}`;

/** The text of weather.csv: tenths of a millimetre and of a degree, or hundredths of an inch and whole °F. */
function weatherCsv(days, units) {
  const us = units === 'us';
  const rows = days.map(({ day, rain, tmin, tmax }) =>
    us
      ? [isoOf(day), trimmed(rain / 25.4, 2), trimmed(tmin * 1.8 + 32, 0), trimmed(tmax * 1.8 + 32, 0)]
      : [isoOf(day), trimmed(rain, 1), trimmed(tmin, 1), trimmed(tmax, 1)],
  );
  const header = us ? ['date', 'rain_in', 'tmin_f', 'tmax_f'] : ['date', 'rain_mm', 'tmin_c', 'tmax_c'];
  return `${[header, ...rows].map((row) => row.join(',')).join('\n')}\n`;
}

/** 2.381 m -> `7 ft 9 3/4 in`, to the quarter inch. */
function feetAndInches(metres) {
  const quarters = Math.round((metres / 0.0254) * 4);
  const inches = Math.floor((quarters % 48) / 4);
  const fraction = ['', ' 1/4', ' 1/2', ' 3/4'][quarters % 4];
  return `${Math.floor(quarters / 48)} ft ${inches}${fraction} in`;
}

/** The text of water.csv: the day the pipes were set, then the dips, as a diary. */
function waterCsv({ units, pipes, opened, dips, readingSeed, dipPipe }, tableDepths) {
  const us = units === 'us';
  const uniform = mulberry32(readingSeed);
  const depth = (metres) => (us ? feetAndInches(metres) : metres.toFixed(2));
  const diameter = (metres) => trimmed(us ? metres / 0.0254 : metres * 100, 2);
  const [long, short] = us ? ['ft', 'in'] : ['m', 'cm'];
  const header = `pit,date,time,reading,depth_${long},hole_depth_${long},hole_diameter_${short},pipe_bore_${short},open_from_${long},note`;
  const rows = pipes.flatMap((pipe) => {
    const hole = [depth(pipe.floor), diameter(pipe.holeDiameter), diameter(pipe.bore), depth(pipe.openFrom)];
    const looks = readPipe(pipe, tableDepths, dayOf(opened), dips.map(dayOf), uniform);
    return [
      [pipe.pit, opened, '15:00', 'opened', depth(pipe.floor), ...hole, pipe.note],
      ...looks.map((look) => {
        const reading = look.depth === undefined ? ['dry', ''] : ['level', depth(look.depth)];
        return [pipe.pit, isoOf(look.day), '09:00', ...reading, ...hole, ''];
      }),
    ];
  });
  if (dipPipe !== undefined)
    for (const date of dips) {
      const read = depth(dipPipe + 0.01 * (2 * uniform() - 1));
      rows.push(['dip-pipe', date, '09:00', 'level', read, '', '', '', '', '']);
    }
  // Stable: on one day the pipes keep their order.
  rows.sort(([, a], [, b]) => (a < b ? -1 : a > b ? 1 : 0));
  return `${[header, ...rows.map((row) => row.join(','))].join('\n')}\n`;
}

/**
 * @param {string} folder one of the keys of SURVEYS
 * @returns {{ 'weather.csv': string, 'water.csv': string }} the files' text
 */
export function generateSurvey(folder) {
  const survey = SURVEYS[folder];
  const weather = generateWeather(survey.climate, survey.weatherSeed);
  const { depths } = simulateTable(weather, survey.latitude, survey.store);
  return { 'weather.csv': weatherCsv(weather, survey.units), 'water.csv': waterCsv(survey, depths) };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const folder of Object.keys(SURVEYS))
    for (const [file, text] of Object.entries(generateSurvey(folder)))
      writeFileSync(new URL(`${folder}/${file}`, import.meta.url), text);
}
