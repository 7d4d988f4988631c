/** What of a what-if is not tried. */

/**
 * A number out of its range.
 * @param label - of the control
 * @param what - what it is
 * @param from - least, with its unit
 * @param to - most, with its unit
 * @returns sentences
 */
export function outOfRangeWords(label: string, what: 'length' | 'number', from: string, to: string): string {
  return `${label}: not tried. Give a ${what} from ${from} to ${to}.`;
}

/**
 * What of a link cannot be tried.
 * @param parts - as they stand in it
 * @returns a sentence
 */
export function leftOutOfLink(parts: readonly string[]): string {
  return `Of the link this cannot be tried and was left out: ${parts.join(', ')}.`;
}

/**
 * A link that the browser does not copy.
 * @param link - to this what-if
 * @returns a few words
 */
export function copyByHand(link: string): string {
  return `Copy it by hand: ${link}`;
}
