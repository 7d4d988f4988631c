import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { rainText } from './handy.js';
import { monthWords } from './monthWords.js';
import { chanceText } from './say.js';
import { sentence } from './sentence.js';
/** A value that was taken, as the reader would write it. */
export function takenText(item: string, value: string | number, unit: string, units: UnitSystem): string {
  if (typeof value === 'string')
    return /^\d+(;\d+)*$/.test(value) ? monthWords(value.split(';').map(Number)) : `${value} ${unit}`.trim();
  if (item === 'storm_rain') return rainText(value, units);
  if (unit === 'a year') return `${chanceText(value)} a year`;
  const kind = ({ m: 'length', s: 'time', Pa: 'pressure', 'm/s': 'conductivity' } as const)[unit];
  return kind
    ? formatQuantity(value, item.endsWith('level') ? 'level' : kind, units)
    : `${Number(value.toPrecision(3))} ${unit}`.trim();
}

/**
 * A value that was assumed, and why.
 * @param assumption - of the result
 * @param units - how numbers are written
 * @returns a sentence
 */
export function assumedText(
  { item, value, unit, reason }: Report['result']['assumptions'][number],
  units: UnitSystem,
): string {
  return `${sentence(item.replaceAll('_', ' '))}: ${takenText(item, value, unit, units)} (${reason}).`;
}

/**
 * How many more were assumed than are told.
 * @param more - number of them
 * @returns a sentence
 */
export function moreAssumed(more: number): string {
  return `${more} more stand in the evidence.`;
}
