/**
 * The pond's own year a second time, from rain, evaporation and the habit of topping up; written from the equations, SI,
 * without anything of `lib/`. Steps on the level, dh/dt = (rain × rim − (evaporation + leak) × water area) ÷ water area, in
 * parts of a day; the library steps once a day on the water that is missing.
 */
import { mulberry32 } from '../../datasets/random.mjs';
import { areaAt, type Plan } from './pond.js';
import type { Day } from './weather.js';

const PARTS = 24;

/** A box pond of sloping sides; full `brim` m above the ground at its rim, upright there. */
export interface Basin {
  plan: Plan;
  brim: number;
  depth: number;
}

/** Topped up to the brim on the evening of a day when lower by more than `within`, m; or `held` so far below it all year. */
export type Habit = { within: number } | { held: number };

export interface PondDays {
  /** below the brim in the evening, m */
  lacks: Float64Array;
  /** m³ a day */
  toppedUp: Float64Array;
}

/**
 * @param rain - m a day
 * @param evaporation - of open water, m a day
 * @param leak - m a day
 */
export function pondDays(
  { plan, brim, depth }: Basin,
  rain: ArrayLike<number>,
  evaporation: ArrayLike<number>,
  habit: Habit,
  leak = 0,
): PondDays {
  const days = { lacks: new Float64Array(rain.length), toppedUp: new Float64Array(rain.length) };
  if ('held' in habit) {
    days.lacks.fill(habit.held);
    return days;
  }
  const rim = areaAt(plan, 0);
  const area = (lacks: number) => areaAt(plan, Math.max(lacks - brim, 0));
  let lacks = 0;
  for (let d = 0; d < rain.length; d++) {
    for (let part = 0; part < PARTS; part++) {
      const water = area(lacks);
      const gain = (rain[d]! * rim) / water - evaporation[d]! - leak;
      lacks = Math.min(Math.max(lacks - gain / PARTS, 0), brim + depth);
    }
    if (lacks > habit.within) {
      // Volume between two levels by Simpson, exact for the product of two lengths; upright above the ground.
      const upright = Math.min(lacks, brim);
      const below = Math.max(lacks - brim, 0);
      const sloping = (below / 6) * (rim + 4 * areaAt(plan, below / 2) + areaAt(plan, below));
      days.toppedUp[d] = upright * rim + sloping;
      lacks = 0;
    }
    days.lacks[d] = lacks;
  }
  return days;
}

/** Days from October 1999 on. */
const FIRST = Date.UTC(1999, 9, 1) / 86_400_000;
/** Chance of a wet day, and what of the mean evaporation a wet and a dry day have. */
const WET = 0.4;
const WET_SHARE = 0.7;

/** A year of monthly means, mm, made into days: exponential falls on days drawn wet, fewer of the sun's hours on them. */
export function daysOfNormals(
  rain: readonly number[],
  demand: readonly number[],
  years: number,
  seed: number,
): (Day & { et0: number })[] {
  const uniform = mulberry32(seed);
  const drySide = (1 - WET * WET_SHARE) / (1 - WET);
  return Array.from({ length: Math.ceil(years * 365.25) }, (_, i) => {
    const at = new Date((FIRST + i) * 86_400_000);
    const month = at.getUTCMonth();
    const length = new Date(Date.UTC(at.getUTCFullYear(), month + 1, 0)).getUTCDate();
    const wet = uniform() < WET;
    const fell = wet ? (-Math.log(1 - uniform()) * rain[month]!) / length / WET : 0;
    return {
      day: FIRST + i,
      year: at.getUTCFullYear(),
      month: month + 1,
      date: at.getUTCDate(),
      rain: Number(fell.toFixed(1)),
      et0: Number(((demand[month]! / length) * (wet ? WET_SHARE : drySide)).toFixed(2)),
      tmin: Number.NaN,
      tmax: Number.NaN,
    };
  });
}
