/** From the bytes of a file to its text; only UTF-8 is taken, because anything else would be guessed. */

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
    if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
      return refuse('not-utf8', 'invalid encoding - the file is in UTF-16');
    }
    try {
      text = new TextDecoder('utf-8', { fatal: true }).decode(content);
    } catch {
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
