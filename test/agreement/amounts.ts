/**
 * Amounts as a reader takes them from a text: what the value may have been before it was rounded.
 * Read here by itself, from the words alone; nothing of the library's own formatting is used.
 */

/** From which to which a value lies, SI. */
export interface Span {
  low: number;
  high: number;
}

/** How a text was rounded: to the nearest, never more than the value, never less. */
export type Side = 'near' | 'down' | 'up';

const INCH = 0.0254;
const METRIC = String.raw`[\d\u202f]+(?:\.\d+)? (?:m|cm|mm)(?![\w²³/])`;
const US = String.raw`(?:[\d\u202f]+ ft(?: \d+(?:\/\d+)?(?: \d+\/\d+)? in)?|\d+\/\d+ in|\d+(?:\.\d+)?(?: \d+\/\d+)? in)(?![\w²³/])`;
/** A length or a level, as a part of a pattern. */
export const LENGTH = `[+−-]?(?:${METRIC}|${US})`;

interface Read {
  value: number;
  step: number;
}

function metric(text: string, gap: boolean): Read {
  const [digits = '', unit = ''] = text.replaceAll('\u202f', '').split(' ');
  const size = { m: 1, cm: 0.01, mm: 0.001 }[unit]!;
  const decimals = digits.split('.')[1]?.length ?? 0;
  if (unit === 'm' && Number(digits) === 0) return { value: 0, step: 0.001 };
  // Whole centimetres are meant by what is to spare; elsewhere a nought was dropped.
  if (unit === 'cm') return { value: Number(digits) * size, step: gap ? 0.01 : 0.001 };
  if (unit === 'mm') return { value: Number(digits) * size, step: Math.max(10 ** -decimals, 0.1) * size };
  return { value: Number(digits), step: 10 ** -decimals };
}

function us(text: string): Read {
  const [, feet = '0', rest = ''] = /^(?:([\d\u202f]+) ft ?)?(.*)$/.exec(text)!;
  const inches = rest
    .replace(/ ?in$/, '')
    .split(' ')
    .filter(Boolean)
    .map((part) => {
      const [above, below] = part.split('/').map(Number);
      return below === undefined ? above! : above! / below;
    })
    .reduce((sum, part) => sum + part, 0);
  const all = Number(feet.replaceAll('\u202f', '')) * 12 + inches;
  const parts = all >= 12 ? 2 : all >= 1 ? 4 : 16;
  // Less than a sixteenth is told in tenths and hundredths.
  return {
    value: all * INCH,
    step: (all > 0 && all < 1 / 16 ? 10 ** Math.floor(Math.log10(all) + 1e-9) : 1 / parts) * INCH,
  };
}

/** A signed length; of a `gap` centimetres are whole. */
export function lengthIn(text: string, side: Side, gap = false): Span {
  const [, sign = '', size = ''] = /^([+−-]?)(.*)$/.exec(text.trim())!;
  const { value, step } = / (?:m|cm|mm)$/.test(size) ? metric(size, gap) : us(size);
  const at = sign === '−' || sign === '-' ? -value : value;
  if (side === 'near') return { low: at - step / 2, high: at + step / 2 };
  return side === 'down' ? { low: at, high: at + step } : { low: at - step, high: at };
}

/** `0.15 m below the ground`, `at the ground`, `level with the lowest ground at the rim`. */
export function placeIn(text: string, side: Side): Span {
  const found = new RegExp(`(${LENGTH}) (above|below)`).exec(text);
  // Water less than a centimetre from the ground is told as at it.
  const least = /at the ground/.test(text) ? 0.0105 : 0.0055;
  if (!found) return { low: -least, high: least };
  return lengthIn(`${found[2] === 'below' ? '−' : ''}${found[1]}`, side);
}

/** A chance in percent. */
export function percentIn(text: string): Span {
  if (/less than 0\.1 %/.test(text)) return { low: 0, high: 0.001 };
  if (/more than 99 %/.test(text)) return { low: 0.99, high: 1 };
  const digits = /(\d+(?:\.\d+)?) %/.exec(text)?.[1];
  if (digits === undefined) throw new Error(`no chance in '${text}'`);
  const value = Number(digits) / 100;
  // Two digits.
  const step = value === 0 ? 0.001 : 10 ** (Math.floor(Math.log10(value) + 1e-9) - 1);
  return { low: value - step / 2, high: Math.min(value + step / 2, 1) };
}

const ORDERS = [1, 1.5, 2, 3, 5, 7];

/** How often, as people say it: `about 1 year in 150`, `most years`. */
export function oftenIn(text: string): Span {
  const words = text.replaceAll('dig', 'year');
  if (/less often than 1 year in 1000/.test(words)) return { low: 0, high: 0.001 };
  if (/nearly every year/.test(words)) return { low: 0.95, high: 1 };
  if (/most years/.test(words)) return { low: 0.6, high: 0.95 };
  if (/every other year/.test(words)) return { low: 0.4, high: 0.6 };
  const years = Number(/1 year in (\d+)/.exec(words)?.[1] ?? Number.NaN);
  if (Number.isNaN(years)) return percentIn(text);
  const all = [0, 1, 2, 3].flatMap((power) => ORDERS.map((order) => order * 10 ** power));
  // Half a year is written as a whole one.
  const of = all.map((order, at) => ({ order, at })).filter(({ order }) => Math.round(order) === years);
  const [first, last] = [of[0]!.at, of.at(-1)!.at];
  const between = (a: number, b: number) => Math.sqrt(all[a]! * all[b]!);
  return {
    low: 1 / between(last, Math.min(last + 1, all.length - 1)),
    high: first === 0 ? 1 : 1 / between(first - 1, first),
  };
}

/** A time to stand empty, in hours, told down. */
export function hoursIn(text: string): Span {
  if (/less than 1 hour|at once/.test(text)) return { low: 0, high: 1 };
  const [, size, unit] = /(\d+) (hour|day)/.exec(text) ?? [];
  const hours = Number(size) * (unit === 'day' ? 24 : 1);
  return { low: hours, high: hours + (unit === 'day' ? 24 : 1) };
}

const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June'],
  ...['July', 'August', 'September', 'October', 'November', 'December'],
];
/** A month's name, as a part of a pattern. */
export const MONTH = `(?:${MONTHS.join('|')})`;
/** Several months, as a part of a pattern. */
export const MONTHS_SAID = `(?:all year|any month|no month|${MONTH}(?:(?: to |, | and |, from | and from |, in | and in )${MONTH})*)`;
export const YEAR = Array.from({ length: 12 }, (_, at) => at + 1);

const AT_MOST = '(?: for at most (less than 1 hour|\\d+ (?:hours?|days?)))?';
/** When it may be emptied, as a part of a pattern: months, how long, and others with how long. */
export const WHEN = `(?:in|from) (${MONTHS_SAID})${AT_MOST}(?:, or (?:in|from) (${MONTHS_SAID})${AT_MOST})?`;

/** Months in which it may be emptied: on any day, or for so long only. */
export interface When {
  free: number[];
  brief: number[];
  /** on any day, or for so long only: told with a time alike */
  timed?: number[];
  /** of those for so long only, at least */
  hours?: Span;
}

/** Reads them, as found with {@link WHEN}. */
export function whenIn([, months, hours, others, otherHours]: RegExpExecArray): When {
  const first = monthsIn(months!);
  const second = others ? monthsIn(others) : [];
  const atLeast = (text: string) => ({ low: hoursIn(text).low, high: Number.POSITIVE_INFINITY });
  // Of months that go before others, a time is what is planned.
  if (otherHours) return { free: first, brief: second, hours: atLeast(otherHours) };
  return hours
    ? { free: [], brief: [], timed: first, hours: atLeast(hours) }
    : { free: [...first, ...second], brief: [] };
}

/** 1–12 of a month's name or its first three letters. */
export function monthIn(name: string): number {
  const at = MONTHS.findIndex((month) => month.slice(0, 3) === name.slice(0, 3));
  if (at < 0) throw new Error(`no month: '${name}'`);
  return at + 1;
}

/** `November to February, May`. */
export function monthsIn(text: string): number[] {
  if (/all year|any month/.test(text)) return YEAR;
  if (/no month/.test(text)) return [];
  return text.split(/(?:, | and )(?:from |in )?/).flatMap((run) => {
    const [from, to = from] = run.split(' to ').map(monthIn);
    const length = ((to! - from! + 12) % 12) + 1;
    return Array.from({ length }, (_, at) => ((from! - 1 + at) % 12) + 1);
  });
}
