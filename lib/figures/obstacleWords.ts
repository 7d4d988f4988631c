import type { OptionName, OptionResult } from '../contract/index.js';
import { textWidth } from './layout.js';
import { GOVERNS_WORDS } from './words.js';

/** Letters of a reason that stands on one row. */
const LONGEST = 62;

const INSTEAD: Partial<Record<OptionName, string>> = {
  'surface-water-only': 'no surface water gets behind the liner',
  ballast: 'it would have to be too thick',
};

/**
 * Why an option cannot be had, on one short row: the first of what is said, where that holds no number and no name, else
 * what stands in its way.
 * @param option - that cannot be had
 * @returns a few words
 */
export function obstacleWords({ option, why_not, governs }: OptionResult): string {
  const first = (why_not ?? '')
    .replaceAll(/\s*\([^)]*\)/g, '')
    .split(/[:;]/)[0]!
    .trim();
  if (first !== '' && !/\d/.test(first) && textWidth(first, 1) <= textWidth('n'.repeat(LONGEST), 1))
    return first;
  return INSTEAD[option] ?? GOVERNS_WORDS[governs];
}
