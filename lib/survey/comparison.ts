/** Depths held against what they belong to. */

import type { LayerRow, Origin } from './survey.js';

/** A depth beside what it belongs to; both m. */
export interface Pair {
  value: number;
  beside: number;
  origin: Origin;
}

/** A column held against something; ratios from `least` to `most` are ordinary. */
export interface Comparison {
  file: string;
  column: string;
  pairs: Pair[];
  least: number;
  most: number;
  /** what decides: the middle of the ratios, or the largest of them */
  by: 'middle' | 'largest';
  /** the finding, from the two lengths in words */
  say: (value: string, beside: string) => string;
}

/** A limit that no single depth may pass. */
export const atMost = (most: number) => ({ least: 0, most, by: 'largest' }) as const;
/** A band for the column as a whole. */
export const between = (least: number, most: number) => ({ least, most, by: 'middle' }) as const;

/** One that lacks a side counts for nothing. */
export function pair(value = 0, beside = 0, { origin }: { origin: Origin }): Pair {
  return { value, beside, origin };
}

/** The deepest end of the log of each pit, m below ground. */
export function bottomsOf(layers: readonly LayerRow[]): Map<string, number> {
  const bottoms = new Map<string, number>();
  for (const { pit, bottom } of layers) bottoms.set(pit, Math.max(bottom, bottoms.get(pit) ?? 0));
  return bottoms;
}
