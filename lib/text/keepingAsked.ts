/** How a drain will be kept, as it is asked, and what counts where the answer is left empty. */

/**
 * How often something fails, in a file.
 * @param what - that fails
 * @param years - that count where it is left empty
 * @param kept - how it is kept then
 * @returns a note
 */
export function onceInNote(what: string, years: number, kept: string): string {
  return `${what}: once in how many years; empty: ${years} (${kept})`;
}

/** The same, in a box on paper. */
export function onceInBox(what: string, years: number, kept: string): string {
  return `${what}: once in (${years}: ${kept})`;
}

/** The same, below its question on a screen. */
export function onceInWhy(years: number, kept: string): string {
  return `An honest guess. Left empty it is ${years} years (${kept}).`;
}

/** How often the ditch floods, in a file. */
export function floodNote(years: number): string {
  return `years from one flood of that ditch to the next; empty: ${years}`;
}

/** The same, in a box on paper. */
export function floodBox(years: number): string {
  return `The ditch that takes the water floods once in (${years})`;
}

/** The same, below its question on a screen. */
export function floodWhy(years: number): string {
  return `A ditch in flood backs up into the drain. Left empty it is ${years} years.`;
}

/** How long a power cut lasts, in a file. */
export function powerCutNote(hours: number): string {
  return `longest power cut to be ready for; empty: ${hours} (a day)`;
}

/** The same, in a box on paper. */
export function powerCutBox(hours: number): string {
  return `Longest power cut to be ready for (${hours})`;
}

/** The same, below its question on a screen. */
export function powerCutWhy(hours: number): string {
  return `Storms and power cuts come together. Left empty it is ${hours} hours.`;
}
