import { method } from '../formula/index.js';
import { OPEN_WATER } from './openWater.js';

export const pondLossesFit = method({
  title: 'What a pond loses, by its own falling level',
  what:
    'Coefficient of open water and leak of a pond from levels read in it: what it lost from one reading to the next, less ' +
    'the rain, is coefficient × reference evapotranspiration + leak × time.',
  assumptions: [
    'nothing is topped up and nothing runs over between the readings used',
    'a reading is wrong by as much as is said, and what rain gives by 20 % (one standard deviation; our choice)',
    'neighbouring intervals share a reading, so their errors go against each other',
    'before the readings: a coefficient of 1.05 ± 15 %, a leak of 0 ± 5 mm/d (our choice)',
  ],
  source: 'water balance; generalised least squares with a normal prior',
});

/** What a pond did from one reading to the next. */
export interface PondInterval {
  /** fall of its level and what the rain gave, m */
  lost: number;
  /** of `lost`, m */
  rain: number;
  /** reference evapotranspiration, m */
  evaporation: number;
  days: number;
  /** it begins with the reading that ends the one before it in the list */
  follows: boolean;
}

/** What the readings leave of what is not known, normal. */
export interface PondLosses {
  /** of open water, - */
  coefficient: { mean: number; sd: number };
  /** m/d */
  leak: { mean: number; sd: number };
  correlation: number;
}

/** Share of the rain on the pond by which it may be off. */
const RAIN_ERROR = 0.2;
/** Leak before anything was read, one standard deviation, m/d. */
const LEAK_PRIOR = 0.005;

/**
 * Coefficient of open water and leak by {@link pondLossesFit}.
 * @param intervals - in the order of time
 * @param readingError - one standard deviation of a reading, m, above 0
 * @param leaks - absent or true: the leak is sought; false: the liner is sound, and only the coefficient is
 * @returns mean and standard deviation of both; without intervals what was taken before
 */
export function fitPondLosses(
  intervals: readonly PondInterval[],
  readingError: number,
  leaks = true,
): PondLosses {
  const own = intervals.map(({ rain }) => 2 * readingError ** 2 + (RAIN_ERROR * rain) ** 2);
  const shared = intervals.map(({ follows }, i) => (follows && i > 0 ? -(readingError ** 2) : 0));
  const weighed = (of: (interval: PondInterval) => number) => {
    const solved = solveTridiagonal(own, shared, intervals.map(of));
    return (other: (interval: PondInterval) => number) =>
      intervals.reduce((sum, interval, i) => sum + solved[i] * other(interval), 0);
  };
  const evaporation = (each: PondInterval) => each.evaporation;
  const days = (each: PondInterval) => each.days;
  const prior = OPEN_WATER.coefficient;
  const surplus = (each: PondInterval) => each.lost - prior * each.evaporation;
  const byEvaporation = weighed(evaporation);
  const byDays = weighed(days);
  // Normal equations of how far both are off what was taken before.
  const cc = byEvaporation(evaporation) + 1 / (prior * OPEN_WATER.spread) ** 2;
  const cl = leaks ? byEvaporation(days) : 0;
  const ll = byDays(days) + 1 / LEAK_PRIOR ** 2;
  const [c, l] = [byEvaporation(surplus), leaks ? byDays(surplus) : 0];
  const determinant = cc * ll - cl * cl;
  return {
    coefficient: { mean: prior + (ll * c - cl * l) / determinant, sd: Math.sqrt(ll / determinant) },
    leak: leaks
      ? { mean: (cc * l - cl * c) / determinant, sd: Math.sqrt(cc / determinant) }
      : { mean: 0, sd: 0 },
    correlation: -cl / Math.sqrt(cc * ll),
  };
}

/**
 * Solves a symmetric tridiagonal system by elimination (Thomas).
 * @param diagonal - positive
 * @param below - entry between a row and the one before it; the first is not used
 */
function solveTridiagonal(
  diagonal: readonly number[],
  below: readonly number[],
  right: readonly number[],
): number[] {
  const pivot = [...diagonal];
  const x = [...right];
  for (let i = 1; i < x.length; i++) {
    const share = below[i] / pivot[i - 1];
    pivot[i] -= share * below[i];
    x[i] -= share * x[i - 1];
  }
  for (let i = x.length - 1; i >= 0; i--)
    x[i] = (x[i] - (i + 1 < x.length ? below[i + 1] * x[i + 1] : 0)) / pivot[i];
  return x;
}
