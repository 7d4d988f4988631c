import type { Barred, Governs } from '../contract/index.js';

/** What fails, as the end of a sentence. */
export const FAILURE: Record<Governs, string> = {
  'lift-full': 'the water outside would stand above even the full pond and lift the liner',
  'lift-drawn-down':
    'the water outside would stand above the pond at its usual lowest level and lift the liner',
  'lift-emptied': 'the water outside would lift the liner while the pond stands empty',
  'lift-power-out': 'the liner would lift when the power fails',
  'floor-heave': 'the water under pressure below the clay would heave the floor',
  'side-slump': 'the sides would not stand with enough safety',
  'working-slope': 'the sides would be too steep to work beside, so high',
  'sides-meet': 'the sloping sides would meet and leave no floor',
  'wet-dig':
    'more water would come into the hole than can be taken out while it is dug, or boil up through its floor',
  fall: 'there is not enough fall to the outlet',
  'outlet-flood': 'the ditch in flood stands above the floor',
  envelope: 'the stone would silt up',
  capacity: 'the drain could not carry the water that would come',
  discharge: 'there is no lawful place for the water',
  footing: 'the dig would cut the 45° line from a footing',
  gas: 'gas from organic ground would gather under the liner',
  protected: 'the ground is protected',
  evidence: 'nothing is known of the water in the wet half-year',
  none: 'nothing lifts the liner as it is planned',
};

/** What keeps an emptied pond from standing, whatever the dip pipe shows. */
export const BARS: Record<Barred, string> = {
  'floor-heave':
    'water under pressure below the clay would heave the floor, and the dip pipe does not read it',
  'side-slump': 'as steep as they are the bared sides would slip even with no water behind them',
};
