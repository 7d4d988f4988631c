/** What is done with the spade, and when it is laid down. */
import type { Result } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** When a digger stops, whatever was reckoned. Common practice. */
export const STOP =
  'Stop and get out when a side cracks or bulges, when the floor softens, rises or boils, or when you meet sand, gravel or running water that no hole showed. Let the water stand, and ask again with what you saw.';

/**
 * How deep is dug.
 * @param result - with what is recommended
 * @param units - how numbers are written
 * @returns sentences
 */
export function digStep(
  { recommendation, drain }: Pick<Result, 'recommendation' | 'drain'>,
  units: UnitSystem,
): string {
  const { depth_m, raise_m, as_built } = recommendation;
  const size = (value: number) => formatQuantity(value, 'length', units);
  return `${size(Math.max(depth_m - raise_m, 0))} deep, counted down from the lowest old ground at the rim${raise_m > 0 ? `; with the rim raised by ${size(raise_m)} the pond is ${size(depth_m)} deep` : ''}${drain && !as_built ? '. The bed of the drain goes below that' : ''}. Stop there.`;
}
