import type { Recommendation } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** How deep it is dug below the old ground: of a raised rim's depth only a part is; nothing else is to be read from it. */
export function dugAndRaised(
  { depth_m, raise_m }: Pick<Recommendation, 'depth_m' | 'raise_m'>,
  units: UnitSystem,
): string {
  const size = (metres: number) => formatQuantity(metres, 'length', units);
  return raise_m > 0
    ? `dug ${size(depth_m - raise_m)} deep and raised by ${size(raise_m)}: ${size(depth_m)} from rim to floor`
    : `dug ${size(depth_m)} deep`;
}
