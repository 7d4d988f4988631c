import { assertClosed } from '../climate/index.js';
import { method } from '../formula/index.js';
import { openWaterEvaporation } from './openWater.js';
import type { PondStage } from './pondStage.js';

export const pondBalance = method({
  title: 'Daily balance of the pond',
  what:
    'Level of a pond day by day: rain on it, what is led into it, evaporation and leak off it, what runs over its brim, and ' +
    'topping up by habit.',
  assumptions: [
    'rain falls on all that the liner spreads over, at the rim; evaporation and leak leave by the water as it stood',
    "a day's gains and losses count together: in a day that brings more than it takes a full pond stays full",
    'topped up to the brim on the evening of the day on which it has fallen by more than the habit allows',
    'it starts full; an empty pond loses nothing',
  ],
  source: 'water balance; checked against worked balances of lakes and an independent script',
});

/** What a pond gains and loses; a value a day where an array, each m or m³ a day. */
export interface PondForcing {
  /** m */
  rain: ArrayLike<number>;
  /** reference evapotranspiration, m, and the coefficient of open water */
  demand: ArrayLike<number>;
  coefficient: number;
  /** led into it, m³; absent: nothing */
  inflow?: ArrayLike<number>;
  /** through the liner, m over the water; absent: none */
  leak?: number;
  /** topped up when it has fallen by more, m; absent: never */
  within?: number;
}

/** Daily series of a pond; the arrays are filled by {@link runPond}. */
export interface PondSeries {
  /** below the brim at the end of the day, m */
  drawdown: Float64Array;
  /** over the brim, m³ a day */
  overflow: Float64Array;
  /** filled up by hose, barrel or float valve, m³ a day */
  topUp: Float64Array;
  /** through the liner, m³ a day; absent: not asked for */
  leaked?: Float64Array;
}

/**
 * Series to fill.
 * @param days - how many
 * @returns zeros
 */
export function pondSeries(days: number): PondSeries {
  return {
    drawdown: new Float64Array(days),
    overflow: new Float64Array(days),
    topUp: new Float64Array(days),
  };
}

/**
 * Runs a pond day by day from full; see {@link pondBalance}.
 * @param stage - how it falls as it loses water
 * @param forcing - what it gains and loses
 * @param out - filled; as long as the rain
 * @returns closure error, m over the catchment
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runPond(stage: PondStage, forcing: PondForcing, out: PondSeries): { closure: number } {
  const { catchment, volume, fall, area } = stage;
  const { rain, demand, coefficient, inflow, leak = 0, within = Number.POSITIVE_INFINITY } = forcing;
  const { drawdown, overflow, topUp, leaked } = out;
  const steps = fall.length - 1;
  const perVolume = steps / volume;
  let missing = 0;
  let surface = area[0];
  let closure = 0;
  for (let d = 0; d < drawdown.length; d++) {
    const gain = rain[d] * catchment + (inflow === undefined ? 0 : inflow[d]);
    const there = volume - missing + gain;
    const leaving = (openWaterEvaporation.compute(coefficient, demand[d]) + leak) * surface;
    const loss = Math.min(leaving, there);
    if (leaked) leaked[d] = leaving > 0 ? (loss * leak * surface) / leaving : 0;
    let next = missing - gain + loss;
    const over = next < 0 ? -next : 0;
    if (next < 0) next = 0;
    const place = next * perVolume;
    let i = place | 0;
    if (i >= steps) i = steps - 1;
    const t = place - i;
    let below = fall[i] + (fall[i + 1] - fall[i]) * t;
    surface = area[i] + (area[i + 1] - area[i]) * t;
    let filled = 0;
    if (below > within) {
      filled = next;
      next = 0;
      below = 0;
      surface = area[0];
    }
    closure += gain - loss - over + filled - (missing - next);
    missing = next;
    drawdown[d] = below;
    overflow[d] = over;
    topUp[d] = filled;
  }
  const error = Math.abs(closure) / catchment;
  assertClosed('pond', error, drawdown.length);
  return { closure: error };
}
