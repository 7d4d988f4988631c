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

/** Flow to one drain under ground that is soaked to the surface. */
export const soakedGroundInflow = formula({
  title: 'Flow to a drain below ground soaked to the surface',
  symbol: 'Q/L',
  unit: 'm²/s',
  expression: '2*pi*K*h/log(2*e - 1)',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    h: { meaning: 'head of the soaked surface above the drain', unit: 'm', min: 0, max: 5 },
    e: { meaning: 'depth of the drain over its radius', unit: '-', min: 2, max: 1000 },
  },
  compute: (K: number, h: number, e: number) => (2 * Math.PI * K * h) / Math.log(2 * e - 1),
  validity: 'deep uniform ground; the most a lone pipe in clay can draw',
  source: 'Kirkham 1949, Goodman 1965, from memory; image of the drain in the surface',
});

/**
 * g of {@link kirkhamMethod} for a row of drains under soaked ground: an area yields q = 4πKh/(g L), m/s, with the
 * conductivity K, m/s, the head h of the surface above the drains and their spacing L, m.
 * @param spacing - of the drains, m
 * @param depth - of the tight layer below the surface, m, below the drains
 * @param drain - depth of the drains below the surface, m
 * @param radius - of the drains, m
 * @returns dimensionless
 */
export function soakedRowTerm(spacing: number, depth: number, drain: number, radius: number): number {
  const near = (Math.PI * radius) / (2 * depth);
  const image = (Math.PI * (2 * drain - radius)) / (2 * depth);
  let sum = Math.log(Math.tan(image / 2) / Math.tan(near / 2));
  for (let m = 1; m < 2000; m++) {
    const c = Math.cosh((Math.PI * m * spacing) / (2 * depth));
    if (!Number.isFinite(c)) break;
    const term = Math.log(
      ((c + Math.cos(near)) / (c - Math.cos(near))) * ((c - Math.cos(image)) / (c + Math.cos(image))),
    );
    sum += term;
    if (Math.abs(term) < 1e-15) break;
  }
  return 2 * sum;
}
