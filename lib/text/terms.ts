/** The words a gardener reads for the terms of the result; one place for figures, page and terminal. */

import type {
  Advice,
  Governs,
  Recommendation,
  SituationName,
  SituationWhy,
  TippingPoint,
  Water,
} from '../contract/index.js';

/** What fails. */
export const GOVERNS_WORDS: Record<Governs, string> = {
  'lift-full': 'liner lifts under a full pond',
  'lift-drawn-down': 'liner lifts at the usual low level',
  'lift-emptied': 'liner lifts when emptied',
  'lift-power-out': 'liner lifts when the power fails',
  'floor-heave': 'floor heaves from water below the clay',
  'side-slump': 'sides slump',
  'working-slope': 'sides too steep to work beside',
  'sides-meet': 'sloping sides meet, no floor is left',
  'wet-dig': 'floor wet while digging',
  fall: 'not enough fall to the outlet',
  'outlet-flood': 'ditch in flood backs up the drain',
  envelope: 'drain silts up',
  capacity: 'more water than the drain takes',
  discharge: 'no lawful place for the water',
  footing: 'too near a footing',
  gas: 'gas from organic soil lifts the liner',
  protected: 'protected ground',
  evidence: 'too little measured',
  none: 'nothing found',
};

/** What may be done. */
export const ADVICE_NAMES: Record<Advice, string> = {
  'no-drain': 'No drain',
  'surface-water-only': 'Surface water kept out',
  'cutoff-drain': 'Cut-off drain uphill',
  'drain-to-outlet': 'Drain to an outlet',
  'drain-to-sump': 'Drain to a pumped sump',
  'raise-pond': 'Pond raised',
  ballast: 'Slab on the liner',
  shallower: 'Shallower pond',
  move: 'Another spot',
  vent: 'Gas vent under the liner',
  'relieve-and-keep-full': 'Relieve slowly and keep full',
  'measure-first': 'Measure first',
  'do-not-dig': 'Do not dig',
};

/**
 * What is recommended, with what goes with it.
 * @param recommendation - as in `result.json`
 * @returns such as `Drain to an outlet, with gas vent under the liner`
 */
export function adviceWords({
  option,
  also,
  as_built,
}: Pick<Recommendation, 'option' | 'also' | 'as_built'>): string {
  const main = as_built ? 'Keep the old drain' : ADVICE_NAMES[option];
  return [main, ...also.map((name) => ADVICE_NAMES[name].toLowerCase())].join(', with ');
}

/** What a pond is held against. */
export const SITUATION_NAMES: Record<SituationName, string> = {
  full: 'full to the brim',
  'drawn-down': 'as low as it gets in use',
  emptied: 'emptied',
  'drain-blocked': 'drain blocked or stopped',
  'power-out': 'power out',
  'outlet-flood': 'emptied, outlet in flood',
  dig: 'while it is dug',
  seam: 'water below the clay, while it is dug',
  'seam-full': 'water below the clay, pond full to the brim',
  'seam-drawn-down': 'water below the clay, pond as low as it gets in use',
  'seam-emptied': 'water below the clay, emptied',
};

/** The waters that may decide. */
export const WATER_NAMES: Record<Water | 'seam', string> = {
  'low side': 'in the clay',
  'uphill wall': 'behind the uphill wall',
  ring: 'in the ring of loose fill',
  receiver: 'at the outlet in flood',
  drain: 'that the drain leaves',
  seam: 'below the clay',
};

/** Whether a situation is allowed, and what fails. */
export const WHY_WORDS: Record<SituationWhy, string> = {
  holds: 'holds',
  briefly: 'holds for the days planned, no longer',
  lifts: 'the liner lifts',
  'sides-slip': 'the sides slip',
  'floor-heaves': 'the floor gives way',
  'too-wet': 'more water than can be pumped',
  condition: 'a condition is not met',
  'not-known': 'not known: nobody looked',
};

/**
 * What the answer turns to.
 * @param point - where it turns
 * @returns the advice, and whether it is bound to months
 */
export function turnWords({ to, emptying_ruled }: Pick<TippingPoint, 'to' | 'emptying_ruled'>): string {
  return `${ADVICE_NAMES[to]}${emptying_ruled ? ', emptied in some months only' : ''}`;
}
