import type { UpliftCheck } from '../contract/index.js';
import { UNIT_WEIGHT_OF_WATER } from '../formula/constants.js';
import type { UnitSystem } from '../units/display.js';
import { EUROCODE_7 } from '../uplift/index.js';
import { ADVICE_NAMES } from './terms.js';

const { lifts: LIFTS, holds: HOLDS } = EUROCODE_7.uplift;

/** Length, unit weight and pressure of the line in either system; SI per unit. */
const SYSTEMS: Record<
  UnitSystem,
  { m: number; length: string; weight: string; pa: number; pressure: string; digits: number }
> = {
  metric: { m: 1, length: 'm', weight: '9.81', pa: 1000, pressure: 'kPa', digits: 2 },
  us: { m: 0.3048, length: 'ft', weight: '62.45', pa: 47.880259, pressure: 'lb/ft²', digits: 1 },
};

/**
 * The check in one line that a calculator follows.
 * @param check - one of `uplift_check`
 * @param units - how numbers are written
 * @returns one line
 */
export function upliftLine(check: UpliftCheck, units: UnitSystem): string {
  const { m, length, weight, pa, pressure, digits } = SYSTEMS[units];
  const level = (value: number) => (value / m).toFixed(3).replace('-', '\u2212');
  // What the printed levels make, so that the calculator shows the printed result.
  const printed = (value: number) => Number((value / m).toFixed(3)) * m;
  const between = (upper: number, lower: number) => UNIT_WEIGHT_OF_WATER * (printed(upper) - printed(lower));
  const pressed = (value: number) => (value / pa).toFixed(digits);
  const size = (value: number) => `${pressed(value)} ${pressure}`;
  const bracket = (value: number) => (value < 0 ? `(${level(value)})` : level(value));
  const { high_m, pond_m, floor_m, ballast_m, lifting_pa, met, option } = check;
  const lifts = LIFTS * between(high_m, floor_m);
  const holds = HOLDS * (between(pond_m, floor_m) + ballast_m * UNIT_WEIGHT_OF_WATER);
  const slab = ballast_m > 0 ? ` + slab ${HOLDS} × ${size(ballast_m * UNIT_WEIGHT_OF_WATER)}` : '';
  const name = `${ADVICE_NAMES[option]}. Highest water ${level(high_m)} ${length}, pond ${level(pond_m)} ${length}, floor ${level(floor_m)} ${length}.`;
  if (lifting_pa === 0) return `${name} The water outside stays below the floor: nothing lifts. Met.`;
  const ratio =
    Number(pressed(holds)) === 0
      ? 'Nothing holds'
      : `${size(lifts)} over ${size(holds)} = ${(Number(pressed(lifts)) / Number(pressed(holds))).toFixed(2)}, at most 1`;
  return (
    `${name} Lifts: ${LIFTS.toFixed(1)} × ${weight} × (${level(high_m)} − ${bracket(floor_m)}) = ${size(lifts)}. ` +
    `Holds: ${HOLDS} × ${weight} × (${level(pond_m)} − ${bracket(floor_m)})${slab} = ${size(holds)}. ` +
    `${ratio}: ${met ? 'met' : 'not met'}.`
  );
}
