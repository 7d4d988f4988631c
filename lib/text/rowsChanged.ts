/**
 * Rows of a file of the earlier survey.
 * @param rows - in all
 * @param gone - of them
 * @returns a few words
 */
export function rowsGone(rows: number, gone: number): string {
  return `${rows} rows, ${gone} gone or changed`;
}

/**
 * Rows of a file of the later survey.
 * @param rows - in all
 * @param added - of them
 * @returns a few words
 */
export function rowsAdded(rows: number, added: number): string {
  return `${rows} rows, ${added} new or changed`;
}
