/**
 * Survey folders whose dips come from water tables of another build than ours: how well the middle of `water-year.csv`
 * meets the levels after the last dip, and how long it takes.
 */
import { describe, expect, test } from 'vitest';
import { generateWeather } from '../../datasets/weather-generator.mjs';
import {
  calendarOf,
  extraterrestrialRadiation,
  isoDate,
  type ObservedDay,
  solarDeclination,
} from '../../lib/climate/index.js';
import { assess } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';
import { LATITUDE, realDays } from '../weather.js';
import {
  drainedLayers,
  efficiency,
  type Forcing,
  recorded,
  thresholdDrain,
  tillCascade,
} from './otherGround.js';

type Day = Required<Pick<ObservedDay, 'day' | 'rain' | 'tmin' | 'tmax'>>;
const invented = (
  rainByMonth: number[],
  meanTemperature: number,
  temperatureSwing: number,
  seed: number,
): Day[] =>
  generateWeather(
    { rainByMonth, meanTemperature, temperatureSwing, winterRange: 6, summerRange: 11 },
    seed,
  ).map((d) => ({ ...d, rain: d.rain / 1000 }));
/** Long winters under snow, rain mostly in summer. */
const snowy = (seed: number) => invented([45, 34, 35, 38, 45, 62, 75, 70, 62, 62, 58, 52], 5.6, 11, seed);
const mild = (seed: number) => invented([72, 54, 54, 50, 52, 55, 55, 62, 60, 80, 80, 78], 10.2, 6.8, seed);

/** Evaporation of another formula than the library's: radiation times temperature above −5 °C (Oudin 2005, from memory). */
function evaporationOf(days: Day[], latitude: number): Float64Array {
  return Float64Array.from(days, ({ day, tmin, tmax }) => {
    const { dayOfYear } = calendarOf(day);
    const f = (latitude * Math.PI) / 180;
    const radiation = extraterrestrialRadiation.compute(f, solarDeclination.compute(dayOfYear), dayOfYear);
    return Math.max((radiation / 2.45) * (((tmin + tmax) / 2 + 5) / 100), 0) / 1000;
  });
}

const SAND = 'pit,top_m,bottom_m,texture\nP1,0,0.3,loamy sand\nP1,0.3,3,sand\n';
const CLAY = 'pit,top_m,bottom_m,texture\nP1,0,0.3,clay loam\nP1,0.3,2,clay\n';
const TILL = 'pit,top_m,bottom_m,texture\nP1,0,0.3,sandy loam\nP1,0.3,6,sandy loam\n';
const YEAR = 365;

interface Case {
  what: string;
  days: Day[];
  latitude: number;
  ground: (f: Forcing) => Float64Array;
  pits: string;
  /** columns of weather.csv besides rain */
  given: 'evaporation' | 'range' | 'mean' | 'mean and evaporation';
  /** days: first dip, first day after the last, days between */
  dips: [from: number, to: number, every: number];
  error: number;
  least: number;
}

const seattle = realDays('Seattle') as Day[];
const newYork = realDays('New York') as Day[];
const CASES: Case[] = [
  {
    what: 'sand with a drain, a threshold, every day, evaporation given',
    days: seattle,
    latitude: LATITUDE.Seattle,
    ground: thresholdDrain,
    pits: SAND,
    given: 'evaporation',
    dips: [60, 2.4 * YEAR, 1],
    error: 0.04,
    least: 0.8,
  },
  {
    what: 'clay with a drain, a threshold, every fortnight, temperatures given',
    days: newYork,
    latitude: LATITUDE['New York'],
    ground: thresholdDrain,
    pits: CLAY,
    given: 'range',
    dips: [60, 2.4 * YEAR, 14],
    error: 0.04,
    least: 0.8,
  },
  {
    what: 'layers with shallow pipes, every day',
    days: newYork,
    latitude: LATITUDE['New York'],
    ground: (f) => drainedLayers(f, 0.5),
    pits: SAND,
    given: 'evaporation',
    dips: [60, 2.4 * YEAR, 1],
    error: 0.02,
    least: 0.8,
  },
  {
    what: 'ten years of a drained field, every day',
    days: mild(4).slice(0, 20 * YEAR),
    latitude: 52,
    ground: (f) => thresholdDrain(f, 1),
    pits: CLAY,
    given: 'evaporation',
    dips: [YEAR, 11 * YEAR, 1],
    error: 0.05,
    least: 0.8,
  },
  {
    what: 'till with snow, eight years every fortnight, mean temperature and evaporation given',
    days: snowy(3).slice(0, 14 * YEAR),
    latitude: 60,
    ground: tillCascade,
    pits: TILL,
    given: 'mean and evaporation',
    dips: [2 * YEAR, 10 * YEAR, 14],
    error: 0.08,
    least: 0.65,
  },
  {
    what: 'till with snow, three years every fortnight, temperatures given',
    days: snowy(4).slice(0, 8 * YEAR),
    latitude: 60,
    ground: (f) => tillCascade(f, { base: 3, storage: 0.12, delay: 8 }),
    pits: TILL,
    given: 'range',
    dips: [2 * YEAR, 5 * YEAR, 14],
    error: 0.08,
    least: 0.65,
  },
  {
    what: 'deep till with snow, ten years every fifth day, mean temperature alone, logged as clay',
    days: snowy(4).slice(0, 16 * YEAR),
    latitude: 60,
    ground: (f) => tillCascade(f, { base: 7, storage: 0.08, delay: 12 }),
    pits: CLAY,
    given: 'mean',
    dips: [YEAR, 11 * YEAR, 5],
    error: 0.1,
    least: 0.65,
  },
];

function folderOf({ days, latitude, pits, given, dips: [from, to, every] }: Case, seen: Float64Array) {
  const evaporation = evaporationOf(days, latitude);
  const columns = {
    evaporation: 'et0_mm',
    range: 'tmin_c,tmax_c',
    mean: 'tmin_c,tmax_c',
    'mean and evaporation': 'tmin_c,tmax_c,et0_mm',
  }[given];
  const weather = days.map(({ day, rain, tmin, tmax }, d) => {
    const mean = ((tmin + tmax) / 2).toFixed(1);
    const et0 = (1000 * evaporation[d]).toFixed(2);
    const cells = {
      evaporation: et0,
      range: `${tmin.toFixed(1)},${tmax.toFixed(1)}`,
      mean: `${mean},${mean}`,
      'mean and evaporation': `${mean},${mean},${et0}`,
    }[given];
    return `${isoDate(day)},${(1000 * rain).toFixed(1)},${cells}`;
  });
  const dips: string[] = [];
  for (let d = from; d < to; d += every) dips.push(`P1,${isoDate(days[d].day)},level,${seen[d].toFixed(2)}`);
  return {
    'heads.csv': undefined,
    'site.csv': `item,value,unit\nlatitude,${latitude},deg\n`,
    'pits.csv': pits,
    'weather.csv': `date,rain_mm,${columns}\n${weather.join('\n')}\n`,
    'water.csv': `pit,date,reading,depth_m\n${dips.join('\n')}\n`,
  };
}

describe('dips of ground that is not of our kind', () => {
  test.each(CASES)('$what', (one) => {
    const { days, latitude, ground, dips, error, least } = one;
    const depths = ground({
      rain: Float64Array.from(days, (d) => d.rain),
      tmean: Float64Array.from(days, (d) => (d.tmin + d.tmax) / 2),
      evaporation: evaporationOf(days, latitude),
    });
    const seen = recorded(depths, error, 7);
    const files = folderOf(one, seen);
    const start = process.cpuUsage();
    const site = siteModel(read(files), { seed: 1 });
    const middle = Float64Array.from(reportOf(assess(site)).water_year, (row) => row.table_depth_m.p50);
    const { user, system } = process.cpuUsage(start);
    const after = Math.ceil(dips[1]);
    const skill = efficiency(middle.slice(after), seen.slice(after));
    const possible = efficiency(depths.slice(after), seen.slice(after));
    console.info(
      `${one.what}: ${skill.toFixed(2)} of ${possible.toFixed(2)}, ${site.waterModel}, ${((user + system) / 1e6).toFixed(1)} s`,
    );
    expect(skill).toBeGreaterThanOrEqual(least);
    expect((user + system) / 1e6).toBeLessThan(20);
  });
});
