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
 * @param seed - of the draws
 * @param samples - how many
 * @returns a sentence
 */
export function drawnWith(version: string, seed: number, samples: number): string {
  return `Made with underpond ${version}, seed ${seed}, ${samples} samples.`;
}
