/** Pressure on both sides of a liner, in words. */
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** What the colours are, a row each. */
export const PRESSURE_KEY = [
  'To scale. Blue: pond pressing out.',
  'Red: water outside pressing in.',
] as const;

/**
 * What is left at the floor.
 * @param net - of the pond over the water outside, Pa; below nought: it is pushed up
 * @param units - how numbers are written
 * @returns a few words
 */
export function netPressureWords(net: number, units: UnitSystem): string {
  if (net === 0) return 'nothing to either side';
  return `${net < 0 ? 'pushed up' : 'held down'}: ${formatQuantity(Math.abs(net), 'pressure', units)}`;
}

/**
 * What the pressure shows, for whoever does not see it.
 * @param state - how the pond stands
 * @param told - levels, m, pressure on both sides of the floor, Pa, and the bands in which the water outside wins
 * @param units - how numbers are written
 * @returns sentences
 */
export function pressureAlt(
  state: string,
  told: {
    rim: number;
    floor: number;
    pond: number;
    outside: number;
    onFloor: { inside: number; outside: number };
    lifted: readonly { top: number; bottom: number }[];
  },
  units: UnitSystem,
): string {
  const level = (z: number) => formatQuantity(z, 'level', units);
  const pressure = (value: number) => formatQuantity(value, 'pressure', units);
  const wins = told.lifted.map(({ top, bottom }) => `from ${level(top)} down to ${level(bottom)}`);
  return (
    `Section to scale, ${state}: rim ${level(told.rim)}, floor ${level(told.floor)}, pond ${level(told.pond)}, ` +
    `water outside ${level(told.outside)}. On the floor the pond presses down with ${pressure(told.onFloor.inside)} and the water outside up with ` +
    `${pressure(told.onFloor.outside)}. ${wins.length > 0 ? `The water outside wins ${wins.join(' and ')}.` : 'The water outside wins nowhere.'}`
  );
}
