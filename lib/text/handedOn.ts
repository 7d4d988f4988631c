/** What a file holds that is handed on. */

/**
 * What whoever has the file has.
 * @param parts - of the survey in it
 * @returns a sentence
 */
export function heldInFile(parts: readonly string[]): string {
  return `Whoever has this file has what was surveyed: ${parts.join(', ')}; names and notes as they were written.`;
}

/**
 * What a copy is without.
 * @param parts - of the survey, named
 * @returns sentences
 */
export function leftOutOfCopy(parts: string): string {
  return `Left out of this copy: ${parts}. The answer was reckoned with the whole survey.`;
}

/**
 * Title of the page.
 * @param name - of the survey
 * @returns a title
 */
export function pageTitle(name: string): string {
  return `${name}: pond and groundwater`;
}
