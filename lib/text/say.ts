import { type Coded, LEAST_CHANCE, type OptionName } from '../contract/index.js';
import { FOOT, formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { listText } from './sentence.js';

/** Numbers in words, in a system of units. */
export function sayer(units: UnitSystem) {
  const placed = (level: string) => {
    const size = level.replace(/^[+−]/, '');
    if (size === level) return 'level with the lowest ground at the rim';
    return `${size} ${level.startsWith('+') ? 'above' : 'below'} the lowest ground at the rim`;
  };
  const length = (m: number) => formatQuantity(m, 'length', units);
  return {
    length,
    /** what may be had at most, rounded down */
    atMost: (m: number) => formatBound(m, 'length', units, 'down'),
    /** from what depth a rule holds: a rule in feet to the decimetre, down */
    from: (m: number) =>
      units === 'us' ? `${Math.round(m / FOOT)} ft` : length(Math.floor(10 * m + 1e-9) / 10),
    /** what must be had at least, rounded up */
    atLeast: (m: number) => formatBound(m, 'length', units, 'up'),
    /** a level by the ground */
    level: (m: number) => placed(formatQuantity(m, 'level', units)),
    /** a level not to fall below, rounded up */
    lowest: (m: number) => placed(formatBound(m, 'level', units, 'up')),
    /** a level not to rise above, rounded down */
    highest: (m: number) => placed(formatBound(m, 'level', units, 'down')),
    flow: (m3s: number) => formatQuantity(m3s, 'flow', units),
    /** a flow of minutes */
    aMinute: (m3s: number) => `${formatQuantity(m3s * 60, 'volume', units)} a minute`,
    /** the bore of a pipe or a hole, as it is sold */
    bore: (m: number) => (units === 'us' ? length(m) : `${Number((m * 1000).toPrecision(3))} mm`),
    /** a push on a length of wall or rim, N/m */
    push: (newtons: number) => {
      if (units === 'us') return `${twoDigits((newtons * FOOT) / POUND)} lb on every foot`;
      return newtons < 1000
        ? `${twoDigits(newtons)} N on every metre`
        : `${twoDigits(newtons / 1000)} kN on every metre`;
    },
  };
}

/** A load is not told smaller than it is. */
const twoDigits = (value: number) => {
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Number((Math.ceil(value / step - 1e-9) * step).toPrecision(2));
};
/** Pound of force, N. */
const POUND = 0.45359237 * 9.80665;

/** What puts numbers into words, from {@link sayer}. */
export type Say = ReturnType<typeof sayer>;

/** The words for everything that a catalogue can say. */
export type Wording<Catalogue> = {
  [Code in keyof Catalogue]: (values: Catalogue[Code], say: Say) => string;
};

/** The words of a table for what is said. */
export function wordsOf<Catalogue>(words: Wording<Catalogue>, { code, values }: Coded<Catalogue>, say: Say) {
  return words[code](values, say);
}

/** An option as the beginning of a sentence. */
export const WITH_OPTION: Record<OptionName, string> = {
  'no-drain': 'With no drain',
  'surface-water-only': 'With surface water kept out',
  'cutoff-drain': 'With a cut-off drain uphill',
  'drain-to-outlet': 'With the drain to an outlet',
  'drain-to-sump': 'With the drain to a pumped sump',
  'raise-pond': 'With the pond raised',
  ballast: 'With the slab on the liner',
};

/** Options built at once as the beginning of a sentence. */
export function withOptions([first, ...others]: OptionName[]): string {
  return listText([WITH_OPTION[first!], ...others.map((each) => WITH_OPTION[each].replace('With ', ''))]);
}

/** A good chance in percent, rounded down to a whole one as the figure of the digging window has it: `94 %`. */
export function atLeastText(chance: number): string {
  return chance < 0.01 ? chanceText(chance) : `${wholePercent(chance)} %`;
}

/** Whole percents that a chance reaches. */
export function wholePercent(chance: number): number {
  return Math.floor(100 * chance + 1e-9);
}

/**
 * A chance in percent, two digits, that never rounds a doubt away: `4.1 %`, `less than 0.1 %`, `more than 99 %`.
 * @param chance - 0–1
 * @returns text
 * @example
 * ```ts
 * chanceText(0.041); // '4.1 %'
 * ```
 */
export function chanceText(chance: number): string {
  if (chance < LEAST_CHANCE) return 'less than 0.1 %';
  if (chance >= 0.995 && chance < 1) return 'more than 99 %';
  return `${Number((100 * chance).toPrecision(2))} %`;
}

/** Orders in which rare years are told. */
const ORDERS = [1, 1.5, 2, 3, 5, 7, 10];

/**
 * A chance that rests on how something is kept, as an order: `about 1 year in 150`.
 * @param chance - a year, above 0 and at most 1
 * @returns text
 * @example
 * ```ts
 * orderText(0.0068); // 'about 1 year in 150'
 * ```
 */
export function orderText(chance: number): string {
  const years = 1 / chance;
  const ten = 10 ** Math.floor(Math.log10(years) + 1e-9);
  const off = (order: number) => Math.abs(Math.log(years / (order * ten)));
  const order = ORDERS.reduce((a, b) => (off(b) < off(a) ? b : a));
  return `about 1 year in ${Math.round(order * ten)}`;
}

/**
 * How often a year fails, as people say it: `about 1 year in 150`, `most years`.
 * @param chance - a year, 0–1
 * @returns text
 * @example
 * ```ts
 * oftenText(0.62); // 'most years'
 * ```
 */
export function oftenText(chance: number): string {
  if (chance < LEAST_CHANCE) return 'less often than 1 year in 1000';
  if (chance >= 0.95) return 'nearly every year';
  if (chance >= 0.6) return 'most years';
  if (chance >= 0.4) return 'about every other year';
  return orderText(chance);
}

/** A chance a year as it may be told: `4.1 % a year`, or as an order where it rests on upkeep. */
export function yearlyText(risk: { per_year: number; upkeep: number }): string {
  return isUpkeep(risk)
    ? `${orderText(risk.per_year)}; set by how it is kept`
    : `${chanceText(risk.per_year)} a year`;
}

/** Whether most of a chance comes of how drain, flap and pump are kept, and not of the water. */
export function isUpkeep({ per_year, upkeep }: { per_year: number; upkeep: number }): boolean {
  return upkeep > 0.5 * per_year && per_year >= LEAST_CHANCE;
}
