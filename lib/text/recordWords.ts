/** What a page was made of. */

/**
 * How many methods stand in the list.
 * @param count - of them
 * @returns a few words
 */
export function methodsCount(count: number): string {
  return `${count} methods, each with its source`;
}

/**
 * The survey by its name.
 * @param name - as written
 * @returns a sentence
 */
export function surveyNamed(name: string): string {
  return `Survey: ${name}.`;
}

/**
 * What the page was made with.
 * @param version - of the library
 * @returns sentences
 */
export function madeWith(version: string): string {
  return `The same survey gives the same numbers. Made with underpond ${version}.`;
}
