import { method } from '../formula/index.js';
import { type LogEstimate, logValue } from '../soil/index.js';
import { daysCounted, noRises, WEEKEND } from './emptyingWater.js';
import { type MonthlyLevels, noLevels } from './monthlyHighs.js';
import { TABLE_FOLLOWS_GROUND, type UphillRise } from './spots.js';
import type { Unknowns } from './unknowns.js';

export const waterEnsemble = method({
  title: 'The water outside, year by year',
  what:
    'For every sample of the unknown ground, every weather year: the highest level of each month in the clay at the ' +
    'low side, in the clay behind the uphill wall, and in the ring, with run-off as it is and with run-off kept out; ' +
    'and what an emptying meets that starts in the month.',
  assumptions: [
    'simulated once, at the wished depth; depth, rim, state and option enter afterwards',
    'the clay table rises to the uphill wall as the plane through levelled holes does, where there is one; where nobody ' +
      'measured, by 0.85 ± 0.15 of the rise of the ground; it never stands above the ground there for that',
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
  /** what the pond lacks, m below full */
  drawdown?: Float32Array;
}

/** Water that emptyings of so many days meet, beside the levels of the months. */
export interface WaterMet {
  /** days counted of an emptying */
  daysEmpty: number;
  /** in the clay at the low side of the pond, and behind its uphill wall */
  clayLow: MonthlyLevels;
  clayHigh: MonthlyLevels;
  /** in the ring, −Infinity while it is dry; absent where no permeable layer touches the liner */
  tub?: Record<Way, MonthlyLevels>;
  /** mean heights of the higher of the clay's waters over an emptying, as {@link noRises} */
  rises: Float32Array;
}

/** Water in and around the site: a level a month for every sample and year. */
export interface WaterEnsemble extends WaterMet {
  samples: number;
  years: number;
  /** the same water, met in a weekend; absent where no emptying takes longer */
  weekend?: WaterMet;
  /** beside the pond as it is kept; absent where a level is held */
  pond?: PondYears;
  daily?: DailyLevels;
  /** rise of the table to behind the uphill wall, m, one a sample */
  rise: Float64Array;
  /** ground there, m above the datum */
  highRim: number;
  /** permeability of the ground, m/s, one a sample */
  permeability: Float64Array;
  /** largest closure error of any balance, m */
  closure: number;
}

/** The pond beside the water outside, by month as {@link MonthlyLevels}. */
export interface PondYears {
  /** highest sum of the water outside and what the pond lacks on the same day, m above the datum */
  clayLow: Float32Array;
  clayHigh: Float32Array;
  tub?: Record<Way, Float32Array>;
  /** most that the pond lacks, m below full */
  drawdown: Float32Array;
  /** filled up, m³ */
  topUp: Float32Array;
}

/** Room for the pond of so many months, without a level yet. */
export function noPondYears(n: number, ring: boolean): PondYears {
  const nothing = () => new Float32Array(n).fill(Number.NEGATIVE_INFINITY);
  return {
    clayLow: nothing(),
    clayHigh: nothing(),
    tub: ring ? { asIs: nothing(), keptOut: nothing() } : undefined,
    drawdown: nothing(),
    topUp: new Float32Array(n),
  };
}

/** How far the water at the pond stands off that in the hole, one standard deviation, m. Our choice. */
export const PLACE_SPREAD = 0.05;

/** Samples whose daily levels are kept: of fewer the middle of a day hangs on the seed. */
export const DAILY_SAMPLES = 384;

/** What both kinds of ensemble start from. */
export interface Common {
  samples: number;
  seed: number;
  unknowns: Unknowns;
  permeability: LogEstimate;
  /** ground at the uphill rim, m above the datum */
  highRim: number;
  /** rise of the water across the pond, where levelled holes tell it */
  measuredRise?: UphillRise;
}

/**
 * An ensemble without water yet.
 * @param daysEmpty - an emptying as planned, days
 */
export function startEnsemble(
  common: Common,
  years: number,
  withTub: boolean,
  daysEmpty: number,
): WaterEnsemble {
  const { samples, permeability, unknowns, highRim } = common;
  const n = samples * years * 12;
  const planned: WaterMet = {
    daysEmpty: daysCounted(daysEmpty),
    clayLow: noLevels(n),
    clayHigh: noLevels(n),
    tub: withTub ? { asIs: noLevels(n), keptOut: noLevels(n) } : undefined,
    rises: noRises(n),
  };
  return {
    ...planned,
    samples,
    years,
    weekend: planned.daysEmpty > WEEKEND ? overWeekend(planned) : undefined,
    rise: uphillRise(common),
    highRim,
    permeability: unknowns.permeability.map((z) => logValue(permeability, z)),
    closure: 0,
  };
}

function overWeekend({ clayLow, clayHigh, tub, rises }: WaterMet): WaterMet {
  const met = ({ month }: MonthlyLevels) => noLevels(month.length, month);
  return {
    daysEmpty: WEEKEND,
    clayLow: met(clayLow),
    clayHigh: met(clayHigh),
    tub: tub && { asIs: met(tub.asIs), keptOut: met(tub.keptOut) },
    rises: new Float32Array(rises.length),
  };
}

/** Takes over the clay's water of another ensemble of the same ground, weather and emptyings. */
export function takeClay(e: WaterEnsemble, from: WaterEnsemble): void {
  const clay = ({ clayLow, clayHigh, rises }: WaterMet) => ({ clayLow, clayHigh, rises });
  Object.assign(e, clay(from));
  if (e.weekend && from.weekend) Object.assign(e.weekend, clay(from.weekend));
}

/** The water as emptyings meet it: as planned, and in a weekend where they are to take longer. */
export const asMet = (e: WaterEnsemble): WaterMet[] => [e, ...(e.weekend ? [e.weekend] : [])];

/** Rise of the table from the low side to behind the uphill wall, m, one a sample. */
function uphillRise({ highRim, unknowns, measuredRise }: Common): Float64Array {
  const { mean, spread } = TABLE_FOLLOWS_GROUND;
  return unknowns['uphill rise'].map((v) =>
    measuredRise
      ? Math.max(measuredRise.rise + measuredRise.spread * v, 0)
      : highRim * Math.min(Math.max(mean + spread * v, 0), 1),
  );
}

/**
 * Level behind the uphill wall, no higher over the ground there than the water stands over that at the low side.
 * @param low - level at the low side, m above the datum
 * @param rise - of the water across the pond, m
 * @param highRim - ground at the uphill rim, m above the datum
 * @returns m above the datum
 */
export function uphillLevel(low: number, rise: number, highRim: number): number {
  return Math.min(low + rise, Math.max(low, 0) + highRim);
}

/** The same of a series of levels at the low side. */
export function uphillLevels(low: Float64Array, rise: number, highRim: number, out: Float64Array): void {
  for (let d = 0; d < out.length; d++) out[d] = uphillLevel(low[d], rise, highRim);
}
