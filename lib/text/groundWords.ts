/** What is noted of the ground: the balance of its water, and photos of the holes. */

/**
 * How the water through the year was reckoned, and how near its balance closes.
 * @param model - by name
 * @param closure_mm - largest error of the balance, mm
 * @returns sentences
 */
export function balanceNote(model: string, closure_mm: number): string {
  return `Water through the year: ${model}. Largest error of the water balance: ${Number(closure_mm.toPrecision(1))} mm. “High over low” is the ratio of the values that one in ten exceeds and nine in ten exceed.`;
}

/**
 * What a photo shows.
 * @param pit - by its name in the survey
 * @param note - of the survey; null: none
 * @returns a few words
 */
export function photoWords(pit: string, note: string | null): string {
  return `Photo of ${pit}${note ? `: ${note}` : ''}`;
}

/**
 * A photo that is not in the file.
 * @param pit - by its name in the survey
 * @param note - of the survey; null: none
 * @param photo - its file
 * @returns a sentence
 */
export function unshownPhoto(pit: string, note: string | null, photo: string): string {
  return `${photoWords(pit, note)}: ${photo} is not shown here; keep it with the survey.`;
}
