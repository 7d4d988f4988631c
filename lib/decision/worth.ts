import type { Pond } from '../site/index.js';

/** Share of its depth that a pond is worth which is not to be emptied when it was wished to be. Our choice. */
const UNEMPTIED = 0.7;

/**
 * What a depth is worth, m: less of it that may be emptied comes before more that may not. Where no month was wished any will
 * do, and a pond that is there already is emptied by its rules.
 * @param ruled - not to be emptied when it was wished to be
 */
export function worthOf({ emptiedIn, existing }: Pond, depth: number, ruled: boolean): number {
  return ruled && emptiedIn !== 'any' && !existing ? UNEMPTIED * depth : depth;
}
