/** The falls of a drain from the pond's floor to the water that takes it, in words. */
import type { FallLink } from '../drain/index.js';
import { formatGap, formatQuantity, type UnitSystem } from '../units/index.js';

/** A fall that is there and the one that is needed, m. */
export type FallCheck = Pick<FallLink, 'link' | 'has' | 'needs'>;

/** Water at the outlet in flood, and the fall from the floor to it. */
export interface FloodCheck extends FallCheck {
  level: number;
}

/** Is the fall as large as it must be? */
export const enoughFall = ({ has, needs }: FallCheck): boolean => has >= needs - 1e-9;

/** Links whose lack stands as water in the bed, which every depth and chance counts. */
const ABOVE_THE_MOUTH: readonly FallLink['link'][] = ['bed', 'pipe', 'run'];

/** The same, where a lack that is counted is no failure. */
export const fallState = (fall: FallCheck): 'enough' | 'short' | 'lacking' =>
  enoughFall(fall) ? 'enough' : ABOVE_THE_MOUTH.includes(fall.link) ? 'short' : 'lacking';

export const FALL_WORDS = { enough: 'enough', short: 'short', lacking: 'too little' } as const;

/** What a short fall comes to; undefined where none is short. */
export const shortFallWords = (falls: readonly FallCheck[]): string | undefined =>
  falls.some((fall) => fallState(fall) === 'short')
    ? 'Short: water stands that much higher in the bed, and every depth here counts it so'
    : undefined;

/**
 * A fall between two places.
 * @param fall - that is there and that is needed
 * @param units - how numbers are written
 * @returns what it has, and what it needs
 */
export function profileFallWords(fall: FallCheck, units: UnitSystem): [has: string, needs: string] {
  return [
    `falls ${formatQuantity(fall.has, 'length', units)}`,
    `needs ${formatQuantity(fall.needs, 'length', units)}${enoughFall(fall) ? '' : `: ${FALL_WORDS[fallState(fall)]}`}`,
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
  const short = shortFallWords(falls);
  return [...told, ...(short ? [short] : []), ...(flood ? [profileFloodWords(flood, units)] : [])].join('; ');
}
