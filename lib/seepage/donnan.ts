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

/** How far a drain makes itself felt. */
export const drainReach = formula({
  title: 'Reach of a drain in ground fed by rain',
  symbol: 'R',
  unit: 'm',
  expression: 's*sqrt(K/q)',
  parameters: {
    s: { meaning: 'water lowered at the drain', unit: 'm', min: 0, max: 5 },
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    q: { meaning: 'recharge', unit: 'm/s', min: 1e-10, max: 1e-5 },
  },
  compute: (s: number, K: number, q: number) => s * Math.sqrt(K / q),
  validity:
    'half the spacing of the ellipse: steady, drain on the tight layer; deep ground below it makes it longer',
  source: 'Dupuit with uniform recharge; half of Donnan 1946',
});

/** What is left of the lowering at a distance. */
export const loweringAt = formula({
  title: 'Lowering of the water at a distance from a drain',
  symbol: 'Δ',
  unit: 'm',
  expression: 's*(1 - sqrt(1 - (1 - min(x, 1))^2))',
  parameters: {
    s: { meaning: 'water lowered at the drain', unit: 'm', min: 0, max: 5 },
    x: { meaning: 'distance over the reach of the drain', unit: '-', min: 0, max: 100 },
  },
  compute: (s: number, x: number) => s * (1 - Math.sqrt(1 - (1 - Math.min(x, 1)) ** 2)),
  validity: 'steady, in a wet season: the ellipse between drain and end of reach; nothing beyond it',
  source: 'Dupuit with uniform recharge, integrated',
});
