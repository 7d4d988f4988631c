/** What stands over the worked calculation. */

/**
 * How its steps are read.
 * @param digits - printed of every number
 * @param steps - how many there are
 * @returns sentences
 */
export function workedIntro(digits: number, steps: number): string {
  return (
    `Recorded from the code that gave the answer, in SI units, in ${steps} steps. Each gives the equation, every number put in, in brackets where it is from, and the result. ` +
    `A number is from an earlier step, from a line of a file of the survey, from the simulated years in yearly-heads.csv, or assumed. ` +
    `Every result is made of the numbers as they are printed, to ${digits} digits. The same steps with all digits stand in worked.csv. The list at the end says what each symbol means.`
  );
}

/**
 * Name of the list of formulas.
 * @returns a title
 */
export function formulaName(): string {
  return 'The formulas of these steps, what their symbols mean, and their sources';
}

/**
 * Steps that a part takes again.
 * @param steps - their numbers
 * @returns a sentence; empty for none
 */
export function againWords(steps: readonly number[]): string {
  return steps.length > 0 ? ` From above: ${steps.length > 1 ? 'steps' : 'step'} ${steps.join(', ')}.` : '';
}
