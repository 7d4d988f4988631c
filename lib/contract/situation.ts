import type { Governs } from './governs.js';
import type { OptionName } from './optionNames.js';
import type { Water } from './water.js';

/**
 * What a pond is held against: in use, when something fails that was built, while it is dug; and the water of a seam while it
 * is dug, under the full pond, as low as it gets in use, and emptied.
 */
export const SITUATIONS = [
  'full',
  'drawn-down',
  'emptied',
  'drain-blocked',
  'power-out',
  'outlet-flood',
  'dig',
  'seam',
  'seam-full',
  'seam-drawn-down',
  'seam-emptied',
] as const;
/** A design situation by name. */
export type SituationName = (typeof SITUATIONS)[number];

/** The highest water of what, and the share of years that exceed it. */
export interface Statistic {
  /** `emptying`: while it stands empty, begun on any day of the month; `flood`: as the survey gives it */
  highest_of: 'year' | 'month' | 'emptying' | 'flood' | 'dig';
  exceeded: number;
}

/** Chance a year, per emptying or per dig; `low` and `high` hold eight of ten grounds that fit the survey. */
export interface ChanceRange {
  low: number;
  middle: number;
  high: number;
  /** whether water makes most of it, or drain, flap or pump found out of order, by assumed or surveyed upkeep */
  from: 'water' | 'upkeep';
}

/**
 * Why a situation is allowed or not: `holds` within what is accepted; `briefly` as planned, for no longer than that; what
 * fails; or `not-known`: a fact that was never looked at stands against it.
 */
export type SituationWhy =
  | 'holds'
  | 'briefly'
  | 'lifts'
  | 'sides-slip'
  | 'floor-heaves'
  | 'too-wet'
  | 'condition'
  | 'not-known';

/**
 * One option in one design situation, in a month where it depends on that. Levels m above the lowest natural ground at
 * the rim. Verdicts, rules, month table, card, figures and words tell what stands here.
 */
export interface Situation {
  /** an option at the depth wished, or what is recommended at its own and as changed */
  of: OptionName | 'recommended';
  situation: SituationName;
  /** 1–12; null: of the whole year */
  month: number | null;
  /** of the pond in it, of the empty liner with what holds it down, or of the floor that is dug */
  level_m: number;
  /** the water that decides; null where none does */
  water: { which: Water | 'seam'; statistic: Statistic; level_m: number } | null;
  /** that the water may rise before it fails; positive holds; null where no water decides */
  margin_m: number | null;
  /** that the pond may be let fall to in that month; null: to the floor, or nothing is let fall in it */
  lowest_level_m: number | null;
  /** until something gives way; null: nothing does */
  hours: number | null;
  /** null where it was not counted by itself */
  chance: ChanceRange | null;
  allowed: boolean;
  why: SituationWhy;
  /** what limits it, by name */
  governs: Governs;
  /** items of `assumptions` that it rests on */
  assumptions: string[];
}

/**
 * Rows of what is recommended, else of the wish with nothing done.
 * @param situations - as in `result.json`
 * @returns those rows, in their order
 */
export function decidingSituations(situations: readonly Situation[]): Situation[] {
  const advised = situations.filter(({ of }) => of === 'recommended');
  return advised.length > 0 ? advised : situations.filter(({ of }) => of === 'no-drain');
}

/** A rung of the ladder of waters: one statistic at every place, m above the datum, with nothing done. */
export interface LadderRung {
  /** share of years that exceed it; of `middle of the days`: half of all days */
  exceeded: number;
  /** of a day, the highest of a month, the highest of a year */
  highest_of: 'day' | 'month' | 'year';
  /** 1–12; null: of the whole year */
  month: number | null;
  low_side_m: number;
  /** null without an uphill side */
  uphill_wall_m: number | null;
  /** null without a ring; a dry one stands at its floor */
  ring_m: number | null;
  /** the highest of the three on the same day; null of days */
  outside_m: number | null;
}
