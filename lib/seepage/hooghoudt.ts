import { formula, method } from '../formula/index.js';

export const equivalentDepthMethod = method({
  title: 'Equivalent depth below drains (Hooghoudt)',
  what:
    'Depth of a layer of level flow that resists as much as the real layer with flow converging on the pipes: ' +
    'd = (π L/8) / (ln(L/(π r)) + F), F = Σ 4 e^(−2nx)/(n (1 − e^(−2nx))) over odd n, x = 2π D/L.',
  assumptions: [
    'parallel ideal drains, uniform ground down to a tight layer',
    'for x ≤ 0.5 the form π²/(4x) + ln(x/(2π)), which agrees to 1e-7 there',
    "2–3 % below Hooghoudt's table of 1940 at middle depths; both are in use",
  ],
  source:
    'van der Molen & Wesseling 1991, Agricultural Water Management 19; ILRI Publication 16, from memory',
});

/**
 * F of {@link equivalentDepthMethod}.
 * @param x - 2π × depth from the drains to the tight layer over their spacing, above 0; Infinity where there is none
 * @returns dimensionless
 */
export function hooghoudtSeries(x: number): number {
  if (x <= 0.5) return Math.PI ** 2 / (4 * x) + Math.log(x / (2 * Math.PI));
  let sum = 0;
  // The 39th term is below e^-39.
  for (let n = 1; n < 41; n += 2) {
    const e = Math.exp(-2 * n * x);
    sum += (4 * e) / (n * (1 - e));
  }
  return sum;
}

/**
 * Equivalent depth d, see {@link equivalentDepthMethod}.
 * @param spacing - of the drains, m, several times the radius
 * @param depth - from the drains down to the tight layer, m, above 0; Infinity where there is none
 * @param radius - effective radius of the pipe, m
 * @returns depth of the layer that stands for the real one, m
 */
export function equivalentDepth(spacing: number, depth: number, radius: number): number {
  const below = hooghoudtSeries((2 * Math.PI * depth) / spacing);
  return (Math.PI * spacing) / 8 / (Math.log(spacing / (Math.PI * radius)) + below);
}

/** Spacing of drains under steady recharge for a known equivalent depth. */
export const hooghoudtSpacing = formula({
  title: 'Spacing of drains under steady recharge (Hooghoudt)',
  symbol: 'L',
  unit: 'm',
  expression: 'sqrt((8*B*d*h + 4*A*h^2)/q)',
  parameters: {
    A: { meaning: 'conductivity above the drains', unit: 'm/s', min: 1e-10, max: 1e-2 },
    B: { meaning: 'conductivity below the drains', unit: 'm/s', min: 1e-10, max: 1e-2 },
    d: { meaning: 'equivalent depth', unit: 'm', min: 0, max: 50 },
    h: { meaning: 'water above the drains midway between them', unit: 'm', min: 0.01, max: 5 },
    q: { meaning: 'recharge', unit: 'm/s', min: 1e-10, max: 1e-5 },
  },
  compute: (A: number, B: number, d: number, h: number, q: number) =>
    Math.sqrt((8 * B * d * h + 4 * A * h * h) / q),
  validity:
    'steady recharge on a field of parallel drains; for one pond a cross-check of how far a drain reaches',
  source: 'Hooghoudt 1940; form read in a public encyclopaedia article on drainage equations',
});

/**
 * Spacing at which drains hold the water to a height midway, with the equivalent depth that belongs to it.
 * @param k - permeability above and below the drains, m/s
 * @param depth - from the drains down to the tight layer, m, above 0
 * @param radius - effective radius of the pipe, m
 * @param h - water above the drains midway, m, above 0
 * @param q - recharge, m/s, above 0
 * @returns spacing, m
 * @example
 * ```ts
 * drainSpacing(1e-5, 2, 0.05, 0.5, 1e-7); // 25.0
 * ```
 */
export function drainSpacing(k: number, depth: number, radius: number, h: number, q: number): number {
  // The right side grows slower than the left with L: bisection on L − L(d(L)) from the ellipse upwards.
  let low = Math.max(hooghoudtSpacing.compute(k, k, 0, h, q), 4 * Math.PI * radius);
  let high = hooghoudtSpacing.compute(k, k, depth, h, q) + low;
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (hooghoudtSpacing.compute(k, k, equivalentDepth(middle, depth, radius), h, q) > middle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
