/** Words for the steps that count failing years. */

import type { Governs, PerDig } from '../contract/index.js';
import { duringMonths, monthName } from './monthWords.js';
import { GOVERNS_WORDS } from './terms.js';

/** State of the pond whose failing years are counted. */
const STATES = {
  any: ['year', 'in any state as it is used'],
  full: ['full', 'full to the brim'],
  drawn: ['kept', 'as it is kept'],
  'power-out': ['no_pump', 'as it is kept with no pump running'],
} as const;

/** A state whose failing years are counted. */
export type CountedStateName = keyof typeof STATES;

/** What a drain may be found to be. */
interface Found {
  state: 'none' | 'works' | 'flap-stuck' | 'blocked' | 'pumps-out' | 'power-out';
  flooded: boolean;
}

const FOUND: Record<Found['state'], string> = {
  none: '',
  works: 'the drain works',
  'flap-stuck': 'the flap is stuck open',
  blocked: 'the drain is blocked',
  'pumps-out': 'both pumps are out',
  'power-out': 'the power is out and no pump runs',
};

/** Of what else the drain may be found to be, where no year fails. */
export const FOUND_ELSE = 'however else the drain is found';

/** A state by the name that its column has, and in words. */
interface Named {
  state: string;
  words: string;
}

/**
 * A state that is counted.
 * @param state - of the pond
 * @returns its name and words
 */
export function countedWords(state: CountedStateName): Named {
  const [name, words] = STATES[state];
  return { state: name, words };
}

/**
 * The pond emptied in a month in which that is allowed, beside what is planned.
 * @param month - 1–12
 * @param alone - counted as a year in which it is emptied then and in no other month
 * @returns its name and words
 */
export function emptiedState(month: number, alone = false): Named {
  return {
    state: `emptied_${monthName(month).toLowerCase()}`,
    words: `emptied in ${monthName(month)}${alone ? ' only' : ', whether or not the water comes in time'}`,
  };
}

/**
 * What is counted, over its steps.
 * @param file - that has a row a year
 * @param drained - there is a drain
 * @returns sentences
 */
export function countedNote(file: string, drained: boolean): string {
  const often = drained
    ? ' Each counts as often as the drain is found so: in every sample that chance is drawn about its middle, with a deviation of its logarithm of 0.8 for a drain and 0.5 for a pump, our choice.'
    : '';
  return `Counted are the simulated years that fail, in ${file} a row each. A year fails when on any of its days the water outside beats what holds the liner, or that of a seam what lies over it, or when the emptied pond lifts, slumps or heaves in the months planned.${often}`;
}

/**
 * In any state at another depth.
 * @param which - the deepest that holds, or the one below it
 * @returns its name and words
 */
export function depthState(which: 'safe' | 'next'): Named {
  return {
    state: which === 'safe' ? 'deepest' : 'deeper',
    words: which === 'safe' ? 'at the deepest depth that holds' : 'at the next depth judged',
  };
}

const DIG: Record<keyof Omit<PerDig, 'factor'>, Named> = {
  heave: { state: 'dig_heave', words: 'in which the floor over a seam lacks its factor while it is dug' },
  slump: { state: 'dig_slump', words: 'in which a side lacks its factor, or slips, while it is dug' },
  wet_floor: { state: 'dig_wet', words: 'in which more water comes into the hole than can be taken out' },
};

/**
 * How a dig goes wrong.
 * @param how - it does
 * @returns its name and words
 */
export function digState(how: keyof typeof DIG): Named {
  return DIG[how];
}

/**
 * How digs are counted, over their steps.
 * @param file - that has a row a year
 * @param months - in which it is dug, 1–12
 * @returns sentences
 */
export function digNote(file: string, months: number[]): string {
  return `Every simulated year the hole is dug once, ${duringMonths(months)}; the years in which it goes wrong are counted, in ${file} a row each. The worst of the three is told.`;
}

/**
 * How the deepest depth is found, over its steps.
 * @param governs - what fails at the next; `none`: deeper was not judged
 * @returns sentences
 */
export function depthNote(governs: Governs): string {
  const next =
    governs === 'none'
      ? 'Deeper was not judged.'
      : `At the next one this stands against it: ${GOVERNS_WORDS[governs]}.`;
  return `Depths are judged every 5 cm, each with all its situations, digging included. ${next}`;
}

/**
 * What the drain is found to be, after a comma; nothing where there is no drain.
 * @param course - what it is found to be
 * @param all - everything that it may be
 * @returns words
 */
export function courseWords({ state, flooded }: Found, all: readonly Found[]): string {
  if (state === 'none') return '';
  const floods = all.some((each) => each.flooded) && state !== 'blocked';
  return `, where ${FOUND[state]}${floods ? (flooded ? ', ditch in flood' : ', no flood') : ''}`;
}

/**
 * Name of a column of letters that a calculator takes for one symbol.
 * @param what - it holds
 * @param of - what was judged; empty: what is recommended
 * @param state - of the pond; empty: of any
 * @param course - what the drain is found to be
 * @returns a name
 */
export function columnOf(what: 'fails' | 'often', of: string, state: string, course: Found): string {
  const found = course.state === 'none' ? '' : course.state.replaceAll('-', '_');
  return [what, of, state, found, course.flooded ? 'flood' : ''].filter(Boolean).join('_');
}
