import { formula } from '../formula/index.js';

const a = { meaning: 'rate at the start', unit: 'm/s', min: 1e-8, max: 1e-3 };
const c = { meaning: 'rate at the end', unit: 'm/s', min: 1e-9, max: 1e-4 };
const k = { meaning: 'decay', unit: '1/s', min: 1e-5, max: 0.01 };
const t = { meaning: 'time since ponding', unit: 's', min: 0, max: 86400 };
const validity = 'while rain is faster than the rate; in slower rain use the water soaked in as the clock';
const source = 'Horton 1940; Chow, Maidment & Mays 1988, Applied Hydrology ch. 4 (from memory)';

/** Rate at which ponded soil takes water, fitted curve. */
export const hortonRate = formula({
  title: 'Infiltration rate (Horton)',
  symbol: 'f',
  unit: 'm/s',
  expression: 'c + (a - c)*exp(-k*t)',
  parameters: { a, c, k, t },
  compute: (a: number, c: number, k: number, t: number) => c + (a - c) * Math.exp(-k * t),
  validity,
  source,
});

/** Water soaked in by it. */
export const hortonInfiltration = formula({
  title: 'Cumulative infiltration (Horton)',
  symbol: 'F',
  unit: 'm',
  expression: 'c*t + (a - c)*(1 - exp(-k*t))/k',
  parameters: { a, c, k, t },
  compute: (a: number, c: number, k: number, t: number) => c * t + ((a - c) * (1 - Math.exp(-k * t))) / k,
  validity,
  source,
});
