import { formula } from '../formula/index.js';

const fao56 = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56';
const T = { meaning: 'air temperature', unit: '°C', min: -40, max: 50 };

/** Vapour pressure of saturated air. */
export const saturationVapourPressure = formula({
  title: 'Saturation vapour pressure',
  symbol: 'e°',
  unit: 'kPa',
  expression: '0.6108*exp(17.27*T/(T + 237.3))',
  parameters: { T },
  compute: (T: number) => 0.6108 * Math.exp((17.27 * T) / (T + 237.3)),
  validity: 'over water; of a day: mean of the values at its highest and lowest temperature',
  source: `${fao56}, eq. 11`,
});

/** Slope of the saturation vapour pressure curve. */
export const vapourPressureSlope = formula({
  title: 'Slope of the saturation vapour pressure curve',
  symbol: 'Δ',
  unit: 'kPa/°C',
  expression: '4098*0.6108*exp(17.27*T/(T + 237.3))/(T + 237.3)^2',
  parameters: { T },
  compute: (T: number) => (4098 * 0.6108 * Math.exp((17.27 * T) / (T + 237.3))) / (T + 237.3) ** 2,
  validity: 'at the mean temperature of the day',
  source: `${fao56}, eq. 13`,
});

/** Vapour pressure in the air from the day's range of relative humidity. */
export const actualVapourPressure = formula({
  title: 'Actual vapour pressure from relative humidity',
  symbol: 'ea',
  unit: 'kPa',
  expression: '(a*x + b*n)/2',
  parameters: {
    a: { meaning: 'saturation vapour pressure at the lowest temperature', unit: 'kPa', min: 0.01, max: 8 },
    x: { meaning: 'highest relative humidity', unit: '-', min: 0, max: 1 },
    b: { meaning: 'saturation vapour pressure at the highest temperature', unit: 'kPa', min: 0.01, max: 13 },
    n: { meaning: 'lowest relative humidity', unit: '-', min: 0, max: 1 },
  },
  compute: (a: number, x: number, b: number, n: number) => (a * x + b * n) / 2,
  validity: 'days and longer; without humidity FAO-56 takes saturation at the lowest temperature',
  source: `${fao56}, eq. 17`,
});

/** Pressure of the air by height above the sea. */
export const atmosphericPressure = formula({
  title: 'Atmospheric pressure',
  symbol: 'P',
  unit: 'kPa',
  expression: '101.3*((293 - 0.0065*z)/293)^5.26',
  parameters: { z: { meaning: 'height above the sea', unit: 'm', min: -400, max: 5000 } },
  compute: (z: number) => 101.3 * ((293 - 0.0065 * z) / 293) ** 5.26,
  validity: 'standard atmosphere at 20 °C',
  source: `${fao56}, eq. 7`,
});

/** Psychrometric constant. */
export const psychrometricConstant = formula({
  title: 'Psychrometric constant',
  symbol: 'γ',
  unit: 'kPa/°C',
  expression: '0.665e-3*P',
  parameters: { P: { meaning: 'atmospheric pressure', unit: 'kPa', min: 50, max: 110 } },
  compute: (P: number) => 0.665e-3 * P,
  validity: 'latent heat at 20 °C',
  source: `${fao56}, eq. 8`,
});
