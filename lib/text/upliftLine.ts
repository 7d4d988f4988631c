import type { UpliftCheck } from '../contract/index.js';
import { UNIT_WEIGHT_OF_WATER } from '../formula/constants.js';
import type { UnitSystem } from '../units/display.js';
import { handNumbers } from './handNumbers.js';
import { ADVICE_NAMES } from './terms.js';

/**
 * The check in one line that a calculator follows.
 * @param check - one of `uplift_check`
 * @param units - how numbers are written
 * @returns one line
 */
export function upliftLine(check: UpliftCheck, units: UnitSystem): string {
  const { length, weight, level, between, pressed, size } = handNumbers(units);
  const bracket = (value: number) => (value < 0 ? `(${level(value)})` : level(value));
  const { high_m, pond_m, floor_m, ballast_m, lifting_pa, met, option, factor } = check;
  const [up, down] = [factor.lifting, factor.holding];
  const lifts = up * between(high_m, floor_m);
  const holds = down * (between(pond_m, floor_m) + ballast_m * UNIT_WEIGHT_OF_WATER);
  const slab = ballast_m > 0 ? ` + slab ${down} × ${size(ballast_m * UNIT_WEIGHT_OF_WATER)}` : '';
  const name = `${ADVICE_NAMES[option]}. Highest water ${level(high_m)} ${length}, pond ${level(pond_m)} ${length}, floor ${level(floor_m)} ${length}.`;
  if (lifting_pa === 0) return `${name} The water outside stays below the floor: nothing lifts. Met.`;
  const ratio =
    Number(pressed(holds)) === 0
      ? 'Nothing holds'
      : `${size(lifts)} over ${size(holds)} = ${(Number(pressed(lifts)) / Number(pressed(holds))).toFixed(2)}, at most 1`;
  return (
    `${name} Lifts: ${up.toFixed(1)} × ${weight} × (${level(high_m)} − ${bracket(floor_m)}) = ${size(lifts)}. ` +
    `Holds: ${down} × ${weight} × (${level(pond_m)} − ${bracket(floor_m)})${slab} = ${size(holds)}. ` +
    `${ratio}: ${met ? 'met' : 'not met'}.`
  );
}
