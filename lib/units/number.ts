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
      if (whole.slice(0, at).endsWith('10')) return `^${digits}`;
      // Behind a unit it is a power, as in m²; behind a digit it would become part of the number.
      return /\d$/.test(whole.slice(0, at)) ? run : digits;
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
 * The sign before the decimals in the text a number stands in, where that is known: a comma in a sheet with semicolons,
 * `either` where both were met there.
 */
export type DecimalSign = 'point' | 'comma' | 'either';

/**
 * Reads one unsigned number that matched `NUMBER`.
 * @param decimals the sign before decimals
 * @throws QuantityError for a comma that can mean two things, a misplaced one, or a zero below a fraction stroke
 */
export function parseNumber(text: string, decimals: DecimalSign = 'point'): number {
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
  const value = Number(withPoint(text, decimals));
  if (!Number.isFinite(value)) throw notANumber(text);
  return value;
}

/** The digits with a point before the decimals, and nothing between thousands. */
function withPoint(text: string, decimals: DecimalSign): string {
  const [digits = '', exponent] = text.split('e');
  const power = exponent === undefined ? '' : `e${exponent}`;
  // 1,200.5 and 1,200,300: the comma can only group thousands. 1.200,5: the comma can only be decimal.
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d+$|^[1-9]\d{0,2}(,\d{3}){2,}$/.test(digits))
    return digits.replaceAll(',', '') + power;
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$|^[1-9]\d{0,2}(\.\d{3}){2,}$/.test(digits))
    return digits.replaceAll('.', '').replace(',', '.') + power;
  const sign = /^[1-9]\d{0,2}([,.])\d{3}$/.exec(digits)?.[1];
  if (sign !== undefined && decimals !== (sign === ',' ? 'comma' : 'point')) {
    const thousands = digits.replace(sign, '');
    const decimal = digits.replace(sign, '.');
    // A fourth decimal keeps it from being taken for thousands.
    const sure = { point: decimal, comma: decimal.replace('.', ','), either: `${decimal}0` }[decimals];
    throw new QuantityError(
      'ambiguous-comma',
      text,
      `the ${sign === ',' ? 'comma' : 'point'} can mean ${thousands} or ${decimal}`,
      `Write ${thousands} or ${sure}.`,
    );
  }
  if (!digits.includes(',')) return text;
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
