import { formula, method } from '../formula/index.js';

/** Water a root zone can hold for plants. */
export const availableWater = formula({
  title: 'Total available water of the root zone',
  symbol: 'TAW',
  unit: 'm',
  expression: '(a - b)*Z',
  parameters: {
    a: { meaning: 'field capacity', unit: 'm³/m³', min: 0.05, max: 0.6 },
    b: { meaning: 'wilting point', unit: 'm³/m³', min: 0.01, max: 0.4 },
    Z: { meaning: 'rooting depth', unit: 'm', min: 0.1, max: 2 },
  },
  compute: (a: number, b: number, Z: number) => (a - b) * Z,
  validity: 'one uniform root zone',
  source: 'FAO Irrigation and Drainage Paper 56, eq. 82 (there in mm)',
});

export const rootZoneBalance = method({
  title: 'Daily soil-moisture balance of the root zone',
  what: 'Turns rain and evaporative demand into recharge below the roots, and keeps the demand that stayed unmet.',
  assumptions: [
    "order of the day: water enters first, what exceeds the deficit is recharge, then the day's demand is drawn " +
      '(the order that gives the printed figures of FAO-56 Example 38)',
    'demand falls linearly once the deficit exceeds the share p of the available water',
    'a share of the water bypasses the roots down cracks, in proportion to the deficit: none once the clay is wet and closed',
  ],
  source: 'FAO Irrigation and Drainage Paper 56, chapter 8',
});

/** Share of available water drawn without stress: turf 0.40 (FAO-56 Table 22), 7.5 % less in clay. */
export const DEPLETION_FRACTION = 0.37;

/** Daily series of the root zone, m a day, and the deficit left at the end. */
export interface RootZoneSeries {
  recharge: Float64Array;
  unmet: Float64Array;
}

/** A root zone. */
export interface RootZone {
  /** total available water, m */
  capacity: number;
  /** share of it drawn without stress, 0–1 */
  depletion: number;
  /** factor on the reference evaporation: crop, exposure and the bias of the method */
  demandFactor: number;
  /** share of the water that runs down cracks when the root zone is quite dry, 0–1 */
  crackShare: number;
}

/**
 * Runs the balance over a record and asserts that it closes.
 * @param liquid - water reaching the ground, m a day
 * @param demand - reference evaporation, m a day
 * @param deficit - deficit at the start, 0 to capacity, m
 * @param out - series to fill, as long as `liquid`
 * @returns deficit at the end and closure error, m
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runRootZone(
  liquid: Float64Array,
  demand: Float64Array,
  { capacity, depletion, demandFactor, crackShare }: RootZone,
  deficit: number,
  out: RootZoneSeries,
): { deficit: number; closure: number } {
  const { recharge, unmet } = out;
  const stressFrom = depletion * capacity;
  const slope = 1 / (capacity - stressFrom);
  const cracks = crackShare / capacity;
  const start = deficit;
  let closure = 0;
  for (let d = 0; d < liquid.length; d++) {
    const before = deficit;
    const water = liquid[d];
    const bypass = water * cracks * deficit;
    const matrix = water - bypass;
    const through = bypass + (matrix > deficit ? matrix - deficit : 0);
    deficit = matrix > deficit ? 0 : deficit - matrix;
    const stress = deficit > stressFrom ? (capacity - deficit) * slope : 1;
    const wanted = demand[d] * demandFactor;
    let drawn = wanted * stress;
    if (drawn > capacity - deficit) drawn = capacity - deficit;
    deficit += drawn;
    recharge[d] = through;
    unmet[d] = wanted - drawn;
    closure += water - through - drawn - (before - deficit);
  }
  if (!(Math.abs(closure) <= 1e-9))
    throw new Error(
      `root-zone balance does not close: ${closure} m over ${liquid.length} days from deficit ${start} m`,
    );
  return { deficit, closure };
}
