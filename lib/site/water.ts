import { method } from '../formula/index.js';
import { type LogEstimate, logValue } from '../soil/index.js';
import { type MonthlyLevels, noLevels } from './monthlyHighs.js';
import { TABLE_FOLLOWS_GROUND } from './spots.js';
import type { Unknowns } from './unknowns.js';

export const waterEnsemble = method({
  title: 'The water outside, year by year',
  what:
    'For every sample of the unknown ground, every weather year: the highest level of each month in the clay at the ' +
    'low side, in the clay behind the uphill wall, and in the ring, with run-off as it is and with run-off kept out.',
  assumptions: [
    'simulated once, at the wished depth; depth, rim, state and option enter afterwards',
    'the clay table follows the ground uphill by 0.85 ± 0.15 of the rise where nobody measured there',
    'place to place 0.05 m (our choice); year to year beyond the model as much as the model misses the dips',
  ],
  source: 'water balance; common practice for the spreads',
});

/** Ways of keeping surface water: as it is, or turned away and the ring capped. */
export type Way = 'asIs' | 'keptOut';
export const WAYS: Way[] = ['asIs', 'keptOut'];

/** Daily levels of the first samples, for bands; index sample × days + day. */
export interface DailyLevels {
  /** days since 1970-01-01 */
  firstDay: number;
  days: number;
  samples: number;
  /** in the clay, and in the tub, m above the datum */
  clay: Float32Array;
  tub?: Record<Way, Float32Array>;
}

/** Water in and around the site: a level a month for every sample and year. */
export interface WaterEnsemble {
  samples: number;
  years: number;
  /** in the clay at the low side of the pond, and behind its uphill wall */
  clayLow: MonthlyLevels;
  clayHigh: MonthlyLevels;
  /** in the ring; absent where no permeable layer touches the liner */
  tub?: Record<Way, MonthlyLevels>;
  daily?: DailyLevels;
  /** conductivity of the ground, m/s, one a sample */
  conductivity: Float64Array;
  /** largest closure error of any balance, m */
  closure: number;
}

/** Samples whose daily levels are kept. */
export const DAILY_SAMPLES = 100;

/** What both kinds of ensemble start from. */
export interface Common {
  samples: number;
  seed: number;
  unknowns: Unknowns;
  ksat: LogEstimate;
  /** ground at the uphill rim, m above the datum */
  highRim: number;
}

/** An ensemble without water yet. */
export function startEnsemble(
  { samples, ksat, unknowns }: Common,
  years: number,
  withTub: boolean,
): WaterEnsemble {
  const n = samples * years * 12;
  return {
    samples,
    years,
    clayLow: noLevels(n),
    clayHigh: noLevels(n),
    tub: withTub ? { asIs: noLevels(n), keptOut: noLevels(n) } : undefined,
    conductivity: unknowns.permeability.map((z) => logValue(ksat, z)),
    closure: 0,
  };
}

/** Rise of the table from the low side to behind the uphill wall, m, one a sample. */
export function uphillRise({ highRim, unknowns }: Common): Float64Array {
  return unknowns['uphill rise'].map(
    (v) => highRim * Math.min(Math.max(TABLE_FOLLOWS_GROUND.mean + TABLE_FOLLOWS_GROUND.spread * v, 0), 1),
  );
}
