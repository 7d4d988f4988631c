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
