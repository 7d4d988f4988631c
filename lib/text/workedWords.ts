/** What stands over the worked calculation. */

/**
 * How its steps are read.
 * @param digits - to which a calculator agrees
 * @returns sentences
 */
export function workedIntro(digits: number): string {
  return `Recorded from the code that gave the answer, in SI units. Each step gives the equation, the numbers put in with where each came from, the result, and its source. Typed into a calculator as shown, every result agrees to ${digits} digits or better where no small difference of large numbers is taken. The same steps stand in worked.csv.`;
}

/**
 * Name of the numbers put into a step.
 * @param step - by its number
 * @returns a title
 */
export function stepInputs(step: string): string {
  return `Step ${step}: numbers put in`;
}
