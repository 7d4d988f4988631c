import type { LadderRung } from '../contract/index.js';
import { monthName } from './monthWords.js';

/**
 * Name of a rung of the ladder, as it is used everywhere.
 * @param rung - of `water.ladder`
 * @param accepted - chance a year that is accepted
 * @returns such as `highest of 1 year in 10`
 */
export function rungName({ highest_of, exceeded, month }: LadderRung, accepted: number): string {
  if (highest_of === 'day') return `an ordinary day in ${monthName(month!)}`;
  if (highest_of === 'month') return `highest of ${monthName(month!)} in a middle year`;
  const often = exceeded === 0.5 ? 'a middle year' : `1 year in ${Math.round(1 / exceeded)}`;
  return `highest of ${often}${exceeded === accepted ? ' (design water)' : ''}`;
}
