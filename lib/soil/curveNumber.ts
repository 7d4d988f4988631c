import { formula, method } from '../formula/index.js';
import { InputError } from '../units/index.js';
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

export const curveNumberCondition = method({
  title: 'Curve number of dry and of wet ground',
  what: 'Curve numbers for conditions I and III by the number for ordinary wetness, between the rows of the table in a straight line.',
  assumptions: [
    'condition I: five dry days before; III: five wet days before, a clay garden in winter',
    'within 1 of the whole table, which has a row for every number',
  ],
  source:
    'USDA-SCS National Engineering Handbook 4, Table 10.1: its tens as printed by Beven, Rainfall-Runoff Modelling, Table B6.3.2 (seen), the fives from memory',
});

/** Condition II, I and III. */
const CONDITIONS: [ordinary: number, dry: number, wet: number][] = [
  [30, 15, 50],
  [35, 18, 55],
  [40, 22, 60],
  [45, 26, 65],
  [50, 31, 70],
  [55, 35, 74],
  [60, 40, 78],
  [65, 45, 82],
  [70, 51, 85],
  [75, 57, 88],
  [80, 63, 91],
  [85, 70, 94],
  [90, 78, 96],
  [95, 87, 98],
  [100, 100, 100],
];

/**
 * Curve number of ground that is not ordinarily wet; see {@link curveNumberCondition}.
 * @param ordinary - for condition II, 30 to 100
 * @param ground - before the rain
 * @returns for condition I or III, 0–100
 * @throws InputError below 30 or above 100
 */
export function curveNumberOf(ordinary: number, ground: 'dry' | 'wet'): number {
  const above = CONDITIONS.findIndex(([row]) => ordinary <= row);
  if (!(ordinary >= CONDITIONS[0][0] && above >= 0))
    throw new InputError('invalid-input', `curve number ${ordinary} is outside 30 to 100`);
  const column = ground === 'dry' ? 1 : 2;
  const [to, from] = [CONDITIONS[above], CONDITIONS[Math.max(above - 1, 0)]];
  if (to === from) return to[column];
  return from[column] + ((ordinary - from[0]) / (to[0] - from[0])) * (to[column] - from[column]);
}

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
