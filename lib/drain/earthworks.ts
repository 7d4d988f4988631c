import { formula } from '../formula/index.js';

/** How much loose spoil takes more room than it did in the ground. */
export const swell = formula({
  title: 'Swell of dug soil',
  symbol: 's',
  unit: '-',
  expression: 'b/l - 1',
  parameters: {
    b: { meaning: 'density in the ground', unit: 'kg/m³', min: 1000, max: 2600 },
    l: { meaning: 'density loose', unit: 'kg/m³', min: 700, max: 2200 },
  },
  compute: (b: number, l: number) => b / l - 1,
  validity: 'fresh spoil',
  source: 'earthwork handbooks; sand-clay example 3400 → 2700 lb/yd³',
});

/** Swell of clay, 0–1: 30 % (earthwork tables, second-hand). */
export const CLAY_SWELL = 0.3;
/** What loose clay still takes more than it did in the ground once it has settled for a winter, 0–1. Common practice. */
export const CLAY_SETTLED = 0.1;
