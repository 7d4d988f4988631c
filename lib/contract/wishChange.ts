import type { Advice, OptionName } from './optionNames.js';

/**
 * What is done otherwise than wished, and needs nothing built. Where the pond is dug otherwise (`side_slope`, `built_in`),
 * the other options and all amounts are of the pond so dug.
 */
export interface WishChange {
  /** horizontal to 1 vertical: its sides are flatter, the outline at the rim stays and the floor shrinks */
  side_slope?: number;
  /** 1–12: dug in these months */
  built_in?: number[];
  /** 1–12: emptied in no other month; none: never emptied */
  emptied_in?: number[];
  /** fall at which it is topped up, m */
  kept_within_m?: number;
  /** it stands empty no longer, days */
  days_empty?: number;
}

/** The pond as wished, but used otherwise: what would then be enough. */
export interface Instead {
  /** up to the wish, m */
  depth_m: number;
  change: WishChange;
  option: OptionName;
  also: Advice[];
  raise_m: number;
  per_year: number;
}
