/** Text of strangers, fit to be shown. */

/** Controls, characters that are not seen or turn the text after them, line separators, halves of a pair. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu;

/**
 * The text on one line, what cannot be seen shown as `�`.
 * @param text - any
 * @returns one line
 */
export function visible(text: string): string {
  return text.replace(/[\t\r\n]+/g, ' ').replace(UNSEEN, '\ufffd');
}

/** The text as plotly.js draws it letter by letter: it reads some HTML tags and a few entities in every label. */
export function plotText(text: string): string {
  const signs: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };
  return visible(text).replace(/[&<>]/g, (sign) => signs[sign]!);
}
