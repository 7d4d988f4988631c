import { formula } from '../formula/index.js';

/** Spacing of ditches or drains that stand on the tight layer. */
export const donnanSpacing = formula({
  title: 'Spacing of drains on the tight layer (Donnan, ellipse)',
  symbol: 'L',
  unit: 'm',
  expression: 'sqrt(4*K*m*(m + 2*a)/q)',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-10, max: 1e-2 },
    m: { meaning: 'water midway above the water in the drain', unit: 'm', min: 0.01, max: 5 },
    a: { meaning: 'water in the drain above the tight layer', unit: 'm', min: 0, max: 10 },
    q: { meaning: 'recharge', unit: 'm/s', min: 1e-10, max: 1e-5 },
  },
  compute: (K: number, m: number, a: number, q: number) => Math.sqrt((4 * K * m * (m + 2 * a)) / q),
  validity: 'steady recharge, flow nearly level, drain down to the tight layer',
  source: 'Donnan 1946, from memory; Hooghoudt without depth below the drains',
});
