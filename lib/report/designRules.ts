import type { ActionClass, LoadCategory, SituationName } from '../contract/index.js';
import type { RulesName } from '../site/index.js';
import { EUROCODE_7, USACE_FLOTATION } from '../uplift/index.js';

/** What the rules of a country want of uplift: partial factors, or a factor of safety by how often a load comes. */
type UpliftRules =
  | { method: 'partial-factors'; lifts: number; variable: number; holds: number }
  | { method: 'factor-of-safety'; wanted: Readonly<Record<LoadCategory, number>> };

/** By whose rules. */
export const UPLIFT_RULES: Readonly<Record<RulesName, UpliftRules>> = {
  gb: { method: 'partial-factors', ...EUROCODE_7.upliftUk },
  ie: { method: 'partial-factors', ...EUROCODE_7.uplift },
  en: { method: 'partial-factors', ...EUROCODE_7.uplift },
  us: { method: 'factor-of-safety', wanted: USACE_FLOTATION },
};

/** A part that failed is an accident, a receiver in flood varies; groundwater at its rare high is taken as permanent. */
export const ACTION_CLASS: Readonly<Record<SituationName, ActionClass>> = {
  full: 'permanent',
  'drawn-down': 'permanent',
  emptied: 'permanent',
  'drain-blocked': 'accidental',
  'power-out': 'accidental',
  'outlet-flood': 'variable',
  dig: 'permanent',
  seam: 'permanent',
  'seam-full': 'permanent',
  'seam-drawn-down': 'permanent',
  'seam-emptied': 'permanent',
};

/** Chance a year from which a load is usual. */
const USUAL = 0.1;

/**
 * The category of a load. A pond is full, low, empty and dug in any year, so those are usual however rare the water is;
 * none is called extreme, since no upkeep that nobody has measured earns it.
 * @param exceeded - share of years in which a flood comes higher
 */
export function categoryOf(situation: SituationName, exceeded: number): LoadCategory {
  if (situation === 'outlet-flood') return exceeded >= USUAL ? 'usual' : 'unusual';
  return ACTION_CLASS[situation] === 'accidental' ? 'unusual' : 'usual';
}
