/** From the bytes of a file to its text: UTF-8, or UTF-16 that says so; anything else would be guessed. */

import type { Findings } from './problem.js';

const SAVE_AS_UTF8 = "Save it again as 'CSV UTF-8' (in a text editor: encoding UTF-8).";

/**
 * @param file its name, for the problem
 * @param content bytes as stored, or text already decoded
 * @param findings receives a problem when the text can't be had
 * @returns the text with line ends as `\n` and no byte-order mark; undefined when refused
 */
export function decode(file: string, content: string | Uint8Array, findings: Findings): string | undefined {
  const refuse = (code: string, message: string, line?: number) => {
    findings.refuse({ code, file, line, message, expected: 'text in UTF-8', remedy: SAVE_AS_UTF8 });
    return undefined;
  };
  let text: string;
  if (typeof content === 'string') {
    text = content;
  } else {
    const [first, second] = content;
    // Its byte-order mark can be nothing else: no text in UTF-8 holds those bytes.
    const wide = (first === 0xff && second === 0xfe && 'le') || (first === 0xfe && second === 0xff && 'be');
    try {
      text = new TextDecoder(wide ? `utf-16${wide}` : 'utf-8', { fatal: true }).decode(content);
    } catch {
      if (wide)
        return refuse('not-utf8', 'invalid encoding - the file begins as UTF-16 and does not go on so');
      const line = firstBadLine(content);
      return refuse('not-utf8', 'invalid encoding - the file holds bytes that are not UTF-8', line);
    }
  }
  text = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const lineOf = (sign: string) => text.slice(0, text.indexOf(sign)).split('\n').length;
  if (text.includes('\0')) return refuse('not-text', 'invalid text - the file holds NUL bytes', lineOf('\0'));
  if (text.includes('\ufffd')) {
    return refuse(
      'not-utf8',
      'invalid text - a character was lost when the file was saved',
      lineOf('\ufffd'),
    );
  }
  return text;
}

function firstBadLine(bytes: Uint8Array): number {
  let line = 1;
  for (let from = 0; from < bytes.length; line++) {
    const end = bytes.indexOf(0x0a, from);
    const to = end === -1 ? bytes.length : end + 1;
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(from, to));
    } catch {
      return line;
    }
    from = to;
  }
  return line;
}
