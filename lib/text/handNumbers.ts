/** Numbers that a calculator follows: levels to three digits, and what they make. */

import { UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';

/** Length, unit weight and pressure of a line in either system; SI per unit. */
const SYSTEMS: Record<
  UnitSystem,
  { m: number; length: string; weight: string; pa: number; pressure: string; digits: number }
> = {
  metric: { m: 1, length: 'm', weight: '9.81', pa: 1000, pressure: 'kPa', digits: 2 },
  us: { m: FOOT, length: 'ft', weight: '62.45', pa: 47.880259, pressure: 'lb/ft²', digits: 1 },
};

/** How levels and pressures are printed so that what is printed makes what is printed. */
export function handNumbers(units: UnitSystem) {
  const { m, length, weight, pa, pressure, digits } = SYSTEMS[units];
  const level = (value: number) => (value / m).toFixed(3).replace('-', '\u2212');
  const printed = (value: number) => Number((value / m).toFixed(3)) * m;
  const pressed = (value: number) => (value / pa).toFixed(digits);
  return {
    length,
    weight,
    level,
    /** of the water between two levels as printed, Pa */
    between: (upper: number, lower: number) => UNIT_WEIGHT_OF_WATER * (printed(upper) - printed(lower)),
    pressed,
    size: (value: number) => `${pressed(value)} ${pressure}`,
  };
}
