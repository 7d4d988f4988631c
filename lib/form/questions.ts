/** How a question of the form is put. */
import type { UnitSystem } from '../units/index.js';

/** An answer to choose. */
export interface Choice {
  /** as it stands in the file */
  value: string;
  words: string;
  /** heading it stands under in a long list */
  group?: string;
}

/** A question: one fact, or one column of a row. */
export interface Question {
  /** of the item or column */
  name: string;
  ask: string;
  /** what is meant, and why it matters, in a sentence */
  why: string;
  /** absent: a number or words to type */
  how?: 'choice' | 'months' | 'date' | 'time' | 'text' | 'photo' | 'hole';
  choices?: readonly Choice[];
  /** what the answer 'never' or 'high' means beside a number */
  word?: Choice;
  /** of a bare number */
  unit?: Readonly<Record<UnitSystem, string>>;
  /** asked under 'More' */
  more?: true;
  /** asked only where another fact has this value */
  only?: { name: string; is: string };
}

/** Units of lengths that are long, and of those that are short. */
export const LONG = { metric: 'm', us: 'ft' } as const;
export const SHORT = { metric: 'cm', us: 'in' } as const;
export const AREA = { metric: 'm2', us: 'ft2' } as const;
export const SAME = (unit: string) => ({ metric: unit, us: unit });

export const YES_NO: readonly Choice[] = [
  { value: 'yes', words: 'Yes' },
  { value: 'no', words: 'No' },
];
export const YES_NO_UNKNOWN: readonly Choice[] = [...YES_NO, { value: 'unknown', words: 'I do not know' }];

/** Months by name. */
export const MONTH_NAMES =
  'January February March April May June July August September October November December'.split(' ');
export const MONTH_CHOICES: readonly Choice[] = MONTH_NAMES.map((words, at) => ({
  value: String(at + 1),
  words,
}));

/** Units that may be chosen beside a number, by that of the question. */
export const UNIT_CHOICES: readonly (readonly string[])[] = [
  ['m', 'cm', 'mm', 'ft', 'in'],
  ['m2', 'ft2'],
  ['mm', 'cm', 'in'],
  ['C', 'F'],
  ['m/s', 'm/d', 'mm/h', 'in/h'],
  ['kPa', 'psf'],
];

/** Units as people read them. */
export const UNIT_WORDS: Readonly<Record<string, string>> = {
  m2: 'm²',
  ft2: 'ft²',
  C: '°C',
  F: '°F',
  deg: 'degrees',
  d: 'days',
  h: 'hours',
  min: 'minutes',
  'm3/d': 'm³ a day',
  ratio: 'a year',
};
