import type { TippingPoint } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { plainInput } from './inputNames.js';
import { chanceText } from './say.js';
import { sentence } from './sentence.js';
import { ADVICE_NAMES, turnWords } from './terms.js';

/** A value at which the answer turns; one without a unit is a chance. */
function amountText(amount: number, unit: string, units: UnitSystem): string {
  if (unit === '') return chanceText(amount);
  const kind = ({ m: 'level', 'm/s': 'permeability', Pa: 'pressure' } as const)[unit];
  return kind ? formatQuantity(amount, kind, units) : `${Number(amount.toPrecision(3))} ${unit}`;
}

/**
 * Where the answer turns when one value alone is another.
 * @param point - of `tipping_points`
 * @param units - how numbers are written
 * @returns a sentence
 */
export function tippingText(
  { input, value: at, unit, from, now, ...turn }: TippingPoint,
  units: UnitSystem,
): string {
  return `${sentence(input)} at ${amountText(at, unit, units)} (now ${amountText(typeof now === 'number' ? now : now.p50, unit, units)}): from “${ADVICE_NAMES[from].toLowerCase()}” to “${turnWords(turn).toLowerCase()}”.`;
}

/**
 * What is not known well enough to be sure that it does not turn the answer.
 * @param points - `tipping_points`
 * @returns plain names, each once
 */
export function mayTurn(points: readonly TippingPoint[]): string[] {
  const near = points.filter(
    ({ now, value }) => typeof now !== 'number' && value >= now.p10 && value <= now.p90,
  );
  return [...new Set(near.map(({ input }) => plainInput(input)))];
}
