import { assertClosed, type ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';
import { logLikelihoodOfColour, type SeasonalHigh } from './colourLikelihood.js';
import { columnConstants, columnSeries, runDays } from './columnRun.js';
import type { Dip } from './dip.js';
import { dipFollower, seenFrom } from './dipLikelihood.js';
import { spinUp } from './spinUp.js';
import type { TableParameters } from './tableStore.js';

export const tableLikelihood = method({
  title: 'How likely a parameter set is by dips and colours',
  what:
    'Runs the store from the first dip to the last, and for the colours through the years before, and ends as soon as ' +
    'what is left of the likelihood is less than asked for: it can only fall from look to look.',
  assumptions: [
    'of the colours the last four years count: the mean of their highs is known to 0.05 m, the colours to 0.2 (our choice)',
  ],
  source: 'Bayes; a normal density is highest where it is met',
});

/** Years whose highs are held against the colours. Our choice. */
const YEARS_FOR_COLOUR = 4;
/** Days run at a time: least, so that looks close together are counted at once, and most. */
const STRETCH = { least: 30, most: 365 };

/** Likelihood of parameter sets, and how well their balances closed. */
export interface TableLikelihood {
  /**
   * Log likelihood of a parameter set, without its constant.
   * @param p - the set
   * @param modelError - what it misses, one standard deviation, m
   * @param atLeast - below which it need not be known
   * @returns natural logarithm; −∞ where it is less than asked for
   */
  of(p: TableParameters, modelError: number, atLeast: number): number;
  /** largest closure error so far, m */
  closure(): number;
}

/**
 * Likelihood by dips and colours, see {@link tableLikelihood}.
 * @param record - daily climate
 * @param dips - inside the record, sorted by day; none where there are colours alone
 * @param colour - the ordinary year's high as the colours tell it
 * @returns the likelihood; its `of` throws an Error when a balance does not close to 1e-9 m
 */
export function likelihoodOf(
  record: ClimateRecord,
  dips: Dip[],
  colour: SeasonalHigh | undefined,
): TableLikelihood {
  const index = (day: number) => Math.floor(day) - record.firstDay;
  const end = dips.length > 0 ? index(dips[dips.length - 1].day) + 1 : record.rain.length;
  const years = Math.max(end - YEARS_FOR_COLOUR * 365, 0);
  const first = dips.length > 0 ? index(dips[0].day) : years;
  const from = colour ? Math.min(first, years) : first;
  const window = {
    rain: record.rain.subarray(from, end),
    tmean: record.tmean.subarray(from, end),
    demand: record.demand.subarray(from, end),
  };
  const series = columnSeries(end - from);
  const seen = seenFrom(record.firstDay + from, dips);
  const stops = stopsOf(seen.at, first - from, end - from);
  const follower = dipFollower(seen);
  const stateAtDips = spinUp(record, first);
  const stateBefore = spinUp(record, from);
  let worst = 0;
  const closed = (closure: number) => {
    assertClosed('column', closure, end - from);
    worst = Math.max(worst, Math.abs(closure));
  };
  return {
    closure: () => worst,
    of(p, modelError, atLeast) {
      let log = follower.begin(modelError);
      if (log < atLeast) return Number.NEGATIVE_INFINITY;
      const constants = columnConstants(p);
      const state = stateAtDips(p);
      let closure = 0;
      let day = first - from;
      for (const stop of stops) {
        closure += runDays(window, day, stop, constants, state, series);
        day = stop;
        log = follower.follow(series.depth, stop);
        if (log < atLeast) break;
      }
      closed(closure);
      if (log < atLeast) return Number.NEGATIVE_INFINITY;
      if (!colour) return log;
      if (first > from) closed(runDays(window, 0, first - from, constants, stateBefore(p), series));
      return log + logLikelihoodOfColour(colour, series.depth);
    },
  };
}

/** Days after which a run stops to be judged: that of a look, no sooner and no later than a stretch after the one before. */
function stopsOf(looks: Int32Array, start: number, end: number): number[] {
  const stops: number[] = [];
  let last = start;
  const stopAt = (day: number) => {
    last = day;
    stops.push(day);
  };
  for (const next of [...looks, end - 1].map((day) => day + 1)) {
    if (next < last + STRETCH.least && next !== end) continue;
    while (next > last + STRETCH.most) stopAt(last + STRETCH.most);
    if (next > last) stopAt(next);
  }
  return stops;
}
