import { MELT_FACTOR } from '../climate/index.js';
import { method } from '../formula/index.js';
import { quantileSorted } from '../sampling/index.js';
import type { LogEstimate } from '../soil/index.js';
import type { Dip } from './dip.js';
import type { TableParameters } from './tableStore.js';

export const tablePriorsMethod = method({
  title: 'What is known of a water table before the dips',
  what:
    'Priors of one store that is wide enough to be a table that spills at the ground, one that a drain or ditch empties ' +
    'below it, and a linear reservoir that hardly ever fills: the dips weigh these and all between them, and nothing is ' +
    'chosen.',
  assumptions: [
    'medians common practice, for heavy and for permeable ground',
    'spreads as wide as six measured wells differ (sand, sandy loam, boulder clay): roots and capillaries reach three times ' +
      'as deep, recharge takes weeks where the water is deep. Water recedes in 200 days, a factor of 2.5 either way: all six ' +
      'ask for slower than the usual 100, clay can only be slower, and slower is on the safe side',
    'a drain is looked for only where a level was seen, around the levels seen; unseen it gets no credit',
    'the base of the store lies about half a metre under the deepest look, 2 m down at least',
    'water that was read above the ground is kept: the spill level lies as much higher',
  ],
  source: 'water balance; common practice; measured wells, see test/bench/wells',
});

/** What the priors take from the ground. */
export interface GroundForTable {
  /** drainable, 0–1 */
  porosity: LogEstimate;
  /** total available water of the root zone, m */
  rootCapacity: LogEstimate;
  /** more permeable than 1e-6 m/s, so that the table drains in weeks */
  permeable: boolean;
  clayey: boolean;
  /** snow falls there, so that its melt matters */
  snows: boolean;
}

/** What is taken for likely of the store's parameters before any look; those of spread 0 are fixed. */
export interface TablePriors extends Record<keyof TableParameters, LogEstimate> {
  /** highest that water was read above the ground, m; 0 where it was not */
  standing: number;
}

const prior = (median: number, spread: number): LogEstimate => ({
  median,
  spread,
  evidence: ['common practice'],
});

/**
 * Priors for a ground and what was seen in it, see {@link tablePriorsMethod}.
 * @param ground - what its soil and climate say
 * @param dips - looks at the water, m below the ground
 * @returns median and log standard deviation of each parameter
 */
export function tablePriors(ground: GroundForTable, dips: Dip[]): TablePriors {
  const levels = Float64Array.from(
    dips.filter((d) => d.says === 'level'),
    (d) => d.depth,
  ).sort();
  const seen = levels.length > 0;
  const { permeable, clayey, snows } = ground;
  return {
    porosity: { ...ground.porosity, spread: Math.max(ground.porosity.spread, seen ? 0.8 : 0.4) },
    recession: prior(0.005, 0.9),
    baseDepth: prior(Math.max(2, ...dips.map((d) => d.depth + 0.5)), 0.4),
    spillDepth: prior(0.06, 0.7),
    extinctionDepth: permeable ? prior(2, 0.8) : prior(1.5, 0.6),
    delay: prior(permeable ? 2 : 1, 1.2),
    rootCapacity: { ...ground.rootCapacity, spread: 0.5 },
    demandFactor: prior(0.95, 0.2),
    crackShare: prior(clayey ? 0.1 : 0.02, 1.2),
    drainDepth: seen ? prior(Math.max(quantileSorted(levels, 0.25), 0.1), 0.35) : prior(1, 0),
    drainRate: seen ? prior(0.04, 1.6) : prior(0, 0),
    meltFactor: prior(MELT_FACTOR, snows ? 0.7 : 0),
    standing: Math.max(0, ...levels.slice(0, 1).map((depth) => -depth)),
  };
}
