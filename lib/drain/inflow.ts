import { formula, GRAVITY } from '../formula/index.js';

/** Run-off by the rational method. */
export const rationalRunoff = formula({
  title: 'Run-off of a storm (rational method)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'C*i*A',
  parameters: {
    C: { meaning: 'run-off coefficient', unit: '-', min: 0, max: 1 },
    i: { meaning: 'rain intensity', unit: 'm/s', min: 0, max: 1e-4 },
    A: { meaning: 'area', unit: 'm²', min: 0, max: 200000 },
  },
  compute: (C: number, i: number, A: number) => C * i * A,
  validity: 'small areas, rain lasting at least as long as the water takes to arrive',
  source: 'rational method; problem 079 of a public engineering practice site',
});

/** Leak through a hole in the liner. */
export const linerLeak = formula({
  title: 'Leak through a hole in the liner (orifice)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: '0.6*A*sqrt(2*9.80665*h)',
  parameters: {
    A: { meaning: 'area of the hole', unit: 'm²', min: 0, max: 0.01 },
    h: { meaning: 'net head across the liner', unit: 'm', min: 0, max: 5 },
  },
  compute: (A: number, h: number) => 0.6 * A * Math.sqrt(2 * GRAVITY * h),
  validity: 'hole over an open gravel bed; over clay far less',
  source: 'orifice equation',
});

/** Run-off coefficients in a storm on wet clay: lawn 0.40–0.60 for tight clay (Schwab); the rest common practice. */
export const STORM_RUNOFF = { lawn: 0.5, bare: 0.6, paved: 0.9, woodland: 0.3, roof: 0.95 } as const;

/** Inflow to a drain by source, m³/s. */
export interface DrainInflow {
  clay: number;
  ring_storm: number;
  roof: number;
  uphill: number;
  leak: number;
}
