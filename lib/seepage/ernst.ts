import { formula } from '../formula/index.js';

/** Head midway between drains in layered ground. */
export const ernstHead = formula({
  title: 'Water midway between drains in layered ground (Ernst)',
  symbol: 'h',
  unit: 'm',
  expression: 'q*v/V + q*L^2/(8*T) + q*L/(pi*K)*log(max(a*min(D, L/4)/u, 1))',
  parameters: {
    q: { meaning: 'recharge', unit: 'm/s', min: 1e-10, max: 1e-5 },
    v: { meaning: 'length of downward flow', unit: 'm', min: 0, max: 5 },
    V: { meaning: 'conductivity for downward flow', unit: 'm/s', min: 1e-10, max: 1e-2 },
    L: { meaning: 'spacing of the drains', unit: 'm', min: 0.5, max: 500 },
    T: {
      meaning: 'conductivity times thickness of the layers with level flow',
      unit: 'm²/s',
      min: 1e-10,
      max: 1e-1,
    },
    K: { meaning: 'conductivity around the drain', unit: 'm/s', min: 1e-10, max: 1e-2 },
    a: { meaning: 'geometry factor of the flow towards the drain', unit: '-', min: 1, max: 4 },
    D: { meaning: 'thickness of the layer in which the flow converges', unit: 'm', min: 0.02, max: 100 },
    u: { meaning: 'wet perimeter of the drain', unit: 'm', min: 0.02, max: 3 },
  },
  compute: (
    q: number,
    v: number,
    V: number,
    L: number,
    T: number,
    K: number,
    a: number,
    D: number,
    u: number,
  ) =>
    (q * v) / V +
    (q * L * L) / (8 * T) +
    ((q * L) / (Math.PI * K)) * Math.log(Math.max((a * Math.min(D, L / 4)) / u, 1)),
  validity:
    'steady recharge, layers apart by conductivity; flow converges in no more than a quarter of the spacing, and not at all where the drain is as wide as that',
  source: 'Ernst 1962; ILRI Publication 16 eq. 8.15 with D at most L/4, from memory',
});
