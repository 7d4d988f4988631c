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

/** Flow through openings under a head: a hole in the liner, the perforations of a pipe. */
export const orificeFlow = formula({
  title: 'Flow through openings under a head (orifice)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: '0.6*A*sqrt(2*9.80665*h)',
  parameters: {
    A: { meaning: 'open area', unit: 'm²', min: 0, max: 1 },
    h: { meaning: 'head lost through it', unit: 'm', min: 0, max: 5 },
  },
  compute: (A: number, h: number) => 0.6 * A * Math.sqrt(2 * GRAVITY * h),
  validity: 'sharp-edged openings into open stone; a hole over clay leaks far less',
  source: "orifice equation, Torricelli's law with a coefficient of 0.6",
});

/** Inflow to a drain by source, m³/s. */
export interface DrainInflow {
  clay: number;
  ring_storm: number;
  roof: number;
  uphill: number;
  leak: number;
}

/**
 * Sum over the sources.
 * @param inflow - by source, m³/s
 * @returns m³/s
 */
export function totalOf(inflow: DrainInflow): number {
  return inflow.clay + inflow.ring_storm + inflow.roof + inflow.uphill + inflow.leak;
}
