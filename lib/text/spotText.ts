import type { RankedSpot } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/**
 * Why a spot stands where it does in the ranking.
 * @param spot - ranked
 * @param units - of the reader
 * @returns words without a full stop
 */
export function spotText(
  { planned, against, higher_m, by, if_higher, spread_m }: RankedSpot,
  units: UnitSystem,
): string {
  if (planned) return 'the planned spot';
  const length = (m: number) => formatQuantity(m, 'length', units);
  const side = higher_m > 0 ? 'nearer the ground' : 'deeper';
  const turn =
    if_higher === null
      ? ''
      : `; if it is ${length(spread_m)} higher still, ${if_higher.replaceAll('-', ' ')}`;
  return `water ${length(Math.abs(higher_m))} ${side} than at ${against}, by the ${by}${turn}`;
}
