/** Invented climates, their daily weather, and the yearly course of the water in the ground they make. */
import { gamma, normal } from '../../datasets/random.mjs';
import type { Dice } from '../survey/generated.js';

/** An ordinary year, January first; numbers are our choice, no station was copied. */
export interface Climate {
  name: string;
  /** degrees, lowest and highest */
  latitude: readonly [number, number];
  /** mm a month */
  rain: readonly number[];
  /** mm a month */
  et0: readonly number[];
  /** °C */
  mean: readonly number[];
  /** share of the rain's days that are wet at 100 mm a month */
  wetDays: number;
}

const turned = <T>(year: readonly T[]): T[] => [...year.slice(6), ...year.slice(0, 6)];

const MARITIME: Climate = {
  name: 'maritime',
  latitude: [50, 56],
  rain: [80, 60, 56, 50, 52, 55, 55, 62, 62, 84, 86, 84],
  et0: [12, 18, 36, 60, 86, 98, 102, 86, 54, 28, 14, 10],
  mean: [4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5],
  wetDays: 0.55,
};
const WINTER_RAIN: Climate = {
  name: 'winter rain',
  latitude: [36, 42],
  rain: [110, 95, 80, 55, 35, 12, 4, 6, 30, 75, 110, 120],
  et0: [30, 38, 62, 88, 125, 155, 180, 165, 115, 72, 38, 28],
  mean: [8, 9, 11, 14, 18, 22, 25, 25, 21, 17, 12, 9],
  wetDays: 0.4,
};

export const CLIMATES: readonly Climate[] = [
  MARITIME,
  WINTER_RAIN,
  {
    name: 'southern winter',
    latitude: [-45, -33],
    rain: turned(WINTER_RAIN.rain.map((mm, at) => mm * 0.7 + (MARITIME.rain[at] as number) * 0.3)),
    et0: turned(WINTER_RAIN.et0),
    mean: turned(WINTER_RAIN.mean),
    wetDays: 0.45,
  },
  {
    name: 'monsoon',
    latitude: [12, 26],
    rain: [6, 8, 12, 30, 90, 260, 330, 310, 230, 90, 20, 8],
    et0: [85, 98, 135, 155, 165, 130, 112, 108, 110, 108, 88, 80],
    mean: [18, 21, 26, 29, 30, 29, 28, 28, 28, 26, 22, 19],
    wetDays: 0.3,
  },
  {
    name: 'continental',
    latitude: [41, 48],
    rain: [45, 42, 58, 80, 95, 100, 95, 92, 85, 70, 62, 50],
    et0: [8, 14, 38, 78, 115, 135, 145, 122, 82, 45, 18, 8],
    mean: [-7, -5, 1, 8, 15, 20, 23, 22, 17, 10, 3, -4],
    wetDays: 0.4,
  },
];

const DAY_MS = 86_400_000;
const DAYS = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** weather.csv of some whole years: a chain of wet and dry days with gamma amounts, in mm and °C or inches and °F. */
export function weatherCsv(climate: Climate, years: number, us: boolean, dice: Dice): string {
  const first = Date.UTC(2023 - years, 9, 1);
  const last = Date.UTC(2024, 8, 30);
  const rows: string[] = [];
  let wet = false;
  let anomaly = 0;
  for (let at = first; at <= last; at += DAY_MS) {
    const date = new Date(at);
    const month = date.getUTCMonth();
    const rain = climate.rain[month] as number;
    const share = Math.min(Math.max((climate.wetDays * rain) / 100, 0.02), 0.85);
    // More often after a wet day, with the same share of wet days in the long run.
    wet = dice.uniform() < 0.75 * share + (wet ? 0.25 : 0);
    const fallen = wet ? gamma(dice.uniform, 0.75, rain / ((DAYS[month] as number) * share)) : 0;
    anomaly = 0.75 * anomaly + 1.7 * normal(dice.uniform);
    const mean = (climate.mean[month] as number) + anomaly - (wet ? 0.8 : 0);
    const half = (wet ? 3 : 4.5) * dice.between(0.75, 1.25);
    const day = date.toISOString().slice(0, 10);
    const celsius = [mean - half, mean + half];
    rows.push(
      us
        ? [day, (fallen / 25.4).toFixed(2), ...celsius.map((t) => (t * 1.8 + 32).toFixed(0))].join(',')
        : [day, fallen.toFixed(1), ...celsius.map((t) => t.toFixed(1))].join(','),
    );
  }
  return `${us ? 'date,rain_in,tmin_f,tmax_f' : 'date,rain_mm,tmin_c,tmax_c'}\n${rows.join('\n')}\n`;
}

/** climate.csv of the ordinary year. */
export function climateCsv({ rain, et0, mean }: Climate): string {
  const rows = rain.map((mm, at) => `${at + 1},${mm.toFixed(0)},${mean[at]},${et0[at]}`);
  return `month,rain_mm,tmean_c,et0_mm\n${rows.join('\n')}\n`;
}

/**
 * How full the ground stands in each month of an ordinary year, 0 to 1: what rain leaves over evaporation, kept up to
 * `capacity` mm. It gives the looks and heads of a garden the season of its weather.
 */
export function fullness({ rain, et0 }: Climate, capacity: number): number[] {
  const store = new Array<number>(12).fill(0);
  let held = 0;
  for (let at = 0; at < 36; at++) {
    const month = at % 12;
    held = Math.min(Math.max(held + (rain[month] as number) - (et0[month] as number), 0), capacity);
    store[month] = held / capacity;
  }
  return store;
}
