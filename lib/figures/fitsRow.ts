import { textWidth } from './layout.js';

/** Letters of a reason that stands on one row. */
const LONGEST = 62;

/** Whether words stand on one short row. */
export function fitsRow(words: string): boolean {
  return textWidth(words, 1) <= textWidth('n'.repeat(LONGEST), 1);
}
