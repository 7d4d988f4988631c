import type { WishChange } from '../contract/index.js';
import { duringMonths, monthWords } from './monthWords.js';

/**
 * What is done otherwise than wished, each in a few words.
 * @param length - of metres in words
 */
export function changeWords(
  { side_slope, built_in, emptied_in, kept_within_m, days_empty }: WishChange,
  length: (metres: number) => string,
): string[] {
  return [
    ...(built_in ? [`dug ${duringMonths(built_in)} instead`] : []),
    ...(side_slope !== undefined ? [`${built_in ? '' : 'dug '}with its sides at ${side_slope} to 1`] : []),
    ...(emptied_in ? [`emptied ${duringMonths(emptied_in)} instead`] : []),
    ...(kept_within_m !== undefined ? [`topped up whenever it has fallen by ${length(kept_within_m)}`] : []),
    ...(days_empty !== undefined ? [`emptied for ${days_empty} days at most`] : []),
  ];
}

/** What is dug otherwise than wished, of a change; empty where it is dug as wished. */
export function dugWords(change: WishChange | null, length: (metres: number) => string): string[] {
  const { side_slope, built_in } = change ?? {};
  return changeWords({ side_slope, built_in }, length);
}

/**
 * What is used otherwise, as orders, beside the months in which it was to be emptied.
 * @param planned - months wished, 1–12; none where it was not to be emptied or at any time
 * @param length - of metres in words
 */
export function changeOrders(
  { emptied_in, kept_within_m, days_empty }: Omit<WishChange, 'side_slope' | 'built_in'>,
  planned: number[],
  length: (metres: number) => string,
): string[] {
  const others = planned.length > 0 && !planned.some((month) => emptied_in?.includes(month));
  const instead = others && planned.length < 12 ? ` instead of ${monthWords(planned)}` : '';
  return [
    ...(emptied_in ? [`empty it ${instead ? '' : 'only '}${duringMonths(emptied_in)}${instead}`] : []),
    ...(kept_within_m !== undefined ? [`top it up whenever it has fallen by ${length(kept_within_m)}`] : []),
    ...(days_empty !== undefined ? [`empty it for ${days_empty} days at most`] : []),
  ];
}
