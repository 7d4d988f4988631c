import type { Governs } from '../contract/index.js';

/** What happens, after `deeper` or `then`. */
export const HAPPENS: Record<Governs, string> = {
  'lift-full': 'the liner lifts even when the pond is full',
  'lift-drawn-down': 'the liner lifts when the pond is low',
  'lift-emptied': 'the liner lifts when the pond is emptied',
  'lift-power-out': 'the liner lifts when the power fails',
  'floor-heave': 'water from below breaks through the floor',
  'side-slump': 'the sides do not stand safely',
  'working-slope': 'the sides are too high to work beside as steep as this',
  'sides-meet': 'the sloping sides meet and leave no floor',
  'wet-dig': 'more water comes in than you can pump out while you dig',
  fall: 'there is not enough fall to the outlet',
  'outlet-flood': 'flood water at the outlet stands above the floor',
  envelope: 'the drain silts up',
  capacity: 'more water comes than the drain takes',
  discharge: 'there is no lawful place for the water',
  footing: 'the hole comes too near a footing',
  gas: 'gas lifts the liner',
  protected: 'the ground is protected',
  evidence: 'too little is known of the water',
  none: 'nothing was found against it',
};
