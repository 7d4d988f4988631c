/** Every rule by its code: when it is followed, and its heading. */

import type { Rule } from '../contract/index.js';

/** When something is done, in that order. */
export const PHASES = ['ask', 'dig', 'build', 'fill', 'keep', 'empty'] as const;
export type Phase = (typeof PHASES)[number];

/** Of each code; `title` heads it. */
export const RULE_NAMES: Readonly<Record<Rule['code'], { phase: Phase; title: string }>> = {
  'mend-leak': { phase: 'ask', title: 'Mend the leak' },
  'old-drain': { phase: 'ask', title: 'The old drain' },
  'ask-way': { phase: 'ask', title: 'Ask for the way to the outlet' },
  'notify-neighbour': { phase: 'ask', title: 'Tell the neighbour' },
  'ask-engineer': { phase: 'ask', title: 'Ask an engineer' },
  rebuild: { phase: 'ask', title: 'Rebuilding it' },
  'ask-regulator': { phase: 'ask', title: 'Ask the regulator' },
  'measure-first': { phase: 'ask', title: 'Measure first' },
  'seam-unknown': { phase: 'ask', title: 'Look into the seam' },
  'look-deeper': { phase: 'ask', title: 'Look deeper first' },
  'footing-unknown': { phase: 'ask', title: 'Find the footing' },
  trees: { phase: 'dig', title: 'Trees' },
  'batter-sides': { phase: 'dig', title: 'Flatten the sides' },
  'working-slope': { phase: 'dig', title: 'Working slope' },
  'dig-in': { phase: 'dig', title: 'When to dig' },
  'read-before-digging': { phase: 'dig', title: 'Before each day of digging' },
  'pump-while-digging': { phase: 'dig', title: 'Pump while digging' },
  'dip-pipe': { phase: 'build', title: 'Dip pipe' },
  flap: { phase: 'build', title: 'Flap at the outlet' },
  'animal-guard': { phase: 'build', title: 'Animal guard' },
  'inspection-pipe': { phase: 'build', title: 'Inspection pipe' },
  'pump-alarm': { phase: 'build', title: 'Pump alarm' },
  'ring-outlet': { phase: 'build', title: 'Way out for the ring' },
  'keep-surface-water-out': { phase: 'build', title: 'Keep surface water out' },
  'leave-gravel-out': { phase: 'build', title: 'Leave the gravel out' },
  'wall-load': { phase: 'build', title: 'What pushes on the wall' },
  'rim-load': { phase: 'build', title: 'Rim load' },
  'keep-old-ground-open': { phase: 'build', title: 'Keep old ground open' },
  'vent-high-point': { phase: 'build', title: 'Vent at the high point' },
  'fill-at-once': { phase: 'fill', title: 'Fill at once' },
  'keep-above-level': { phase: 'keep', title: 'Keep the water above' },
  'full-may-lift': { phase: 'keep', title: 'Even full it may lift' },
  'full-before-rains': { phase: 'keep', title: 'Full before rains' },
  ice: { phase: 'keep', title: 'Ice' },
  'if-drain-stops': { phase: 'keep', title: 'If the drain stops' },
  'full-if-power-fails': { phase: 'keep', title: 'Full if the power fails' },
  'do-not-cut-bulge': { phase: 'empty', title: 'Do not cut a bulge' },
  'empty-only-in': { phase: 'empty', title: 'Empty only then' },
  'do-not-lower': { phase: 'empty', title: 'Do not lower the water' },
};
