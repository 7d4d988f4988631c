/** What the guard finds, and the shape of a check. */
import type { Claim } from './claims.js';
import type { GuardSite } from './site.js';
import type { Told } from './told.js';

export type Kind =
  | 'emptied'
  | 'full'
  | 'level'
  | 'hours'
  | 'heave'
  | 'seam unasked'
  | 'side'
  | 'depth'
  | 'footing'
  | 'footing unasked'
  | 'reserve'
  | 'outlet'
  | 'flood'
  | 'power'
  | 'rounding'
  | 'season'
  | 'water';

export interface Danger {
  verdict: string;
  kind: Kind;
  why: string;
}

/** Judges one claim; the first danger of a kind is enough. */
export type Check = (site: GuardSite, told: Told, claim: Claim) => Danger[];

/** Levels apart by less are one level, m: a levelling error and what a margin rounds away. Our choice. */
export const LEVEL = 0.03;

export const m = (metres: number) => `${metres.toFixed(2)} m`;
