import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { rainText } from './handy.js';
import { monthWords } from './monthWords.js';
import { chanceText } from './say.js';
import { listText } from './sentence.js';
/** A value that was taken, as the reader would write it. */
export function takenText(item: string, value: string | number, unit: string, units: UnitSystem): string {
  if (typeof value === 'string')
    return /^\d+(;\d+)*$/.test(value) ? monthWords(value.split(';').map(Number)) : `${value} ${unit}`.trim();
  if (item === 'storm_rain') return rainText(value, units);
  if (unit === 'a year') return `${chanceText(value)} a year`;
  const kind = ({ m: 'length', s: 'time', Pa: 'pressure', 'm/s': 'permeability' } as const)[unit];
  return kind
    ? formatQuantity(value, item.endsWith('level') ? 'level' : kind, units)
    : `${Number(value.toPrecision(3))} ${unit}`.trim();
}

/** Assumptions that are named beside their number. */
const NAMED = 5;

/**
 * How much was assumed, and what comes first of it.
 * @param report - with its assumptions
 * @returns a sentence
 */
export function assumedCount({ result: { assumptions } }: Report): string {
  const named = assumptions.slice(0, NAMED).map(({ item }) => item.replaceAll('_', ' '));
  if (named.length === 0) return 'Nothing had to be assumed beyond the survey.';
  const rest = assumptions.length > named.length ? ' among them' : '';
  return `${assumptions.length === 1 ? 'One value is' : `${assumptions.length} values are`} assumed, not measured: ${listText(named)}${rest}. The evidence lists them with the reason.`;
}
