import { formula, method } from '../formula/index.js';

export const kirkhamMethod = method({
  title: 'Flow to parallel drains (Kirkham)',
  what:
    'Series of image drains: under steady rain F = (1/π)[ln(L/(π r)) + Σ (1/n)(cos(2nπr/L) − cos nπ)(coth(2nπD/L) − 1)], ' +
    'and the row term g for ground soaked to the surface.',
  assumptions: [
    'uniform ground over a tight layer',
    'drains ideal, of small radius; series summed until terms fall below 1e-14',
  ],
  source:
    'Kirkham 1949 and 1958, from memory; g agrees with a sum of image sources, F with L/(8d) of Hooghoudt',
});

/**
 * F of {@link kirkhamMethod}.
 * @param spacing - of the drains, m
 * @param depth - of the tight layer below them, m, above 0
 * @param radius - of the drains, m
 * @returns dimensionless
 */
export function kirkhamTerm(spacing: number, depth: number, radius: number): number {
  let sum = 0;
  for (let n = 1; n < 5000; n++) {
    // coth(x) − 1 = 2/(e^(2x) − 1)
    const tail = 2 / Math.expm1((4 * n * Math.PI * depth) / spacing);
    sum += ((Math.cos((2 * n * Math.PI * radius) / spacing) - (n % 2 === 0 ? 1 : -1)) * tail) / n;
    if (tail < 1e-14) break;
  }
  return (Math.log(spacing / (Math.PI * radius)) + sum) / Math.PI;
}

/** Water midway between drains under steady rain. */
export const kirkhamHead = formula({
  title: 'Water midway between drains under steady rain (Kirkham)',
  symbol: 'h',
  unit: 'm',
  expression: 'L*r*F/(1 - r)',
  parameters: {
    L: { meaning: 'spacing of the drains', unit: 'm', min: 0.5, max: 500 },
    r: { meaning: 'recharge over the conductivity', unit: '-', min: 0, max: 0.9 },
    F: { meaning: "Kirkham's term", unit: '-', min: 0.1, max: 1000 },
  },
  compute: (L: number, r: number, F: number) => (L * r * F) / (1 - r),
  validity: 'steady rain, water table not much above the drains; the same problem as Hooghoudt solves',
  source: 'Kirkham 1958, from memory',
});
