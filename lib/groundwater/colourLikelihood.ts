import { method } from '../formula/index.js';
import { normalCdf } from '../sampling/index.js';

export const colourLikelihood = method({
  title: "How likely the soil's colours are under a water table",
  what: 'The chance that the mean of the yearly highs comes at least as near the ground as the colours tell.',
  assumptions: [
    'colours tell that water came so near, and never that it came no nearer: grey fades slowly, red rock hides it',
  ],
  source: 'soil survey practice, as soilColour; one-sided our choice, on the safe side',
});

/** The high of an ordinary year as something else than a reading tells it. */
export interface SeasonalHigh {
  /** m below the ground */
  depth: number;
  /** one standard deviation, m */
  spread: number;
}

const YEAR = 365;
/** Smallest chance counted, so that colours never outweigh readings. Our choice. */
const LEAST = 0.01;

/**
 * Log likelihood of the colours, see {@link colourLikelihood}.
 * @param high - what the colours tell
 * @param depth - depth to the water, m, a value a day; its last whole years count, or what there is of one
 * @returns natural logarithm, at most 0; finite
 */
export function logLikelihoodOfColour(high: SeasonalHigh, depth: Float64Array): number {
  let sum = 0;
  let years = 0;
  for (let end = depth.length; end >= YEAR || years === 0; end -= YEAR, years++) {
    let nearest = Number.POSITIVE_INFINITY;
    for (let d = Math.max(end - YEAR, 0); d < end; d++) if (depth[d] < nearest) nearest = depth[d];
    sum += nearest;
  }
  return Math.log(Math.max(normalCdf((high.depth - sum / years) / high.spread), LEAST));
}
