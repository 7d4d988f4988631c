import { MELT_FACTOR } from '../climate/index.js';
import { method } from '../formula/index.js';
import { quantileSorted } from '../sampling/index.js';
import type { LogEstimate } from '../soil/index.js';
import type { Dip, TablePriors } from './fitTable.js';

export const tableModels = method({
  title: 'Models of the water table',
  what:
    'Three ways a water table behaves, in one interface: a store that spills at the ground, one that a drain or ditch ' +
    'empties below it, and a linear reservoir that hardly ever fills.',
  assumptions: [
    'priors common practice for heavy ground, wider in permeable ground',
    'where dips are many, the drain and the base of the store are looked for around the levels seen',
  ],
  source: 'water balance; priors common practice',
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

/** The models of the water table, by name. */
export type TableModelName = 'store that spills at the ground' | 'store with a drain' | 'linear reservoir';

/** A model of the water table: the store with what is known of its parameters beforehand. */
export interface TableModel {
  name: TableModelName;
  priors: TablePriors;
}

const prior = (median: number, spread: number): LogEstimate => ({
  median,
  spread,
  evidence: ['common practice'],
});

/**
 * The models with their priors for a ground and what was seen in it, the one expected without dips first.
 * @param ground - what its soil and climate say
 * @param dips - looks at the water, m below the ground
 * @returns three models, each with what is taken for likely of its parameters
 */
export function modelsFor(ground: GroundForTable, dips: Dip[]): TableModel[] {
  const levels = Float64Array.from(
    dips.filter((d) => d.says === 'level'),
    (d) => d.depth,
  ).sort();
  const deepest = Math.max(2, ...dips.map((d) => d.depth + 0.5));
  const shallow = levels.length > 0 ? Math.max(quantileSorted(levels, 0.25), 0.1) : 0.6;
  const { permeable, clayey, snows } = ground;
  const common: TablePriors = {
    porosity: { ...ground.porosity, spread: Math.max(ground.porosity.spread, 0.4) },
    recession: prior(permeable ? 0.03 : 0.012, permeable ? 1.2 : 0.8),
    baseDepth: prior(deepest, permeable ? 0.4 : 0.25),
    spillDepth: prior(0.06, 0.7),
    extinctionDepth: prior(1.4, 0.3),
    delay: prior(0.5, 0.6),
    rootCapacity: ground.rootCapacity,
    demandFactor: prior(1, 0.1),
    crackShare: prior(clayey ? 0.1 : 0.02, 0.8),
    drainDepth: prior(1, 0),
    drainRate: prior(0, 0),
    meltFactor: prior(MELT_FACTOR, snows ? 0.4 : 0),
  };
  const wide: TablePriors = {
    ...common,
    rootCapacity: { ...ground.rootCapacity, spread: 0.5 },
    demandFactor: prior(1, 0.2),
    crackShare: prior(common.crackShare.median, 1.2),
  };
  return [
    { name: 'store that spills at the ground', priors: common },
    {
      name: 'store with a drain',
      priors: {
        ...wide,
        porosity: { ...ground.porosity, spread: 0.8 },
        drainDepth: prior(shallow, 0.4),
        drainRate: prior(0.2, 1),
        recession: prior(0.02, 1),
        baseDepth: prior(levels.length > 0 ? levels[levels.length - 1] + 0.3 : deepest, 0.4),
      },
    },
    {
      name: 'linear reservoir',
      priors: {
        ...wide,
        porosity: { ...ground.porosity, spread: 1 },
        recession: prior(0.01, 1),
        baseDepth: prior(levels.length > 0 ? levels[levels.length - 1] + 0.5 : deepest, 0.5),
        extinctionDepth: prior(0.8, 0.6),
        delay: prior(10, 1),
      },
    },
  ];
}
