import { formula } from '../formula/index.js';

const fao56 = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56';
const R = { meaning: 'extraterrestrial radiation', unit: 'MJ/m²/d', min: 0, max: 45 };

/** Solar radiation from the hours of sunshine. */
export const solarRadiationFromSunshine = formula({
  title: 'Solar radiation from sunshine (Ångström)',
  symbol: 'Rs',
  unit: 'MJ/m²/d',
  expression: '(0.25 + 0.5*s)*R',
  parameters: {
    s: { meaning: 'hours of sunshine over day length', unit: '-', min: 0, max: 1 },
    R,
  },
  compute: (s: number, R: number) => (0.25 + 0.5 * s) * R,
  validity: 'constants as recommended where none are known for the place',
  source: `${fao56}, eq. 35`,
});

/** Solar radiation from the day's range of temperature. */
export const solarRadiationFromRange = formula({
  title: 'Solar radiation from the temperature range (Hargreaves)',
  symbol: 'Rs',
  unit: 'MJ/m²/d',
  expression: 'k*sqrt(D)*R',
  parameters: {
    k: { meaning: 'adjustment: 0.16 inland, 0.19 at a coast', unit: '1/√°C', min: 0.1, max: 0.25 },
    D: { meaning: 'highest less lowest temperature', unit: '°C', min: 0, max: 40 },
    R,
  },
  compute: (k: number, D: number, R: number) => k * Math.sqrt(D) * R,
  validity: 'not on islands or in mountains; over weeks rather than single days',
  source: `${fao56}, eq. 50`,
});

/** Solar radiation under a clear sky. */
export const clearSkyRadiation = formula({
  title: 'Clear-sky solar radiation',
  symbol: 'Rso',
  unit: 'MJ/m²/d',
  expression: '(0.75 + 2e-5*z)*R',
  parameters: { z: { meaning: 'height above the sea', unit: 'm', min: -400, max: 5000 }, R },
  compute: (z: number, R: number) => (0.75 + 2e-5 * z) * R,
  validity: 'clean air',
  source: `${fao56}, eq. 37`,
});

/** Net loss of long-wave radiation. */
export const netLongwaveRadiation = formula({
  title: 'Net long-wave radiation',
  symbol: 'Rnl',
  unit: 'MJ/m²/d',
  expression: '4.903e-9*((x + 273.16)^4 + (n + 273.16)^4)/2*(0.34 - 0.14*sqrt(p))*(1.35*q - 0.35)',
  parameters: {
    x: { meaning: 'highest temperature', unit: '°C', min: -30, max: 50 },
    n: { meaning: 'lowest temperature', unit: '°C', min: -40, max: 40 },
    p: { meaning: 'actual vapour pressure', unit: 'kPa', min: 0.05, max: 5 },
    q: { meaning: 'solar over clear-sky radiation, at most 1', unit: '-', min: 0.25, max: 1 },
  },
  compute: (x: number, n: number, p: number, q: number) =>
    ((4.903e-9 * ((x + 273.16) ** 4 + (n + 273.16) ** 4)) / 2) *
    (0.34 - 0.14 * Math.sqrt(p)) *
    (1.35 * q - 0.35),
  validity: 'whole days',
  source: `${fao56}, eq. 39`,
});

/** Net radiation of the reference grass. */
export const netRadiation = formula({
  title: 'Net radiation',
  symbol: 'Rn',
  unit: 'MJ/m²/d',
  expression: '(1 - 0.23)*R - L',
  parameters: {
    R: { meaning: 'solar radiation', unit: 'MJ/m²/d', min: 0, max: 40 },
    L: { meaning: 'net long-wave radiation', unit: 'MJ/m²/d', min: -2, max: 12 },
  },
  compute: (R: number, L: number) => (1 - 0.23) * R - L,
  validity: 'green grass, albedo 0.23',
  source: `${fao56}, eq. 38 and 40`,
});

/** Heat going into the ground over a month. */
export const soilHeatFlux = formula({
  title: 'Monthly soil heat flux',
  symbol: 'G',
  unit: 'MJ/m²/d',
  expression: '0.07*(b - a)',
  parameters: {
    b: { meaning: 'mean temperature of the next month', unit: '°C', min: -40, max: 40 },
    a: { meaning: 'mean temperature of the month before', unit: '°C', min: -40, max: 40 },
  },
  compute: (b: number, a: number) => 0.07 * (b - a),
  validity: 'months; nought for single days',
  source: `${fao56}, eq. 43`,
});
