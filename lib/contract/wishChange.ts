import type { Advice, OptionName } from './optionNames.js';

/** What is done otherwise than wished, and needs no digging. */
export interface WishChange {
  /** 1–12: emptied in no other month; none: never emptied */
  emptied_in?: number[];
  /** fall at which it is topped up, m */
  kept_within_m?: number;
  /** it stands empty no longer, days */
  days_empty?: number;
}

/** The pond as wished, but used otherwise: what would then be enough. */
export interface Instead {
  change: WishChange;
  option: OptionName;
  also: Advice[];
  raise_m: number;
  per_year: number;
}
