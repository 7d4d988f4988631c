import { formula } from '../formula/index.js';
import {
  checkSunLatitude,
  extraterrestrialRadiation,
  solarDeclination,
} from './extraterrestrialRadiation.js';

/** Reference evapotranspiration from temperatures alone. */
export const hargreaves = formula({
  title: 'Reference evapotranspiration (Hargreaves–Samani)',
  symbol: 'ET0',
  unit: 'm/d',
  expression: '0.0023*(T + 17.8)*sqrt(D)*0.408*R/1000',
  parameters: {
    T: { meaning: 'mean of the highest and lowest temperature', unit: '°C', min: -17.8, max: 45 },
    D: { meaning: 'highest less lowest temperature', unit: '°C', min: 0, max: 40 },
    R: { meaning: 'extraterrestrial radiation', unit: 'MJ/m²/d', min: 0, max: 45 },
  },
  compute: (T: number, D: number, R: number) => (0.0023 * (T + 17.8) * Math.sqrt(D) * 0.408 * R) / 1000,
  validity: 'low in wind above 3 m/s, high in humid air; over weeks rather than single days',
  source: 'Hargreaves & Samani 1985; FAO Irrigation and Drainage Paper 56, eq. 52',
});

/**
 * Reference evapotranspiration of a day by {@link hargreaves}. Below −17.8 °C mean the formula turns negative; no water
 * leaves then.
 * @param latitude - degrees, −65 to 65, south negative
 * @param dayOfYear - 1–366
 * @param tmin - lowest temperature of the day, °C
 * @param tmax - highest, °C; where it is not above `tmin` nothing leaves
 * @returns m a day, 0 or more
 * @throws InputError for latitudes nearer the poles
 */
export function referenceEvaporation(
  latitude: number,
  dayOfYear: number,
  tmin: number,
  tmax: number,
): number {
  checkSunLatitude(latitude);
  const f = (latitude * Math.PI) / 180;
  const radiation = extraterrestrialRadiation.compute(f, solarDeclination.compute(dayOfYear), dayOfYear);
  if (tmax <= tmin || (tmin + tmax) / 2 <= -17.8) return 0;
  return hargreaves.compute((tmin + tmax) / 2, tmax - tmin, radiation);
}
