/** Quantities as people read them, in either system. */
import { InputError } from './inputError.js';
import { DAY, FOOT, INCH, POUND_FORCE, US_GALLON } from './unit.js';

/** Which units a reader is used to. */
export type UnitSystem = 'metric' | 'us';

/**
 * What is shown: `length`; `depth`, a length beside others in a column, in metres or in feet and inches; `level`, the same
 * with its sign (+ above, − below); `area`; `volume` of water; `bulk`, a volume of
 * soil or stone; `flow`; `permeability`; `pressure`; `fraction`; `time`; `temperature`.
 */
export type QuantityKind =
  | 'length'
  | 'depth'
  | 'level'
  | 'area'
  | 'volume'
  | 'bulk'
  | 'flow'
  | 'permeability'
  | 'pressure'
  | 'fraction'
  | 'time'
  | 'temperature';

const MINUS = '\u2212';
const THIN = '\u202f';
const LEAST_LEVEL = 0.0005;
const PSF = POUND_FORCE / FOOT ** 2;

/**
 * Writes a quantity with its unit, rounded to what a tape, a bucket or a bill can use; what it writes (for a
 * permeability: the part before the bracket) `parseQuantity` reads back to the same rounding.
 * @param value in SI (fraction 0–1, temperature °C); must be finite
 * @param kind what it is
 * @param system `metric`, or `us` for US customary units
 * @returns such as `0.95 m`, `4.5 cm`, `3 ft 1 1/2 in`, `130 gal/day`, `1.0×10⁻⁸ m/s (0.86 mm/day)`
 * @throws InputError when the value is not finite: a figure that does not exist must never be shown
 * @example
 * ```ts
 * formatQuantity(0.9779, 'length', 'us'); // '3 ft 2 1/2 in'
 * ```
 */
export function formatQuantity(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (!Number.isFinite(value))
    throw new InputError('invalid-input', `invalid ${kind} ${value} - only finite numbers can be shown`);
  const us = system === 'us';
  const size = Math.abs(value);
  const text = (amount: number, unit: string) => `${significant(amount)} ${unit}`;
  switch (kind) {
    case 'length':
      return signed(value, length(size, us), '');
    case 'depth':
    case 'level':
      return signed(value, us ? feetAndInches(levelled(size)) : metres(size), kind === 'level' ? '+' : '');
    case 'area':
      return signed(value, us ? text(size / FOOT ** 2, 'ft²') : text(size, 'm²'), '');
    case 'volume':
      return signed(value, us ? text(size / US_GALLON, 'gal') : litres(size, ''), '');
    case 'bulk':
      return signed(value, us ? text(size / (3 * FOOT) ** 3, 'yd³') : text(size, 'm³'), '');
    case 'flow':
      return signed(value, us ? text((size * DAY) / US_GALLON, 'gal/day') : litres(size * DAY, '/day'), '');
    case 'permeability':
      return signed(value, permeability(size, us), '');
    case 'pressure':
      return signed(value, us ? text(size / PSF, 'lb/ft²') : text(size / 1000, 'kPa'), '');
    case 'fraction':
      return signed(value, text(size * 100, '%'), '');
    case 'time':
      return signed(value, duration(size), '');
    case 'temperature': {
      const degrees = us ? value * 1.8 + 32 : value;
      return signed(degrees, `${fixed(Math.abs(degrees), 1)} °${us ? 'F' : 'C'}`, '');
    }
  }
}

/**
 * Writes a length or a level as {@link formatQuantity} does, rounded to one side only: 'down' for what is had at least
 * (`0.16 m or more to spare`), 'up' for what must be kept at least (`not below +0.34 m`).
 * @param value in m; must be finite
 * @param kind what it is
 * @param system `metric`, or `us` for US customary units
 * @param side the text is never more (`down`), or never less (`up`) than the value, to a millionth of a millimetre
 * @returns such as `0.95 m` or `3 ft 1 in`
 * @throws InputError when the value is not finite
 * @example
 * ```ts
 * formatBound(0.1655, 'length', 'metric', 'down'); // '0.16 m'
 * ```
 */
export function formatBound(
  value: number,
  kind: 'length' | 'depth' | 'level',
  system: UnitSystem,
  side: 'down' | 'up',
): string {
  if (!Number.isFinite(value))
    throw new InputError('invalid-input', `invalid ${kind} ${value} - only finite numbers can be shown`);
  const up = (side === 'up') === value > 0;
  const round = (steps: number) => (up ? Math.ceil(steps - STEP_SLACK) : Math.floor(steps + STEP_SLACK));
  const size = Math.abs(value);
  if (system === 'us') return signed(value, feetAndInches(size, round), kind === 'level' ? '+' : '');
  const plus = kind === 'level' ? '+' : '';
  return signed(value, kind === 'length' ? length(size, false, round) : metres(size, round), plus);
}

/**
 * Writes what is to spare, or lacking, as a hand or a tape shows it: whole centimetres up to a metre, rounded to one side.
 * @param value in m; must be finite
 * @param system `metric`, or `us` for US customary units
 * @param side as of {@link formatBound}
 * @returns such as `12 cm`, `1.37 m` or `4 3/4 in`
 * @throws InputError when the value is not finite
 * @example
 * ```ts
 * formatGap(0.128, 'metric', 'down'); // '12 cm'
 * ```
 */
export function formatGap(value: number, system: UnitSystem, side: 'down' | 'up'): string {
  const round = side === 'up' ? Math.ceil : Math.floor;
  const centimetres = round(value * 100 + (side === 'up' ? -STEP_SLACK : STEP_SLACK));
  if (system === 'us' || !(Math.abs(centimetres) < 100)) return formatBound(value, 'length', system, side);
  return signed(centimetres, `${Math.abs(centimetres)} cm`, '');
}

/** Part of a step that arithmetic loses. */
const STEP_SLACK = 1e-6;

/** Nobody levels closer than half a millimetre. */
const levelled = (size: number) => (size < LEAST_LEVEL ? 0 : size);

type Round = (steps: number) => number;

function length(size: number, us: boolean, round?: Round): string {
  if (us) return feetAndInches(size, round);
  const millimetres = (round ?? Math.round)(size * 1000);
  if (millimetres >= 100) return `${grouped((round ? round(size * 100) / 100 : size).toFixed(2))} m`;
  if (millimetres >= 10) return `${significant(millimetres / 10)} cm`;
  return `${significant(round ? round(size * 1e4) / 10 : size * 1000, 2)} mm`;
}

/** Levels stand beside one another: metres all of them, to the centimetre, nearer the datum to the millimetre. */
function metres(size: number, round: Round = Math.round): string {
  const millimetres = round(size * 1000);
  if (millimetres === 0) return '0 m';
  if (millimetres < 10) return `${(millimetres / 1000).toFixed(3)} m`;
  return `${grouped((round(size * 100) / 100).toFixed(2))} m`;
}

/** To the nearest 1/2 in from a foot up, 1/4 in below, 1/16 in below one inch. */
function feetAndInches(size: number, round?: Round): string {
  const inches = size / INCH;
  if (inches < 1 / 16 && !round) return `${significant(inches, 1)} in`;
  const parts = inches >= 12 ? 2 : inches >= 1 ? 4 : 16;
  const steps = (round ?? Math.round)(inches * parts);
  if (steps === 0) return '0 in';
  const feet = Math.floor(steps / (12 * parts));
  const rest = steps - feet * 12 * parts;
  const whole = Math.floor(rest / parts);
  const fraction = reduced(rest - whole * parts, parts);
  const inchText = [whole > 0 ? String(whole) : '', fraction].filter(Boolean).join(' ');
  return [feet > 0 ? `${grouped(String(feet))} ft` : '', inchText ? `${inchText} in` : '']
    .filter(Boolean)
    .join(' ');
}

function reduced(above: number, below: number): string {
  if (above === 0) return '';
  return above % 2 === 0 ? reduced(above / 2, below / 2) : `${above}/${below}`;
}

function litres(cubicMetres: number, per: string): string {
  return cubicMetres < 0.9995
    ? `${significant(cubicMetres * 1000)} L${per}`
    : `${significant(cubicMetres)} m³${per}`;
}

function permeability(size: number, us: boolean): string {
  const perDay = us
    ? `${significant((size * DAY) / INCH, 2)} in/day`
    : `${significant(size * DAY * 1000, 2)} mm/day`;
  if (size === 0) return `0 m/s (${perDay})`;
  const [digits = '', exponent = ''] = size.toExponential(1).split('e');
  const power = String(Number(exponent)).replace(/[-\d]/g, (sign) =>
    sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(sign)),
  );
  return `${digits}×10${power} m/s (${perDay})`;
}

function duration(seconds: number): string {
  if (seconds < 2 * 3600) return `${significant(seconds / 60)} min`;
  return seconds < 3 * DAY ? `${significant(seconds / 3600)} h` : `${significant(seconds / DAY)} days`;
}

/** `digits` significant figures, never an exponent, whole numbers kept whole. */
function significant(size: number, digits = 3): string {
  if (size === 0) return '0';
  const rounded = Number(size.toPrecision(digits));
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(rounded)));
  return grouped(fixed(rounded, Math.min(decimals, 100)));
}

function fixed(size: number, decimals: number): string {
  const text = size.toFixed(decimals);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Groups of three from five digits on, apart by a thin space: a comma would be read as a decimal sign by some. */
function grouped(text: string): string {
  const [whole = '', decimals] = text.split('.');
  const spaced = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, THIN) : whole;
  return decimals === undefined ? spaced : `${spaced}.${decimals}`;
}

/** Puts the sign before the size; what rounds to nothing has none. */
function signed(value: number, size: string, positive: '' | '+'): string {
  if (!/[1-9]/.test(size.replace(/\(.*|[²³]|10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, ''))) return size;
  return (value < 0 ? MINUS : positive) + size;
}
