import { formula } from '../formula/index.js';

/**
 * Flow into the floor of a hole through uniform ground below it.
 * @example
 * ```ts
 * discInflow.of({ K: 1e-8, r: 1.5, s: 0.8 }); // 4.8e-8
 * ```
 */
export const discInflow = formula({
  title: 'Seepage to the floor of a hole (disc on a half-space)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: '4*K*r*s',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    r: { meaning: 'radius of the disc of equal area', unit: 'm', min: 0.05, max: 30 },
    s: { meaning: 'head outside above the water in the hole', unit: 'm', min: 0, max: 5 },
  },
  compute: (K: number, r: number, s: number) => 4 * K * r * s,
  validity: 'steady, deep uniform ground, hole shallow against its radius',
  source:
    'capacity of a disc (potential theory, Carslaw & Jaeger 1959, from memory); Hvorslev 1951 flush intake at a boundary',
});
