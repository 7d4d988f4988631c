import { formula } from '../formula/index.js';
import { InputError } from '../units/index.js';
import { dayLength, sunsetAngle } from './dayLength.js';
import {
  checkSunLatitude,
  extraterrestrialRadiation,
  solarDeclination,
} from './extraterrestrialRadiation.js';
import {
  clearSkyRadiation,
  netLongwaveRadiation,
  netRadiation,
  solarRadiationFromRange,
  solarRadiationFromSunshine,
} from './netRadiation.js';
import {
  atmosphericPressure,
  psychrometricConstant,
  saturationVapourPressure,
  vapourPressureSlope,
} from './vapourPressure.js';

const fao56 = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56';

/** Wind at 2 m from wind measured higher or lower. */
export const windAtTwoMetres = formula({
  title: 'Wind speed at 2 m',
  symbol: 'u2',
  unit: 'm/s',
  expression: 'u*4.87/log(67.8*z - 5.42)',
  parameters: {
    u: { meaning: 'wind speed measured', unit: 'm/s', min: 0, max: 40 },
    z: { meaning: 'height of the measurement', unit: 'm', min: 0.5, max: 100 },
  },
  compute: (u: number, z: number) => (u * 4.87) / Math.log(67.8 * z - 5.42),
  validity: 'over short grass',
  source: `${fao56}, eq. 47`,
});

/** Reference evapotranspiration by the combination equation. */
export const penmanMonteith = formula({
  title: 'Reference evapotranspiration (FAO-56 Penman–Monteith)',
  symbol: 'ET0',
  unit: 'm/d',
  expression: '(0.408*s*(R - G) + g*900/(T + 273)*u*d)/(s + g*(1 + 0.34*u))/1000',
  parameters: {
    s: { meaning: 'slope of the saturation vapour pressure curve', unit: 'kPa/°C', min: 0.01, max: 0.7 },
    R: { meaning: 'net radiation', unit: 'MJ/m²/d', min: -5, max: 30 },
    G: { meaning: 'heat going into the ground', unit: 'MJ/m²/d', min: -3, max: 3 },
    g: { meaning: 'psychrometric constant', unit: 'kPa/°C', min: 0.03, max: 0.075 },
    T: { meaning: 'mean of the highest and lowest temperature', unit: '°C', min: -30, max: 45 },
    u: { meaning: 'wind at 2 m, at least 0.5', unit: 'm/s', min: 0.5, max: 20 },
    d: { meaning: 'saturation less actual vapour pressure', unit: 'kPa', min: 0, max: 8 },
  },
  compute: (s: number, R: number, G: number, g: number, T: number, u: number, d: number) =>
    (0.408 * s * (R - G) + ((g * 900) / (T + 273)) * u * d) / (s + g * (1 + 0.34 * u)) / 1000,
  validity: 'well-watered short grass, whole days and longer',
  source: `${fao56}, eq. 6`,
});

/** Weather of a day, or of a month's mean day; absent = not measured. */
export interface StationDay {
  /** °C */
  tmin: number;
  tmax: number;
  /** actual vapour pressure, kPa */
  vapourPressure?: number;
  /** wind at 2 m, m/s */
  wind?: number;
  /** hours of sunshine in the day */
  sunshine?: number;
  /** measured solar radiation, MJ/m²/d; goes before `sunshine` */
  solar?: number;
  /** heat going into the ground, MJ/m²/d; nought for single days */
  soilHeat?: number;
}

/** Where a station stands. */
export interface Station {
  /** degrees, −65 to 65, south negative */
  latitude: number;
  /** height above the sea, m */
  altitude: number;
  /** by the sea; absent: inland */
  coastal?: boolean;
}

/** Reference evapotranspiration with the steps to it, and what had to be put in for it. */
export interface StationEvaporation {
  /** m/d, 0 or more */
  et0: number;
  /** radiation above the air, at the ground, at the ground under a clear sky, lost by long waves, and net; MJ/m²/d */
  extraterrestrial: number;
  solar: number;
  clearSky: number;
  longwave: number;
  net: number;
  substituted: ('vapour pressure' | 'wind' | 'radiation')[];
}

/** Mean wind of more than 2000 stations, m/s, and the least wind for the equation (FAO-56, chapter 3 and eq. 6). */
const MEAN_WIND = 2;
const LEAST_WIND = 0.5;

/**
 * Reference evapotranspiration of a day by FAO-56 Penman–Monteith. What was not measured is put in as FAO-56 says
 * (Example 20): air saturated at the lowest temperature, 2 m/s of wind, radiation from the temperature range.
 * @param day - weather of the day
 * @param dayOfYear - 1–366; for a month, its middle day
 * @param station - where the day was observed
 * @returns evapotranspiration and the steps to it; what was substituted is named
 * @throws InputError where the lowest temperature is above the highest, or nearer the poles
 */
export function stationEvaporation(day: StationDay, dayOfYear: number, station: Station): StationEvaporation {
  const { tmin, tmax } = day;
  if (!(tmin <= tmax))
    throw new InputError('invalid-input', `invalid day: lowest ${tmin} °C above highest ${tmax} °C`);
  checkSunLatitude(station.latitude);
  const f = (station.latitude * Math.PI) / 180;
  const declination = solarDeclination.compute(dayOfYear);
  const extraterrestrial = extraterrestrialRadiation.compute(f, declination, dayOfYear);
  const clearSky = clearSkyRadiation.compute(station.altitude, extraterrestrial);
  const substituted: StationEvaporation['substituted'] = [];

  let { solar, vapourPressure, wind } = day;
  if (solar === undefined && day.sunshine !== undefined) {
    const hours = dayLength.compute(sunsetAngle.compute(f, declination));
    solar = solarRadiationFromSunshine.compute(Math.min(day.sunshine / hours, 1), extraterrestrial);
  }
  if (solar === undefined) {
    solar = solarRadiationFromRange.compute(station.coastal ? 0.19 : 0.16, tmax - tmin, extraterrestrial);
    substituted.push('radiation');
  }
  if (vapourPressure === undefined) {
    vapourPressure = saturationVapourPressure.compute(tmin);
    substituted.push('vapour pressure');
  }
  if (wind === undefined) {
    wind = MEAN_WIND;
    substituted.push('wind');
  }

  const clearness = Math.min(Math.max(solar / clearSky, 0.25), 1);
  const longwave = netLongwaveRadiation.compute(tmax, tmin, vapourPressure, clearness);
  const net = netRadiation.compute(solar, longwave);
  const mean = (tmin + tmax) / 2;
  const saturated = (saturationVapourPressure.compute(tmin) + saturationVapourPressure.compute(tmax)) / 2;
  const et0 = penmanMonteith.compute(
    vapourPressureSlope.compute(mean),
    net,
    day.soilHeat ?? 0,
    psychrometricConstant.compute(atmosphericPressure.compute(station.altitude)),
    mean,
    Math.max(wind, LEAST_WIND),
    Math.max(saturated - vapourPressure, 0),
  );
  // Dew is not counted as water drawn from the ground.
  return { et0: Math.max(et0, 0), extraterrestrial, solar, clearSky, longwave, net, substituted };
}
