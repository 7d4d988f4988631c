/** What differs between two surveys, in words. */
import { SECONDS_PER_DAY } from '../formula/index.js';
import { dimensionOfItem } from '../survey/index.js';
import { type Dimension, formatQuantity, type QuantityKind, type UnitSystem } from '../units/index.js';

const KINDS: Partial<Record<Dimension, QuantityKind>> = {
  length: 'length',
  area: 'area',
  volume: 'volume',
  time: 'time',
  speed: 'permeability',
  flow: 'flow',
  pressure: 'pressure',
  fraction: 'fraction',
  temperature: 'temperature',
};

/**
 * A fact of site.csv or pond.csv before and after, told apart.
 * @param item name in the file
 * @param values as the survey has them, SI
 * @param units of the reader
 * @returns a text each
 */
export function factTexts(
  file: 'site' | 'pond',
  item: string,
  values: readonly unknown[],
  units: UnitSystem,
): string[] {
  const kind = KINDS[dimensionOfItem(file, item) ?? 'none'];
  const plain = (value: unknown) =>
    value === undefined ? 'not said' : Array.isArray(value) ? value.join(';') : String(value);
  const texts = values.map((value) => {
    if (typeof value !== 'number' || !kind) return plain(value);
    return formatQuantity(item === 'days_empty' ? value * SECONDS_PER_DAY : value, kind, units);
  });
  // What a tape cannot tell apart is told in full.
  return new Set(texts).size < new Set(values.map(plain)).size ? values.map(plain) : texts;
}

/** Title of the comparison. */
export function comparedTitle(before: string, after: string): string {
  return `What changed from ${before} to ${after}`;
}

/** No part of the answer differs. */
export const SAME_ANSWER = 'The answer is the same.';
/** No input differs. */
export const SAME_INPUTS = 'No input differs: the files say the same.';
/** Over the facts that differ. */
export const CHANGED_INPUTS = 'Inputs that differ';
/** Over the parts of the answer that differ. */
export const CHANGED_ANSWER = 'What differs in the answer';
