import type { DriverInput, MovedInput } from '../contract/index.js';

/** What drives the answer, by name. */
export const DRIVER_NAMES: Record<DriverInput, string> = {
  'ground-and-water': 'ground and water together',
  building: 'how well the drain is built and minded',
  'clay-strength': 'strength of the clay',
  'clay-water': 'level of the water in the clay',
  permeability: 'permeability of the ground',
  'ring-water': 'level of the water in the dug ring',
  'uphill-rise': 'rise of the water uphill',
};

/** What is moved until the answer changes, by name. */
export const MOVED_NAMES: Record<MovedInput, string> = {
  'water-outside': 'water outside at the worst place, yearly high above the lowest rim ground',
  'full-level': 'full level of the pond above the lowest rim ground',
  permeability: 'permeability of the ground',
  'accepted-risk': 'chance a year that is accepted',
  'held-level': 'level at which the pond is held, below full',
  'clay-strength': 'undrained strength of the clay',
};

/** The same as a gardener calls it, where no value stands beside it. */
const PLAIN_NAMES: Record<MovedInput, string> = {
  'water-outside': 'how high the water in the ground comes in a wet year',
  'full-level': 'how high the pond is filled',
  permeability: 'how fast water comes through the ground',
  'accepted-risk': 'how often it may fail',
  'held-level': 'how far below the brim the pond is held',
  'clay-strength': 'how stiff the clay is',
};

/**
 * A moved input in a gardener's words.
 * @param name - of {@link MOVED_NAMES}, as a result has it
 * @returns words; another name as it is
 */
export function plainInput(name: string): string {
  const input = (Object.keys(MOVED_NAMES) as MovedInput[]).find((each) => MOVED_NAMES[each] === name);
  return input ? PLAIN_NAMES[input] : name;
}
