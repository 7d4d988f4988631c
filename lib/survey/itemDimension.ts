import type { Dimension } from '../units/index.js';
import type { Column } from './column.js';
import { POND_ITEMS } from './pondFacts.js';
import { SITE_ITEMS } from './siteFacts.js';

/** What an item of site.csv or pond.csv measures; nothing where it is a word. Times are s, days empty days. */
export function dimensionOfItem(file: 'site' | 'pond', item: string): Dimension | undefined {
  const items: Readonly<Record<string, Column<unknown>>> = file === 'pond' ? POND_ITEMS : SITE_ITEMS;
  return items[item]?.dimension;
}
