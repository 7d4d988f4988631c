/** A number with its unit, as written on a tape, a plan or a form. */

import { QuantityError } from './error.js';
import { type DecimalSign, NUMBER, parseNumber, plain } from './number.js';
import { type Dimension, dimensionOf, EXAMPLES, findUnit, type Unit } from './unit.js';

/** A quantity read, and the units that stood beside its numbers (empty: it took the default unit). */
interface Quantity {
  /** in SI */
  value: number;
  units: string[];
}

interface Part {
  text: string;
  number: number;
  unit: string;
}

/** Characters of the longest quantity that is read. */
const LONGEST = 400;
/** Figures of a value that are kept: more than any tape has, and short of those that depend on the unit written. */
const FIGURES = 13;
/** Decimals of a value whose unit has an offset, whose first figures may cancel. */
const DECIMALS = 9;

const PLAIN_NUMBER = /^-?\d+(\.\d+)?(e[+-]?\d+)?$/i;
const WHOLE_NUMBER = /^-?\d+$/;
const METRIC_LENGTH = /^(k|c|m)?m|metre|meter/i;

/**
 * Reads a quantity such as `3 ft 2 1/2 in`, `3'2"`, `1 m 20 cm`, `0,95 m`, `1e-7 cm/s`, `20 °C` or `38½ in`.
 * A comma is taken only where it can mean one thing. Lengths and times may have several parts, each smaller than
 * one of the part before, all but the last whole.
 * @param text what was written; typographic signs are understood
 * @param dimension what it has to measure
 * @param defaultUnit the unit of a bare number, such as that of the column's header; without it a unit is needed
 *   (a bare number is complete where the dimension is `none`)
 * @param decimals the sign before decimals where the text comes from
 * @returns the value in SI (°C, degrees and fractions for those dimensions) and the units written
 * @throws QuantityError with the fault, the text and a remedy
 */
export function readQuantity(
  text: string,
  dimension: Dimension,
  defaultUnit?: string,
  decimals: DecimalSign = 'point',
): Quantity {
  const given = text.trim();
  if (given === '') throw new QuantityError('missing-value', text, 'nothing is written', 'Write a number.');
  if (given.length > LONGEST)
    throw new QuantityError(
      'invalid-number',
      `${given.slice(0, 20)}…`,
      `${given.length} characters, at most ${LONGEST} are read`,
      'Write one number and its unit.',
    );
  if ((decimals === 'point' ? PLAIN_NUMBER : WHOLE_NUMBER).test(given))
    return { value: bare(Number(given), given, dimension, defaultUnit), units: [] };

  const written = plain(given).replace(/^\+/, '');
  const sign = written.startsWith('-') ? -1 : 1;
  const body = written.replace(/^-\s*/, '');
  const several = dimension === 'length' || dimension === 'time';
  const parts = several ? severalParts(body, decimals) : onePart(body, decimals);
  if (!parts) throw notUnderstood(given, dimension);

  const [first] = parts as [Part, ...Part[]];
  if (parts.length === 1 && first.unit === '') {
    return { value: bare(sign * first.number, given, dimension, defaultUnit), units: [] };
  }
  const units = parts.map((part) => unitOf(part, given, dimension));
  refuseOddParts(parts, units, given, dimension);
  const size = parts.reduce((sum, part, at) => sum + part.number * (units[at] as Unit).factor, 0);
  return {
    value: inSi(sign * size, units[0]?.offset, given),
    units: parts.map((part) => part.unit),
  };
}

/**
 * The value of `readQuantity` alone.
 * @param text what was written
 * @param dimension what it has to measure
 * @param defaultUnit the unit of a bare number
 * @returns the value in SI
 * @throws QuantityError with the fault, the text and a remedy
 * @example
 * ```ts
 * parseQuantity('3 ft 2 1/2 in', 'length'); // 0.9779
 * ```
 */
export function parseQuantity(text: string, dimension: Dimension, defaultUnit?: string): number {
  return readQuantity(text, dimension, defaultUnit).value;
}

function severalParts(body: string, decimals: DecimalSign): Part[] | undefined {
  // A hyphen may join feet and inches, as on plans: 3'-2 1/2".
  const part = new RegExp(String.raw`\s*-?(${NUMBER})\s*([a-z]+\.?|['"])?`, 'iy');
  const parts: Part[] = [];
  while (part.lastIndex < body.length) {
    const match = part.exec(body);
    if (!match || (parts.length === 0 && match[0].startsWith('-'))) return undefined;
    parts.push({
      text: match[0].trim(),
      number: parseNumber((match[1] as string).toLowerCase(), decimals),
      unit: match[2] ?? '',
    });
  }
  return parts;
}

function onePart(body: string, decimals: DecimalSign): Part[] | undefined {
  const match = new RegExp(`^(${NUMBER})\\s*(.*)$`, 'i').exec(body);
  if (!match || /^[\d.,-]/.test(match[2] as string)) return undefined;
  return [
    {
      text: body,
      number: parseNumber((match[1] as string).toLowerCase(), decimals),
      unit: match[2] as string,
    },
  ];
}

function bare(number: number, given: string, dimension: Dimension, defaultUnit: string | undefined): number {
  if (dimension === 'none') return inSi(number, undefined, given);
  const unit = defaultUnit === undefined ? undefined : findUnit(defaultUnit, dimension);
  if (!unit) {
    throw new QuantityError(
      'missing-unit',
      given,
      `${article(dimension)} needs one`,
      `Write ${EXAMPLES[dimension]} behind the number.`,
    );
  }
  return inSi(number * unit.factor, unit.offset, given);
}

function unitOf(part: Part, given: string, dimension: Dimension): Unit {
  const unit = findUnit(part.unit, dimension);
  if (unit) return unit;
  if (part.unit !== '') throw unknownUnit(part.unit, given, dimension);
  throw (
    ofAnotherDimension(given, dimension) ??
    new QuantityError(
      'missing-unit',
      given,
      `'${part.text}' has no unit`,
      'Write a unit behind every number.',
    )
  );
}

function unknownUnit(name: string, given: string, dimension: Dimension): QuantityError {
  const other = dimensionOf(name);
  if (other) {
    const why =
      dimension === 'none'
        ? `'${name}' is a unit, but this is a plain number`
        : `'${name}' measures ${article(other)}, not ${article(dimension)}`;
    return new QuantityError('wrong-unit', given, why, `Use ${EXAMPLES[dimension]}.`);
  }
  return new QuantityError(
    'unknown-unit',
    given,
    dimension === 'none' ? `'${name}' does not belong to a number` : `'${name}' is no unit of ${dimension}`,
    `Use ${EXAMPLES[dimension]}.`,
  );
}

/** `3 m2` is read as 3 m and a stray 2 where a length is expected; better to say that it is an area. */
function ofAnotherDimension(given: string, dimension: Dimension): QuantityError | undefined {
  const tail = /^-?[\d.,]+\s*(\D.*)$/.exec(plain(given))?.[1];
  return tail !== undefined && dimensionOf(tail) ? unknownUnit(tail, given, dimension) : undefined;
}

function notUnderstood(given: string, dimension: Dimension): QuantityError {
  const [, bracketed, about] =
    /^(?:\((\d[^()]*)\)|(?:~|ca\.?|c\.|about|approx\.?)\s*(\d.*))$/i.exec(given) ?? [];
  if (bracketed !== undefined)
    return new QuantityError(
      'invalid-number',
      given,
      'brackets can mean a guess or less than nothing',
      `Write ${bracketed}, and in the note that it is a guess; or -${bracketed}.`,
    );
  if (about !== undefined)
    return new QuantityError(
      'invalid-number',
      given,
      'a guess is read like any number',
      `Write ${about}, and in the note that it is a guess.`,
    );
  return (
    ofAnotherDimension(given, dimension) ??
    new QuantityError(
      'invalid-number',
      given,
      `not ${article(dimension)}`,
      `Write one number${dimension === 'none' ? '' : ` and its unit (${EXAMPLES[dimension]})`}, nothing else.`,
    )
  );
}

function article(dimension: Dimension): string {
  if (dimension === 'none') return 'a number';
  return `${dimension.startsWith('a') ? 'an' : 'a'} ${dimension}`;
}

/** `3.5 ft 2 in`, `1 ft 14 in`, `2 in 1 ft` and `1 m 2 in` are slips more often than they are meant. */
function refuseOddParts(parts: Part[], units: Unit[], given: string, dimension: Dimension): void {
  for (let at = 1; at < parts.length; at++) {
    const [before, part] = [parts[at - 1] as Part, parts[at] as Part];
    const mixed = dimension === 'length' && METRIC_LENGTH.test(before.unit) !== METRIC_LENGTH.test(part.unit);
    const whole = Number.isInteger(before.number);
    const smaller = part.number * (units[at] as Unit).factor < (units[at - 1] as Unit).factor * (1 - 1e-12);
    if (mixed || !whole || !smaller) {
      const why = mixed
        ? 'metric and feet are mixed'
        : !whole
          ? `'${before.text}' is not whole, yet more follows`
          : `'${part.text}' is not less than 1 ${before.unit}`;
      throw new QuantityError('invalid-number', given, why, 'Write it in one unit, or like 3 ft 2 1/2 in.');
    }
  }
}

/** The same amount is the same number in whatever unit it was written: 4.3 mm, 0.43 cm and 0.0043 m. */
function inSi(size: number, offset: number | undefined, given: string): number {
  if (!Number.isFinite(size)) {
    throw new QuantityError('invalid-number', given, 'the number is too large', 'Check the power of ten.');
  }
  // No −0 either.
  return (
    (offset === undefined ? Number(size.toPrecision(FIGURES)) : Number((size + offset).toFixed(DECIMALS))) + 0
  );
}
