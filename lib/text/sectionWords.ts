/** Notes and labels of the section through a pond. */
import { formatBound, type UnitSystem } from '../units/index.js';

/** What keeps water off and is not counted where the water outside is drawn. */
type Undone = 'nothing' | 'drain' | 'all';

const WITHOUT: Readonly<Record<Undone, string>> = {
  nothing: '',
  drain: 'with no drain, ',
  all: 'with nothing done, ',
};

/**
 * How heights are drawn.
 * @param stretch - times the lengths
 * @returns a note
 */
export function sectionScaleText(stretch: number): string {
  return stretch === 1 ? 'To scale' : `Heights drawn ${stretch} times the lengths`;
}

/** What the arrows on a phone are, where their label has no room: a row each. */
export const PUSH_KEY = [
  'red: push of the water outside on an',
  'emptied liner, no drain, 1 year in 10',
] as const;

/** The run of a drain is not drawn in full. */
export const RUN_SHORTENED = 'distance beyond the break shortened';

/**
 * Which hole the layers are of.
 * @param pit - by name
 * @returns a note
 */
export function layersAsIn(pit: string): string {
  return `layers as in ${pit}`;
}

/**
 * What the water outside does to an emptied liner.
 * @param lifted - by how much, written
 * @param undone - what is built and not counted here
 * @returns in full, and in short for a phone, a row each
 */
export function pushedUpLabel(lifted: string, undone: Undone): { full: string; short: string[] } {
  return {
    full: `emptied, ${WITHOUT[undone]}1 year in 10: pushed up by ${lifted} of water`,
    short: ['pushed', 'up by', lifted],
  };
}

/** It does nothing to it. */
export const NOT_PUSHED_UP = {
  full: 'emptied: water outside stays below the floor',
  short: ['no push', 'from below'],
} as const;

/**
 * What a full pond has to spare over the water outside, or lacks.
 * @param spare - m; below nought: it lacks
 * @param undone - what is built and not counted here
 * @param units - how numbers are written
 * @returns in full, and in short for a phone
 */
export function fullSpareLabel(
  spare: number,
  undone: Undone,
  units: UnitSystem,
): { full: string; short: string } {
  const size = formatBound(Math.abs(spare), 'length', units, 'down');
  if (spare >= 0) return { full: `full: ${size} to spare`, short: `full: ${size} to spare` };
  return {
    full: `full, ${WITHOUT[undone]}1 year in 10: ${size} short`,
    short: `full: ${size} short`,
  };
}
