import { formula } from '../formula/index.js';

const S = { meaning: 'sorptivity', unit: 'm/s½', min: 1e-6, max: 0.01 };
const A = { meaning: 'steady term', unit: 'm/s', min: 0, max: 1e-3 };
const t = { meaning: 'time since ponding', unit: 's', min: 1, max: 86400 };
const validity = 'ponded, uniform dry soil, short times (the square root still matters)';
const source = 'Philip 1957, Soil Science 84:257–264, two-term form as printed by Swartzendruber 1997 (seen)';

/** Water soaked in under ponding. */
export const philipInfiltration = formula({
  title: 'Cumulative infiltration (Philip, two terms)',
  symbol: 'F',
  unit: 'm',
  expression: 'S*sqrt(t) + A*t',
  parameters: { S, A, t },
  compute: (S: number, A: number, t: number) => S * Math.sqrt(t) + A * t,
  validity,
  source,
});

/** Rate of it. */
export const philipRate = formula({
  title: 'Infiltration rate (Philip, two terms)',
  symbol: 'f',
  unit: 'm/s',
  expression: 'S/(2*sqrt(t)) + A',
  parameters: { S, A, t },
  compute: (S: number, A: number, t: number) => S / (2 * Math.sqrt(t)) + A,
  validity,
  source,
});
