/** What the command says of its work and of files. */

/**
 * How far the work is.
 * @param cell - of the notebook, from 1
 * @param cells - how many there are
 * @param heading - over the cell
 * @returns a line
 */
export function cellProgress(cell: number, cells: number, heading: string): string {
  return `cell ${cell} of ${cells}: ${heading}`;
}

/**
 * Jupyter is missing.
 * @param spec - place of the kernel
 * @returns what to do
 */
export function noJupyterWords(spec: string): string {
  return `The kernel is in ${spec}; Jupyter is not installed: pip install jupyterlab, then npm run lab`;
}

/** Files of a new survey, and where they stand. */
export function wroteIntoWords(folder: string, files: readonly string[]): string {
  return `wrote into ${folder}: ${files.join(', ')}`;
}

/** What is done with a new survey. */
export function nextWithSurvey(sheet: string, folder: string): string {
  return `Print ${sheet}, take it outside, type in what it holds, then: underpond ${folder}`;
}

/** What is done with the form. */
export function wroteFormWords(file: string): string {
  return `wrote ${file}: open it in a browser, or send it to your phone`;
}
