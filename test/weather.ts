import { readFileSync } from 'node:fs';
import { climateRecord, dayNumber, type ObservedDay } from '../lib/climate/index.js';

/** Latitudes assumed for the stations of vega-datasets' weather.csv (NOAA daily data 2012–2015). */
export const LATITUDE = { Seattle: 47.45, 'New York': 40.78 } as const;
export type Station = keyof typeof LATITUDE;
export const STATIONS = Object.keys(LATITUDE) as Station[];

const file = new URL('../node_modules/vega-datasets/data/weather.csv', import.meta.url);

/** Real daily weather of a station: rain in m, temperatures in °C. */
export function realDays(station: Station): ObservedDay[] {
  const [header, ...rows] = readFileSync(file, 'utf8').trimEnd().split('\n');
  if (!header.startsWith('location,date,precipitation,temp_max,temp_min'))
    throw new Error(`unknown header ${header}`);
  return rows
    .map((row) => row.split(','))
    .filter(([location]) => location === station)
    .map(([, date, rain, tmax, tmin]) => {
      const [year, month, day] = date.split('-').map(Number);
      return {
        day: dayNumber(year, month, day),
        rain: Number(rain) / 1000,
        tmin: Number(tmin),
        tmax: Number(tmax),
      };
    })
    .sort((a, b) => a.day - b.day);
}

export const realWeather = (station: Station) => climateRecord(realDays(station), LATITUDE[station]);
