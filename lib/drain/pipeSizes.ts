import { INCH } from '../units/index.js';
/**
 * Roughness n by the wall of the pipe, s/m^(1/3), from the smooth to the rough end of the literature.
 * Corrugated: 0.015 (NRCS for 3–8 in, from memory) to 0.022 (Caltrans Highway Design Manual Table 851.2, read in
 * a copy); lists go to 0.025. Smooth: 0.009–0.012 (the same table and municipal codes). Smooth and perforated: Austin
 * doubles it to 0.020. Clay or concrete tile: 0.013, from memory.
 */
export const ROUGHNESS = {
  corrugated: { smooth: 0.015, rough: 0.022 },
  smooth: { smooth: 0.009, rough: 0.012 },
  'smooth, perforated': { smooth: 0.01, rough: 0.02 },
} as const;

/** A pipe as it is sold; what it is called is not what it measures inside. */
export interface CommonPipe {
  name: string;
  series: 'metric' | 'us';
  kind: keyof typeof ROUGHNESS;
  /** m */
  inside: number;
}

const inch = (name: string, kind: CommonPipe['kind'], inside: number): CommonPipe => ({
  name,
  series: 'us',
  kind,
  inside: inside * INCH,
});
const metric = (name: string, kind: CommonPipe['kind'], inside: number): CommonPipe => ({
  name,
  series: 'metric',
  kind,
  inside,
});

/**
 * Common drain pipe by inside diameter. Inch: ASTM D2729, D3034, D1785, F667 (outside diameter less twice the least
 * wall, from memory, recomputed). Metric: coil by outside diameter as in DIN 1187, stiff twin-wall pipe by inside
 * diameter as in EN 13476 (both from memory).
 */
export const COMMON_PIPES: readonly CommonPipe[] = [
  metric('50 mm drain coil', 'corrugated', 0.044),
  metric('80 mm drain coil', 'corrugated', 0.0715),
  metric('100 mm drain coil', 'corrugated', 0.091),
  metric('100 mm stiff perforated pipe', 'corrugated', 0.1),
  metric('110 mm smooth sewer pipe', 'smooth', 0.1036),
  metric('125 mm drain coil', 'corrugated', 0.115),
  metric('150 mm stiff perforated pipe', 'corrugated', 0.15),
  metric('160 mm smooth sewer pipe', 'smooth', 0.1506),
  inch('2 in corrugated pipe', 'corrugated', 2),
  inch('3 in corrugated pipe', 'corrugated', 3),
  inch('3 in perforated sewer pipe (D2729)', 'smooth, perforated', 3.11),
  inch('4 in SDR 35 pipe', 'smooth', 3.975),
  inch('4 in corrugated pipe', 'corrugated', 4),
  inch('4 in Schedule 40 pipe', 'smooth', 4.026),
  inch('4 in perforated sewer pipe (D2729)', 'smooth, perforated', 4.065),
  inch('6 in SDR 35 pipe', 'smooth', 5.915),
  inch('6 in corrugated pipe', 'corrugated', 6),
  inch('6 in Schedule 40 pipe', 'smooth', 6.065),
];
