/** How long an emptied pond has, in words. */
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** A way in which water comes: when so much stands over the floor, and how long the sides allow. */
interface ToldTime {
  name: string;
  /** that counts as lifted, m, and when it is there, s */
  at: { depth: number; seconds: number };
  /** s; absent: sides not looked at */
  sides?: number;
}

/**
 * A time that may have no end.
 * @param seconds - from now
 * @param units - how numbers are written
 * @returns words
 */
export function liftTimeText(seconds: number, units: UnitSystem): string {
  if (seconds === Number.POSITIVE_INFINITY) return 'no end';
  return seconds <= 0 ? 'no time' : formatQuantity(seconds, 'time', units);
}

/**
 * What dot, bar and cross are.
 * @param depths - the least, the one that counts and the most, m
 * @param units - how numbers are written
 * @returns a row each
 */
export function liftTimeKey(
  [least, counts, most]: readonly [least: number, counts: number, most: number],
  units: UnitSystem,
): string[] {
  const depth = (metres: number) => formatQuantity(metres, 'length', units);
  return [
    `dot: ${depth(counts)} of water over the floor`,
    `bar: ${depth(least)} to ${depth(most)}; cross: sides`,
  ];
}

/**
 * Name of a depth of water.
 * @param depth - m
 * @param units - how numbers are written
 * @returns words
 */
export function overFloorText(depth: number, units: UnitSystem): string {
  return `${formatQuantity(depth, 'length', units)} over the floor`;
}

/**
 * How long the sides allow.
 * @param name - of the way in which water comes
 * @param seconds - for ever where they are not looked at
 * @param units - how numbers are written
 * @returns words
 */
export function sidesAllowText(name: string, seconds: number, units: UnitSystem): string {
  return `${name}: sides allow ${liftTimeText(seconds, units)}`;
}

/**
 * What the times show, for whoever does not see them.
 * @param rows - a way each
 * @param units - how numbers are written
 * @returns sentences
 */
export function liftTimeAlt(rows: readonly ToldTime[], units: UnitSystem): string {
  return rows
    .map(({ name, at, sides }) => {
      const held = sides === undefined ? '' : `; the sides allow ${liftTimeText(sides, units)}`;
      return `${name}: ${liftTimeText(at.seconds, units)} until ${formatQuantity(at.depth, 'length', units)} of water stand over the floor${held}.`;
    })
    .join(' ');
}
