import { formula, method } from '../formula/index.js';
import type { HydrologicGroup } from './hydrologicGroup.js';

const N = { meaning: 'curve number', unit: '-', min: 30, max: 100 };
const validity =
  'depth of a whole event of more than about 10 mm; no rates, no snow, not for rain below 0.2 S, weak where CN is below 40';
const source = 'USDA-NRCS, Urban Hydrology for Small Watersheds TR-55 (1986), eqs 2-1 to 2-4 (seen)';

/** What the ground can hold back. */
export const curveNumberRetention = formula({
  title: 'Potential retention by curve number',
  symbol: 'S',
  unit: 'm',
  expression: '25.4/N - 0.254',
  parameters: { N },
  compute: (N: number) => 25.4 / N - 0.254,
  validity,
  source,
});

/** Run-off of an event. */
export const curveNumberRunoff = formula({
  title: 'Run-off of an event (curve number)',
  symbol: 'Q',
  unit: 'm',
  expression: 'max(P - 0.2*S, 0)^2/(P + 0.8*S)',
  parameters: {
    P: { meaning: 'rain of the event', unit: 'm', min: 0.001, max: 1 },
    S: { meaning: 'potential retention', unit: 'm', min: 0, max: 0.6 },
  },
  compute: (P: number, S: number) => Math.max(P - 0.2 * S, 0) ** 2 / (P + 0.8 * S),
  validity,
  source,
});

const history =
  'USDA-SCS National Engineering Handbook 4, as in Chow, Maidment & Mays 1988, Applied Hydrology ch. 5 (from memory)';

/** Curve number of dry ground. */
export const curveNumberDry = formula({
  title: 'Curve number, dry ground before (condition I)',
  symbol: 'CN I',
  unit: '-',
  expression: '4.2*N/(10 - 0.058*N)',
  parameters: { N },
  compute: (N: number) => (4.2 * N) / (10 - 0.058 * N),
  validity: 'five dry days before',
  source: history,
});

/** Curve number of wet ground. */
export const curveNumberWet = formula({
  title: 'Curve number, wet ground before (condition III)',
  symbol: 'CN III',
  unit: '-',
  expression: '23*N/(10 + 0.13*N)',
  parameters: { N },
  compute: (N: number) => (23 * N) / (10 + 0.13 * N),
  validity: 'five wet days before: a clay garden in winter',
  source: history,
});

export const curveNumberTable = method({
  title: 'Curve numbers of a garden',
  what: 'Curve number of a cover on ground of a hydrologic group, ordinary wetness.',
  assumptions: ['lawn and woodland in good condition', 'a dual group counts as undrained'],
  source: 'TR-55 (1986) Table 2-2a, woodland Table 2-2c (from memory)',
});

const TABLE = {
  lawn: { A: 39, B: 61, C: 74, D: 80 },
  bare: { A: 77, B: 86, C: 91, D: 94 },
  paved: { A: 98, B: 98, C: 98, D: 98 },
  woodland: { A: 30, B: 55, C: 70, D: 77 },
};
/** What lies on the ground, as curve numbers tell it apart. */
export type GardenCover = keyof typeof TABLE;

/**
 * Curve number of a cover by hydrologic group; see {@link curveNumberTable}.
 * @param cover - of the ground
 * @param group - of the profile; the undrained one counts
 * @returns for ordinary wetness (condition II), 0–100: the higher, the more runs off
 */
export function curveNumber(cover: GardenCover, { undrained }: HydrologicGroup): number {
  return TABLE[cover][undrained];
}
