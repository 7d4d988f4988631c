/** The falls of a drain from the pond's floor to the water that takes it, in words. */
import { formatGap, formatQuantity, type UnitSystem } from '../units/index.js';

/** A fall that is there and the one that is needed, m. */
export interface FallCheck {
  has: number;
  needs: number;
}

/** Water at the outlet in flood, and the fall from the floor to it. */
export interface FloodCheck extends FallCheck {
  level: number;
}

/** Is the fall as large as it must be? */
export const enoughFall = ({ has, needs }: FallCheck): boolean => has >= needs - 1e-9;

/**
 * A fall between two places.
 * @param fall - that is there and that is needed
 * @param units - how numbers are written
 * @returns what it has, and what it needs
 */
export function profileFallWords(fall: FallCheck, units: UnitSystem): [has: string, needs: string] {
  return [
    `falls ${formatQuantity(fall.has, 'length', units)}`,
    `needs ${formatQuantity(fall.needs, 'length', units)}${enoughFall(fall) ? '' : ': too little'}`,
  ];
}

/**
 * The highest water at the outlet, by the floor.
 * @param flood - its level and the fall to it
 * @param units - how numbers are written
 * @returns words without a stop
 */
export function profileFloodWords(flood: FloodCheck, units: UnitSystem): string {
  const off = formatGap(Math.abs(flood.has), units, 'down');
  return `highest water there ${formatQuantity(flood.level, 'level', units)}, ${off} ${flood.has < 0 ? 'above' : 'below'} the floor${enoughFall(flood) ? '' : ': too high'}`;
}

/**
 * What the profile shows, for whoever does not see it.
 * @param profile - places from above, the falls between them, and the flood at the end
 * @param units - how numbers are written
 * @returns words in the order of the water
 */
export function drainProfileAlt(
  {
    stations,
    falls,
    flood,
  }: {
    stations: readonly { name: string; level: number }[];
    falls: readonly FallCheck[];
    flood?: FloodCheck;
  },
  units: UnitSystem,
): string {
  const told = stations.map(
    ({ name, level }, i) =>
      `${name} ${formatQuantity(level, 'level', units)}${i > 0 ? `, ${profileFallWords(falls[i - 1]!, units).join(', ')}` : ''}`,
  );
  return [...told, ...(flood ? [profileFloodWords(flood, units)] : [])].join('; ');
}
