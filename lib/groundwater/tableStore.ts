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

/** Share of the unmet demand that the store still meets. */
export const evaporationFade = formula({
  title: 'Share of the unmet demand drawn from the table',
  symbol: 'f',
  unit: '-',
  expression: 'max(0, 1 - z/E)',
  parameters: {
    z: { meaning: 'depth to the water', unit: 'm', min: 0, max: 10 },
    E: { meaning: 'extinction depth', unit: 'm', min: 0.3, max: 5 },
  },
  compute: (z: number, E: number) => Math.max(0, 1 - z / E),
  validity: 'straight-line fade; the extinction depth is uncertain (0.8–2.5 m in clay)',
  source: 'common practice in groundwater balances',
});

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
  /** recession, 1/d */
  recession: number;
  baseDepth: number;
  spillDepth: number;
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

/** Water that leaves at once, m: numbers that fade on and on below it slow every processor down. */
const NOTHING = 1e-12;

/**
 * Runs the store over a record and asserts that it closes.
 * @param recharge - m a day
 * @param unmet - demand left over by the root zone, m a day
 * @param height - water above the base at the start, m
 * @param depth - filled with the depth to water at the end of each day, m below the ground
 * @param spill - filled with what ran off, m a day
 * @returns height above the base at the end and closure error, m of water
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runTableStore(
  recharge: Float64Array,
  unmet: Float64Array,
  p: TableParameters,
  height: number,
  depth: Float64Array,
  spill: Float64Array,
): { height: number; closure: number } {
  const { porosity, baseDepth } = p;
  const top = baseDepth - p.spillDepth;
  const perMetre = 1 / porosity;
  const perExtinction = 1 / p.extinctionDepth;
  const drain = baseDepth - p.drainDepth;
  const drains = 1 - Math.exp(-p.drainRate);
  const recede = 1 - Math.exp(-p.recession);
  const arrives = 1 - Math.exp(-1 / p.delay);
  let y = height;
  let waiting = 0;
  let closure = 0;
  for (let d = 0; d < recharge.length; d++) {
    const before = y * porosity + waiting;
    waiting += recharge[d];
    const arriving = waiting > NOTHING ? waiting * arrives : waiting;
    waiting -= arriving;
    y += arriving * perMetre;
    const over = y > top ? (y - top) * porosity : 0;
    if (y > top) y = top;
    const led = y > drain ? (y - drain) * drains : 0;
    y -= led;
    const fade = 1 - (baseDepth - y) * perExtinction;
    let drawn = fade > 0 ? unmet[d] * fade : 0;
    if (drawn > y * porosity) drawn = y * porosity;
    y -= drawn * perMetre;
    const outflow = y > NOTHING ? y * recede : y;
    y -= outflow;
    depth[d] = baseDepth - y;
    spill[d] = over;
    closure += recharge[d] - over - drawn - (led + outflow) * porosity - (y * porosity + waiting - before);
  }
  if (!(Math.abs(closure) <= 1e-9))
    throw new Error(`water-table balance does not close: ${closure} m over ${recharge.length} days`);
  return { height: y, closure };
}
