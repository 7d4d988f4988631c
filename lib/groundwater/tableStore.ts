import { formula, method } from '../formula/index.js';

/** Rise of a water table by recharge. */
export const tableRise = formula({
  title: 'Rise of the water table',
  symbol: 'Δh',
  unit: 'm',
  expression: 'R/m',
  parameters: {
    R: { meaning: 'recharge', unit: 'm', min: 0, max: 0.5 },
    m: { meaning: 'drainable porosity', unit: '-', min: 0.005, max: 0.35 },
  },
  compute: (R: number, m: number) => R / m,
  validity: 'table well below the ground; no outflow meanwhile',
  source: 'water-table fluctuation method, Healy & Cook 2002 (formula read second-hand)',
});

/** Evaporation from the table. */
export const tableEvaporation = formula({
  title: 'Unmet demand drawn from the water table',
  symbol: 'T',
  unit: 'm',
  expression: 'min(U*max(0, 1 - z/E), S)',
  parameters: {
    U: { meaning: 'demand that the root zone left unmet', unit: 'm', min: 0, max: 0.02 },
    z: { meaning: 'depth to the water', unit: 'm', min: 0, max: 10 },
    E: { meaning: 'extinction depth', unit: 'm', min: 0.3, max: 5 },
    S: { meaning: 'water held above the base', unit: 'm', min: 0, max: 3 },
  },
  compute: (U: number, z: number, E: number, S: number) => {
    let drawn = z < E ? (U / E) * (E - z) : 0;
    if (drawn > S) drawn = S;
    return drawn;
  },
  validity: 'straight-line fade; the extinction depth is uncertain (0.8–2.5 m in clay)',
  source: 'common practice in groundwater balances',
});

/** Share of a store that leaves in a day. */
export const dailyOutflow = formula({
  title: 'Share of a linear reservoir that leaves in a day',
  symbol: 's',
  unit: '-',
  expression: '1 - exp(-k)',
  parameters: { k: { meaning: 'outflow rate', unit: '1/d', min: 0, max: 50 } },
  compute: (k: number) => 1 - Math.exp(-k),
  validity: 'outflow in proportion to what is held; nothing comes in meanwhile',
  source: 'linear reservoir, solved over a day',
});

/** Water that leaves at once, m: numbers that fade on and on below it slow every processor down. */
const NOTHING = 1e-12;

/** What leaves a store in a day, m: the share (0–1) of what is held, m. */
export const leaving = (held: number, share: number): number => (held > NOTHING ? held * share : held);

export const tableStore = method({
  title: 'Water table as a store with a spill level',
  what:
    'Daily depth to the water: recharge divided by the drainable porosity lifts it, what exceeds the spill level ' +
    'runs off, a drain takes its share of what stands above it, the demand the roots could not meet is drawn from it, ' +
    'and the rest recedes towards a base.',
  assumptions: [
    'one store; order of the day: recharge, spill, drain, evaporation, recession',
    'recession is proportional to the height above the base, flow to the drain to the height above the drain',
    'recharge arrives through a store that empties exponentially (the ground above the water)',
    'evaporation fades straight to nothing at the extinction depth',
  ],
  source:
    'store with spill level; beat a plain linear reservoir on held-out years of a shallow drained well (own test)',
});

/** Parameters of the store. Depths are below the ground, m. */
export interface TableParameters {
  /** drainable porosity, 0–1 */
  porosity: number;
  /** share of the water above the base that leaves downwards, as a rate, 1/d */
  recession: number;
  /** below which nothing leaves */
  baseDepth: number;
  /** at which what comes more runs off */
  spillDepth: number;
  /** below which nothing evaporates from the table */
  extinctionDepth: number;
  /** time the recharge takes through the ground above the water, d */
  delay: number;
  /** total available water of the root zone, m */
  rootCapacity: number;
  /** factor on the reference evaporation */
  demandFactor: number;
  /** share of a storm that bypasses a quite dry root zone down cracks, 0–1 */
  crackShare: number;
  /** level of a drain or ditch that the ground empties to */
  drainDepth: number;
  /** how fast it empties to it, 1/d; 0 where there is none */
  drainRate: number;
  /** melt of snow, m a degree and day */
  meltFactor: number;
}
