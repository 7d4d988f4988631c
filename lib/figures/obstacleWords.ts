import type { OptionResult } from '../contract/index.js';
import { shortObstacle } from '../text/shortObstacle.js';
import { textWidth } from './layout.js';

/** Letters of a reason that stands on one row. */
const LONGEST = 62;

/**
 * Why an option cannot be had, on one short row.
 * @param option - that cannot be had
 * @returns a few words
 */
export function obstacleWords(option: OptionResult): string {
  return shortObstacle(option, (words) => textWidth(words, 1) <= textWidth('n'.repeat(LONGEST), 1));
}
