/** Numbers as people type them: vulgar fractions, powers of ten, decimal commas. */

import { QuantityError } from './error.js';

const VULGAR: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** The grammar of one unsigned number inside a longer text; its groups are of no use outside `parseNumber`. */
export const NUMBER = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|(?:\d[\d.,]*|\.\d+)(?:e[+-]?\d+)?)`;

/** Brings typographic signs to plain ones: minus, primes, fractions, superscripts, no-break spaces, powers of ten. */
export function plain(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, (run, at: number, whole: string) => {
      const digits = run
        .replace('⁻', '-')
        .replace('⁺', '')
        .replace(/[⁰-⁹¹²³]/g, (sign) => String(SUPERSCRIPTS.indexOf(sign)));
      return whole.slice(0, at).endsWith('10') ? `^${digits}` : digits;
    })
    .replace(/(\d)[\u00a0\u2009\u202f](?=\d{3}(?![\d/]))/g, '$1')
    .replace(/[\u2212\u2010-\u2013]/g, '-')
    .replace(/[′‘’]{2}|''|[″“”]/g, '"')
    .replace(/[′‘’]/g, "'")
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .replace(/(\d[\d.,]*) ?[×x*] ?10(?:\^\+?|(?=-)|\+)(-?\d+)/gi, '$1e$2')
    .replace(/(?<![\d.])10\^([+-]?\d+)/g, '1e$1')
    .trim();
}

/**
 * Reads one unsigned number that matched `NUMBER`.
 * @throws QuantityError for a comma that can mean two things, a misplaced one, or a zero below a fraction stroke
 */
export function parseNumber(text: string): number {
  const fraction = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (fraction) {
    const [, whole = '0', above, below] = fraction;
    if (Number(below) === 0)
      throw new QuantityError(
        'invalid-number',
        text,
        'nothing can be divided by 0',
        'Write the fraction again.',
      );
    return Number(whole) + Number(above) / Number(below);
  }
  const value = Number(withoutCommas(text));
  if (!Number.isFinite(value)) throw notANumber(text);
  return value;
}

function withoutCommas(text: string): string {
  if (!text.includes(',')) return text;
  const [digits = '', exponent] = text.split('e');
  const power = exponent === undefined ? '' : `e${exponent}`;
  // 1,200.5 and 1,200,300: the comma can only group thousands. 1.200,5: the comma can only be decimal.
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d+$|^[1-9]\d{0,2}(,\d{3}){2,}$/.test(digits))
    return digits.replaceAll(',', '') + power;
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(digits))
    return digits.replaceAll('.', '').replace(',', '.') + power;
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const thousands = digits.replace(',', '');
    const decimal = digits.replace(',', '.');
    throw new QuantityError(
      'ambiguous-comma',
      text,
      `the comma can mean ${thousands} or ${decimal}`,
      `Write ${thousands} or ${decimal}.`,
    );
  }
  if (/^\d+,\d+$/.test(digits)) return digits.replace(',', '.') + power;
  throw notANumber(text);
}

function notANumber(text: string): QuantityError {
  return new QuantityError(
    'invalid-number',
    text,
    'not a number',
    'Write digits with at most one decimal point, such as 0.95.',
  );
}
