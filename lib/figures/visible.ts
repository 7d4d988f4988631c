/** Text of strangers, fit to be shown. */

/** Control characters and those that turn the direction of the text after them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const INVISIBLE = /[\u0000-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb]/g;

/** The text on one line, what cannot be seen shown as `�`; lone surrogates too, which UTF-8 cannot carry. */
export function visible(text: string): string {
  return text
    .replace(/[\t\r\n]+/g, ' ')
    .replace(INVISIBLE, '\ufffd')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');
}

/** The text as plotly.js draws it letter by letter: it reads some HTML tags and a few entities in every label. */
export function plotText(text: string): string {
  return visible(text).replace(/[&<>]/g, (sign) => (sign === '&' ? '&amp;' : sign === '<' ? '&lt;' : '&gt;'));
}
