/** How words are joined into sentences. */

/**
 * Items joined for reading: `a, b and c`.
 * @param items - in their order
 * @returns text
 * @example
 * ```ts
 * listText(['clay', 'gravel', 'peat']); // 'clay, gravel and peat'
 * ```
 */
export function listText(items: string[]): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/**
 * First letter large.
 * @param text - any
 * @returns the same, begun large
 */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/**
 * First letter small.
 * @param text - any
 * @returns the same, begun small
 */
export function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
