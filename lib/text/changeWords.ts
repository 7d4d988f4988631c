import type { WishChange } from '../contract/index.js';
import { monthWords } from './monthWords.js';

/**
 * What is done otherwise than wished, each in a few words.
 * @param length - of metres in words
 */
export function changeWords(
  { emptied_in, kept_within_m, days_empty }: WishChange,
  length: (metres: number) => string,
): string[] {
  return [
    ...(emptied_in ? [`emptied in ${monthWords(emptied_in)} instead`] : []),
    ...(kept_within_m !== undefined ? [`topped up whenever it has fallen by ${length(kept_within_m)}`] : []),
    ...(days_empty !== undefined ? [`emptied for ${days_empty} days at most`] : []),
  ];
}
