import type { BulgeCause } from '../uplift/index.js';
import type { Coded, Nothing } from './coded.js';
import type { ConditionValues } from './condition.js';
import type { Governs } from './governs.js';
import type { Barred } from './monthLimits.js';
import type { ObstacleValues } from './obstacle.js';
import type { OldDrainFound } from './oldDrainFound.js';
import type { OpenFact } from './openFact.js';
import type { OptionName } from './optionNames.js';
import type { SiteDrain } from './siteDrain.js';
import type { WayQuestion } from './wayQuestion.js';
import type { WishChange } from './wishChange.js';

/** How often it fails as it is recommended, a year, and what is accepted. */
export interface Failing {
  per_year: number;
  /** what of it comes of upkeep */
  upkeep: number;
  accepted: number;
  /** as planned, by the rules only, or not at all */
  emptied: 'planned' | 'ruled' | 'never';
  kept: 'pump' | 'flap';
}

/** What the wish fails of; m. */
export interface WishStatements {
  'ask-first': WayQuestion;
  'as-wished': { governs: Governs; per_year: number };
  /** null: as wished */
  'as-changed': {
    depth_m: number | null;
    change: WishChange;
    kept_out: boolean;
    raise_m: number;
    fails: Failing;
  };
  /** dug otherwise, what is built then serves; followed by why */
  'dug-otherwise': { change: WishChange };
  'fact-open': { fact: OpenFact; depth_m: number };
  'cannot-be-dug': { depth_m: number; condition: Coded<ConditionValues> };
  /** chance a year; null: it cannot be dug */
  undone: { governs: Governs; per_year: number | null };
  'still-fails': { option: OptionName; governs: Governs; per_year: number | null; accepted: number };
}

/** Why what is recommended serves; m, levels above the datum. */
export interface ServingStatements {
  /** what emptying in the months wished would do; null: at the wrong time it does not stay */
  'kept-full': { emptied: { months: number[]; fails: Governs; per_year: number } | null };
  'keep-to-months': Nothing;
  'never-emptied': { cause: Barred };
  'by-dip-pipe': { never: number[] };
  'no-drain-serves': Coded<ObstacleValues>;
  /** how nothing lifts it: always, never emptied, emptied in `months`, full again before enough water comes */
  'nothing-lifts': {
    how: 'always' | 'never-emptied' | 'in-months' | 'in-time';
    months: number[];
    fails: Failing;
  };
  'surface-water-only': { fails: Failing };
  /** `dug_m`: so much is dug for the depth wished for, which is refused when all of it is; null: it is not refused */
  'raise-pond': { raise_m: number; dug_m: number | null; fails: Failing };
  'cutoff-drain': { raise_m: number; fails: Failing };
  'old-drain-works': { looks: number; from: string; to: string; highest_m: number; fails: Failing };
  'drain-to-outlet': { bed_m: number; outlet: string; level_m: number; fails: Failing };
  /** `lowest`: no lower ground takes the water */
  'drain-to-sump': { lowest: boolean; fails: Failing };
  ballast: { head_m: number; fails: Failing };
  shallower: { depth_m: number; emptied: Failing['emptied'] };
  /** depth that a raised rim buys, and of the wish */
  'rim-buys': { raise_m: number; depth_m: number; wish_m: number };
  spot: { name: string; depth_m: number };
  'no-depth': Nothing;
  vent: Nothing;
  inflow: SiteDrain['governing'];
  'weakest-link': { link: string; reserve: number };
  'option-lacks': { option: OptionName; lacks: Coded<ObstacleValues> };
  'outlet-fails': { outlet: string; governs: Governs };
}

/** What is to be found out first, and what stops everything; m. */
export interface WaitingStatements {
  'season-unknown': Nothing;
  'old-drain': OldDrainFound;
  'fact-tells': { fact: OpenFact };
  'drain-perhaps': Coded<ObstacleValues>;
  /** in drains */
  'season-worth': { worth_drains: number };
  protected: Nothing;
  /** level under the liner less that of the pond; null: one is not known */
  bulge: { cause: BulgeCause; difference_m: number | null };
  'bulge-remedy': { cause: BulgeCause };
  'bulge-never': Nothing;
}

/** Everything that a reason can say. */
export interface StatementValues extends WishStatements, ServingStatements, WaitingStatements {}

/** A sentence or two of the reason, as it is decided. */
export type Statement = Coded<StatementValues>;
