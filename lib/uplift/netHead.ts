import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const level = (meaning: string) => ({ meaning, unit: 'm', min: -10, max: 10 });

/** Head that holds the liner down, the same at every depth below the pond's surface. */
export const netHead = formula({
  title: 'Net head on the liner',
  symbol: 'N',
  unit: 'm',
  expression: 'p - h',
  parameters: { p: level('pond level'), h: level('head outside') },
  compute: (p: number, h: number) => p - h,
  validity: "below the pond's surface; the liner's own weight (about 1.4 mm of water) is not counted",
  source: 'hydrostatics',
});

/** Pressure of a head of water. */
export const waterPressure = formula({
  title: 'Pressure of a head of water',
  symbol: 'u',
  unit: 'Pa',
  expression: '9810*h',
  parameters: { h: { meaning: 'head', unit: 'm', min: -20, max: 20 } },
  compute: (h: number) => UNIT_WEIGHT_OF_WATER * h,
  validity: 'still fresh water',
  source: 'hydrostatics; 9.81 kN/m³ (62.4 lb/ft³)',
});
