/** What the form did with what was typed, and what it asks to have mended. */

/** Kept, at a time of the day. */
export function keptAtWords(time: string): string {
  return `Kept in this browser, on this device, at ${time}. Nothing is sent anywhere.`;
}

/** Files that were kept and are not there. */
export function lostWords(files: readonly string[]): string {
  return `This browser has not kept ${files.join(', ')}. Attach what is missing again.`;
}

/** Something was taken out. */
export function takenOutWords(what: string): string {
  return `${what} was taken out.`;
}

/** A file was handed to the browser. */
export function savedWords(file: string): string {
  return `Saved as ${file}, where this browser puts what it downloads.`;
}

/** A photo is left out of the page. */
export function photoUnreadWords(photo: string): string {
  return `The photo ${photo} cannot be read, so the page is without it.`;
}

/** A photo is named and not there. */
export function photoMissingWords(photo: string): string {
  return `To mend: ${photo} is not here. Add the photo again, or take it out.`;
}

/**
 * A survey was opened.
 * @param asTheyCame - files that count and are not shown row by row
 * @returns sentences
 */
export function openedWords(asTheyCame: readonly string[]): string {
  if (asTheyCame.length === 0) return 'Opened.';
  const count = asTheyCame.length === 1 ? 'counts as it is and is' : 'count as they are and are';
  return `Opened. ${asTheyCame.join(', ')} ${count} not shown here row by row.`;
}

/** Files that count as they came, where their rows would stand. */
export function asTheyCameWords(files: readonly string[]): string {
  return `${files.join(', ')} came in a way that cannot be shown here row by row. It counts as it is. What is wrong with it is to be mended in the file itself, or it is taken out and typed here anew.`;
}

/** A name that another hole has. */
export function holeThereWords(hole: string): string {
  return `There is a hole called ${hole} already.`;
}

/** A step in which something is wrong or missing. */
export function mendUnderWords(step: string): string {
  return `Something to mend or fill in under “${step}”`;
}

/** A row in which something is wrong or missing. */
export function rowToMendWords(row: string): string {
  return `${row}: to be mended or filled in`;
}

/** A row of a file that is asked nowhere. */
export function inFileWords(item: string, value: string, unit: string): string {
  return `In the file stands “${item}”: ${value} ${unit}`;
}

/**
 * What was assumed of a fact.
 * @param value - taken
 * @param reason - why
 * @returns a sentence begun small
 */
export function takenAsWords(value: string, reason: string): string {
  return `taken as ${value}, ${reason}.`;
}

/** Facts that are assumed and not told here. */
export function moreAssumedWords(count: number): string {
  return `And ${count} more, which the page lists.`;
}
