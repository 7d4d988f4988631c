import { formula, method } from '../formula/index.js';
import { InputError } from '../units/index.js';

/** Water left in the root zone after a dry month, where it holds on the harder the drier it is. */
export const soilRetention = formula({
  title: 'Water left in the soil after a dry month (Thornthwaite–Mather)',
  symbol: 'ST',
  unit: 'm',
  expression: 'S*exp(-d/C)',
  parameters: {
    S: { meaning: 'water in the root zone before', unit: 'm', min: 0, max: 1 },
    d: { meaning: 'demand less rain of the month', unit: 'm', min: 0, max: 0.5 },
    C: { meaning: 'capacity of the root zone', unit: 'm', min: 0.02, max: 1 },
  },
  compute: (S: number, d: number, C: number) => S * Math.exp(-d / C),
  validity: 'monthly means; the same as C exp(−accumulated loss/C)',
  source: 'Thornthwaite & Mather 1955, in the one-step form (read second-hand)',
});

export const monthlyBookkeeping = method({
  title: 'Monthly soil-moisture bookkeeping',
  what:
    'Turns monthly rain and evaporative demand into water drawn, deficit and surplus, by a store that gives ' +
    'freely (straight) or holds on the harder the drier it is (exponential).',
  assumptions: [
    'a month with more rain than demand fills the store, and what exceeds its capacity is surplus',
    'storms within a month are averaged out: recharge of summer storms is missed',
    'an ordinary year follows itself: the store starts where it ends',
  ],
  source: 'Thornthwaite & Mather 1955; worked tables of physical geography courses',
});

/** How a store gives water in a dry month: freely, or the harder the drier it is ({@link soilRetention}). */
export type RetentionRule = 'straight' | 'exponential';

/** The store month by month, m. */
export interface MonthlyBalance {
  /** in the root zone at the end of the month */
  storage: number[];
  /** evaporated */
  drawn: number[];
  /** demand that stayed unmet */
  deficit: number[];
  /** recharge and run-off together */
  surplus: number[];
  /** rain − drawn − surplus − gain of storage over all months */
  closure: number;
}

/**
 * Runs the store over some months and asserts that it closes.
 * @param rain - m a month, 0 and more
 * @param demand - potential evapotranspiration, m a month, 0 and more
 * @param capacity - available water of the root zone, m, above 0
 * @param storage - water in it at the start, 0 to capacity, m
 * @param retention - what a store that is not full gives up to the demand
 * @returns by month, m, with the closure over all of them
 * @throws InputError for a capacity or storage outside its range
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runBookkeeping(
  rain: readonly number[],
  demand: readonly number[],
  capacity: number,
  storage: number,
  retention: RetentionRule,
): MonthlyBalance {
  if (!(capacity > 0)) throw new InputError('invalid-input', `capacity ${capacity} m is outside 0 to 1 m`);
  if (!(storage >= 0 && storage <= capacity))
    throw new InputError('invalid-input', `storage ${storage} m is outside 0 to ${capacity} m`);
  const out: MonthlyBalance = { storage: [], drawn: [], deficit: [], surplus: [], closure: 0 };
  let held = storage;
  for (let m = 0; m < rain.length; m++) {
    const before = held;
    const gain = rain[m] - demand[m];
    if (gain >= 0) held = Math.min(before + gain, capacity);
    else if (retention === 'straight') held = Math.max(before + gain, 0);
    else held = soilRetention.compute(before, -gain, capacity);
    const drawn = gain >= 0 ? demand[m] : rain[m] + before - held;
    const surplus = gain >= 0 ? before + gain - held : 0;
    out.storage.push(held);
    out.drawn.push(drawn);
    out.deficit.push(demand[m] - drawn);
    out.surplus.push(surplus);
    out.closure += rain[m] - drawn - surplus - (held - before);
  }
  if (!(Math.abs(out.closure) <= 1e-9)) throw new Error(`monthly balance does not close: ${out.closure} m`);
  return out;
}

/** A store that changes less in a year stands still, m. */
const STILL = 1e-12;

/**
 * The store over an ordinary year that follows itself: it ends where it began. Of several such years the fullest is
 * taken, the one that a full store comes to.
 * @param rain - m in each month, 0 and more
 * @param demand - potential evapotranspiration, m in each month, 0 and more
 * @param capacity - available water of the root zone, m, above 0
 * @param retention - what a store that is not full gives up to the demand
 * @returns the balance of that year, m
 * @throws InputError for a capacity of 0 or less
 * @throws Error when the balance does not close to 1e-9 m
 */
export function ordinaryYear(
  rain: readonly number[],
  demand: readonly number[],
  capacity: number,
  retention: RetentionRule,
): MonthlyBalance {
  const from = (storage: number) => runBookkeeping(rain, demand, capacity, storage, retention);
  const holds = (storage: number) => from(storage).storage.at(-1)! - storage >= -STILL;
  if (holds(capacity)) return from(capacity);
  // What a year takes from the store never shrinks as the store grows, so that halving finds the turn.
  let [low, high] = [0, capacity];
  while (high - low > STILL) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return from(low);
}
