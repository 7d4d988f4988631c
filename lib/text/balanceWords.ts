/** What lifts the floor of a pond and what holds it, in words. */
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { LiftBalance, PondState } from '../uplift/index.js';

/** Names of the states of a pond. */
export const STATE_WORDS: Record<PondState, string> = {
  full: 'full',
  'drawn-down': 'usual lowest',
  emptied: 'emptied',
};

/**
 * Name of the axis that both are drawn on.
 * @param unit - of pressure
 * @returns a heading
 */
export function pressureAxis(unit: string): string {
  return `pressure on the floor (${unit})`;
}

/**
 * Whether the floor holds in a state.
 * @param balance - of that state
 * @param units - how numbers are written
 * @returns a few words
 */
export function balanceVerdict(
  { factor, lacking }: Pick<LiftBalance, 'factor' | 'lacking'>,
  units: UnitSystem,
): string {
  if (factor === null) return 'nothing lifts';
  return lacking > 0
    ? `lacks ${formatQuantity(lacking, 'length', units)} of water`
    : `holds, factor ${factor.toFixed(2)}`;
}

/**
 * What the balance shows, for whoever does not see it.
 * @param balances - one a state, in the order drawn
 * @param units - how numbers are written
 * @returns sentences
 */
export function balanceAlt(balances: readonly LiftBalance[], units: UnitSystem): string {
  const pressure = (value: number) => formatQuantity(value, 'pressure', units);
  return balances
    .map(
      (row) =>
        `${STATE_WORDS[row.state]}: the water outside lifts the floor with ${pressure(row.lifts)}, ${pressure(row.holds)} hold it; ${balanceVerdict(row, units)}.`,
    )
    .join(' ');
}
