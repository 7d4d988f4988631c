import type { Coded, Nothing } from './coded.js';
import type { Governs } from './governs.js';

/** Conditions of a dig, by code. m; slopes horizontal to 1 vertical. */
export interface ConditionValues {
  /** deeper than that the sides are laid back */
  'laid-back': { from_m: number; slope: number };
  /** depth at which the 45° line from a footing is reached; `assumed`: nobody has seen it */
  'footing-line': { name: string; assumed: boolean; depth_m: number };
  'sides-meet': { depth_m: number };
  /** in no month the liner lies dry, and nobody can keep it pumped dry */
  'slab-cast': Nothing;
}

/** A condition of a dig: met, not met, or doubtful within the levelling error. */
export type Condition = {
  governs: Governs;
  met: 'yes' | 'no' | 'doubtful';
} & Coded<ConditionValues>;
