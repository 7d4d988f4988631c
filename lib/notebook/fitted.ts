/** Lines that fit a terminal. */

/** Room for the words that stand before every line, and as much again. */
const NARROWEST = 24;

/**
 * Breaks lines at spaces so that they fit, further lines set in.
 * @param columns characters of the terminal; on fewer than 24 they run over
 */
export function fitted(lines: readonly string[], columns: number): string[] {
  const width = Math.max(columns, NARROWEST);
  return lines.flatMap((line) => {
    const parts: string[] = [];
    let rest = line;
    while (rest.length > width) {
      const at = rest.lastIndexOf(' ', width);
      const end = at > 11 ? at : width;
      parts.push(rest.slice(0, end));
      rest = `${' '.repeat(11)}${rest.slice(end).trimStart()}`;
    }
    return [...parts, rest];
  });
}
