import type { Advice, RankedSpot } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

const FOUND_BY: Record<RankedSpot['by'], string> = {
  plane: 'plane through the levelled holes',
  'nearest hole': 'nearest hole',
};

const ADVICE_WORDS: Record<Advice, string> = {
  'no-drain': 'no drain',
  'surface-water-only': 'surface water kept out',
  'cutoff-drain': 'a drain uphill',
  'drain-to-outlet': 'a drain to an outlet',
  'drain-to-sump': 'a drain to a pumped sump',
  'raise-pond': 'the pond raised',
  ballast: 'a slab on the liner',
  shallower: 'dug less deep',
  move: 'no depth worth digging',
  vent: 'a gas vent under the liner',
  'relieve-and-keep-full': 'kept full',
  'measure-first': 'to be measured first',
  'do-not-dig': 'not to be dug',
};

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
    if_higher === null ? '' : `; if it is ${length(spread_m)} higher still: ${ADVICE_WORDS[if_higher]}`;
  return `water ${length(Math.abs(higher_m))} ${side} than at ${against}, by the ${FOUND_BY[by]}${turn}`;
}
