import { method } from '../formula/index.js';
import { normalCdf } from '../sampling/index.js';
import type { Dip } from './dip.js';
import { ERROR_LASTS, errorCorrelation } from './modelError.js';

export const dipLikelihood = method({
  title: 'How likely the dips are under a water table',
  what:
    'The error of the model is followed from level to level: what the one before tells of it is forgotten with time, its ' +
    'reading error is left out. Each level counts by the normal density of its miss, given that; each bound by the chance ' +
    'of its side, given the same.',
  assumptions: [
    "'dry' says the table is below the hole's floor, a hole still filling that it is above the level seen",
    'levels nearer than 14 days tell what one of them tells: the first of each stretch of the time they cover is kept, ' +
      'at least 14 days long and longer where there are more than 400 stretches; bounds nearer than 45 days share one weight',
  ],
  source: 'Bayes; Kalman filter of a first-order autoregressive error, as modelError',
});

/** Shortest time between levels that both tell, d, and the most of them that are worth their time. Our choice. */
const APART = 14;
const MOST = 400;

/** Dips in plain arrays, for the loop that runs most. */
export interface Seen {
  /** days from the start of the window */
  at: Int32Array;
  depth: Float64Array;
  /** variance of the reading, m² */
  reading: Float64Array;
  /** 0 the level itself, 1 the table lies below it, -1 above */
  side: Int8Array;
  /** correlation of the error with that of the level before, 0 where there is none */
  correlation: Float64Array;
  /** what a bound counts for, 0–1 */
  weight: Float64Array;
}

/**
 * Dips in plain arrays, thinned, see {@link dipLikelihood}.
 * @param firstDay - of the window, days since 1970-01-01
 * @param dips - sorted by day, none before the window
 * @returns what {@link logLikelihoodOf} runs on
 */
export function seenFrom(firstDay: number, dips: Dip[]): Seen {
  const kept = thinned(dips);
  const correlation = new Float64Array(kept.length);
  const weight = new Float64Array(kept.length).fill(1);
  let level = Number.NEGATIVE_INFINITY;
  let bound = Number.NEGATIVE_INFINITY;
  kept.forEach(({ day, says }, i) => {
    correlation[i] = errorCorrelation.compute(day - level, ERROR_LASTS);
    if (says === 'level') level = day;
    else {
      weight[i] = Math.min((day - bound) / ERROR_LASTS, 1);
      bound = day;
    }
  });
  return {
    at: Int32Array.from(kept, (d) => Math.floor(d.day) - firstDay),
    depth: Float64Array.from(kept, (d) => d.depth),
    reading: Float64Array.from(kept, (d) => d.error * d.error),
    side: Int8Array.from(kept, (d) => (d.says === 'level' ? 0 : d.says === 'below' ? 1 : -1)),
    correlation,
    weight,
  };
}

/** Without the levels that follow another in the same stretch of time. */
function thinned(dips: Dip[]): Dip[] {
  const levels = dips.filter(({ says }) => says === 'level');
  if (levels.length === 0) return dips;
  const [first, last] = [levels[0].day, levels[levels.length - 1].day];
  const stretch = Math.max(APART, (last - first) / MOST);
  let told = -1;
  return dips.filter(({ day, says }) => {
    if (says !== 'level') return true;
    const place = Math.floor((day - first) / stretch);
    if (place === told) return false;
    told = place;
    return true;
  });
}

/** Follows a model of the table from look to look. */
export interface DipFollower {
  /**
   * Begins anew.
   * @param modelError - what the model misses, one standard deviation, m
   * @returns the largest log likelihood there can be, of a model that meets every look
   */
  begin(modelError: number): number;
  /**
   * Counts the looks up to a day.
   * @param model - depth to the water, m, a value a day of the window
   * @param end - index of the day after the last that counts
   * @returns what the log likelihood has come down to; it falls from look to look
   */
  follow(model: Float64Array, end: number): number;
}

/**
 * Follows models of the table along the same dips, see {@link dipLikelihood}.
 * @param seen - the dips
 * @returns for one model after another: begin, then follow as far as it has been run
 */
export function dipFollower({ at, depth, reading, side, correlation, weight }: Seen): DipFollower {
  /** variance of a miss given the looks before, and the share of it that is the model's */
  const own = new Float64Array(at.length);
  const gain = new Float64Array(at.length);
  let next = 0;
  let mean = 0;
  let log = 0;
  return {
    begin(modelError) {
      const variance = modelError * modelError;
      let left = variance;
      let most = 0;
      for (let i = 0; i < at.length; i++) {
        const kept = correlation[i];
        const unknown = variance - kept * kept * (variance - left);
        own[i] = unknown + reading[i];
        if (side[i] !== 0) continue;
        gain[i] = unknown / own[i];
        left = gain[i] * reading[i];
        most -= 0.5 * Math.log(own[i]);
      }
      next = 0;
      mean = 0;
      log = most;
      return most;
    },
    follow(model, end) {
      let i = next;
      let sum = log;
      // What the looks so far tell of the error on the day of the last level.
      let error = mean;
      for (; i < at.length && at[i] < end; i++) {
        const before = correlation[i] * error;
        const off = depth[i] - model[at[i]] - before;
        if (side[i] === 0) {
          sum -= (0.5 * off * off) / own[i];
          error = before + gain[i] * off;
        } else sum += weight[i] * Math.log(Math.max(normalCdf((-side[i] * off) / Math.sqrt(own[i])), 1e-12));
      }
      next = i;
      mean = error;
      log = sum;
      return sum;
    },
  };
}

/**
 * Log likelihood of dips, without its constant, see {@link dipLikelihood}.
 * @param seen - the dips
 * @param model - depth to the water, m, a value a day of the window
 * @param modelError - what the model misses, one standard deviation, m
 * @returns natural logarithm; finite
 */
export function logLikelihoodOf(seen: Seen, model: Float64Array, modelError: number): number {
  const follower = dipFollower(seen);
  follower.begin(modelError);
  return follower.follow(model, model.length);
}
