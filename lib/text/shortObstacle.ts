import type { OptionName, OptionResult } from '../contract/index.js';
import { GOVERNS_WORDS } from './terms.js';

const INSTEAD: Partial<Record<OptionName, string>> = {
  'surface-water-only': 'no surface water gets behind the liner',
  ballast: 'it would have to be too thick',
};

/**
 * Why an option cannot be had, in a few words: the first of what is said, where that holds no number and no name and has
 * room, else what stands in its way.
 * @param option - that cannot be had
 * @param fits - whether words have room where they are to stand
 * @returns a few words
 */
export function shortObstacle(
  { option, why_not, governs }: Pick<OptionResult, 'option' | 'why_not' | 'governs'>,
  fits: (words: string) => boolean,
): string {
  const first = (why_not ?? '')
    .replaceAll(/\s*\([^)]*\)/g, '')
    .split(/[:;]/)[0]!
    .trim();
  if (first !== '' && !/\d/.test(first) && fits(first)) return first;
  return INSTEAD[option] ?? GOVERNS_WORDS[governs];
}
