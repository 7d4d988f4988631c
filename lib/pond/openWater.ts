import { formula } from '../formula/index.js';

/** Evaporation of a pond's surface from that of the reference grass. */
export const openWaterEvaporation = formula({
  title: 'Evaporation from open water',
  symbol: 'E_w',
  unit: 'm/d',
  expression: 'K*E',
  parameters: {
    K: { meaning: 'coefficient of open water', unit: '-', min: 0, max: 3 },
    E: { meaning: 'reference evapotranspiration', unit: 'm/d', min: 0, max: 0.02 },
  },
  compute: (K: number, E: number) => K * E,
  validity: 'shallow water, over days and more: deep water stores heat and runs months behind',
  source: 'FAO Irrigation and Drainage Paper 56, eq. 58',
});

/**
 * Coefficient of open water: less than 2 m deep, or in subhumid climates and tropics (FAO-56 Table 12). Its spread, a log
 * standard deviation, is our choice: a sheltered pond loses less, one full of plants or in dry wind more.
 */
export const OPEN_WATER = { coefficient: 1.05, spread: 0.15 };
