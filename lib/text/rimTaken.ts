/** The ground at the rim, where nobody levelled it. */
import type { Result } from '../contract/index.js';

/** Whether the rim is taken as level: on a slope the answer may be another. */
export const isRimTaken = ({ assumptions }: Pick<Result, 'assumptions'>): boolean =>
  assumptions.some(({ item }) => item === 'ground at the rim');

/** What to do about it, as an order begun small. */
export const LEVEL_THE_RIM =
  'level the ground at the rim, its lowest and its highest place, and the nearest lower ground that water may be led to';
