/** Heads in the ground round a pond, in words. */
import { formatQuantity, type UnitSystem } from '../units/index.js';

/**
 * What lines and arrows are.
 * @param unit - of heads
 * @returns a row each
 */
export function sectionHeadsKey(unit: string): [lines: string, arrows: string] {
  return [`Blue: lines of equal head (${unit}).`, 'Arrows: the way the water moves.'];
}

/**
 * What the section with its heads shows, for whoever does not see it.
 * @param told - lowest and highest head drawn, highest water table, m, and what a metre of each pipe takes, m³/s
 * @param units - how numbers are written
 * @returns sentences
 */
export function sectionHeadsAlt(
  told: { low: number; high: number; table: number | undefined; pipes: readonly number[] },
  units: UnitSystem,
): string {
  const level = (z: number) => formatQuantity(z, 'level', units);
  const table = told.table === undefined ? '' : `The water table stands highest at ${level(told.table)}. `;
  const pipes =
    told.pipes.length === 0
      ? 'There is no pipe.'
      : `A metre of pipe takes ${told.pipes.map((flow) => formatQuantity(flow, 'flow', units)).join(', ')}.`;
  return (
    `Section through the pond, to scale, with lines of equal head from ${level(told.low)} to ${level(told.high)}. ` +
    `${table}${pipes}`
  );
}
