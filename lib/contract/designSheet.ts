import type { RulesName } from '../site/index.js';
import type { Situation, SituationName, SituationWhy, Statistic } from './situation.js';
import type { Water } from './water.js';

/** Kind of an action by EN 1990: a failed part is an accidental one, a flood of the receiving water a variable one. */
export type ActionClass = 'permanent' | 'variable' | 'accidental';

/** How often a load comes, by EM 1110-2-2100. */
export type LoadCategory = 'usual' | 'unusual' | 'extreme';

/** How a design water was come by. */
export type WaterSource =
  | 'heads'
  | 'balance-fitted'
  | 'balance-priors'
  | 'dips'
  | 'spill'
  | 'drain'
  | 'flood-surveyed'
  | 'flood-assumed'
  | 'seam-surveyed'
  | 'seam-assumed';

/** A part of a drain that fails, as site.csv names it. */
export type DrainFault =
  | 'drain_blocked_once_in'
  | 'flap_stuck_once_in'
  | 'pump_out_once_in'
  | 'power_cut_once_in';

/** What holds a floor down: water over the liner, what lies on it, the ground down to a seam, or that with what is over it. */
export type HeldBy = 'water' | 'weight' | 'both' | 'plug' | 'plug-and-load' | 'nothing';

/** What lifts against what holds, at the floor or, of a seam, at its top. */
export interface UpliftActions {
  /** without factors, Pa */
  lifting_pa: number;
  holding_pa: number;
  held_by: HeldBy;
  /** partial factors; 1 where the rules want a factor of safety */
  factor: { lifting: number; holding: number };
  kind: 'utilisation' | 'factor-of-safety';
  /** null: a utilisation where nothing holds, a factor of safety where nothing lifts */
  value: number | null;
  /** most that the utilisation, least that the factor of safety may be */
  wanted: number;
  met: boolean;
}

/** The highest side of a dig: clay of middling strength, wet, cracked to half its height and the crack full of water. */
export interface SideActions {
  /** of the side, with the bank on it */
  height_m: number;
  /** at which it fails */
  stands_m: number;
  /** of safety */
  factor: number;
  /** least that it may be: common practice */
  wanted: number;
  met: boolean;
}

/** A design situation as somebody checks it who signs. Levels m above the lowest natural ground at the rim. */
export interface DesignRow {
  situation: SituationName;
  /** 1–12; null: of the whole year */
  month: number | null;
  action: ActionClass;
  /** null but by the rules of the US */
  category: LoadCategory | null;
  /** of the pond, of what holds an empty liner, or of the floor that is dug */
  level_m: number;
  water: { which: Water | 'seam'; statistic: Statistic; level_m: number; source: WaterSource } | null;
  /** that the water may rise before it is level with what holds, whatever datum is chosen; of a dig floor less water */
  margin_m: number | null;
  /** null where no water lifts: a dig stands by its sides and by pumping */
  uplift: UpliftActions | null;
  /** of a dig; null where its sides meet no clay, where walls hold them, and of all else */
  sides: SideActions | null;
  /** it holds only as long as a drain works */
  drained: boolean;
  /** as in `situations` */
  allowed: boolean;
  why: SituationWhy;
}

/** What nobody looked at: the ground under the deepest log, at its worst a layer just there whose water stands at the ground. */
export interface Unlooked {
  pit: string;
  /** to where it was logged, below the ground */
  to_m: number;
  /** of safety against heave of the open hole, were it so */
  factor: number;
  /** depth of a log there that would show that it is at least 1.25; null: no log does, where peat lies over it */
  wanted_to_m: number | null;
}

/** Every design situation of what is recommended, else of the wish with nothing done, by the rules of the country. */
export interface DesignSheet {
  /** ISO 3166-1 alpha-2; null: the survey does not say, and the units chose the rules */
  country: string | null;
  rules: RulesName;
  of: Situation['of'];
  depth_m: number;
  /** the liner's lowest point */
  floor_m: number;
  /** how rarely each part of its drain fails, years from one time to the next; empty without a drain */
  upkeep: { item: DrainFault; years: number; said: boolean }[];
  rows: DesignRow[];
  /** null where nothing is dug, or dug deeper than was logged: the answer asks for a deeper hole then */
  unlooked: Unlooked | null;
}
