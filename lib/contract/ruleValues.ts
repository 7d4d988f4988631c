import type { Coded, Nothing } from './coded.js';
import type { Governs } from './governs.js';
import type { Barred } from './monthLimits.js';
import type { ObstacleValues } from './obstacle.js';
import type { OldDrainFound } from './oldDrainFound.js';
import type { WayQuestion } from './wayQuestion.js';

/** Emptied within the days that were planned, or to which the plan is changed. */
export interface Briefly {
  months: number[];
  days: number;
  changed: boolean;
}

/** Rules of a pond in use: code and subject, with what is spoken of. Months 1–12, levels m above the datum. */
export interface UsingRules {
  'dip-pipe/there': Nothing;
  'dip-pipe/to-lay': Nothing;
  'dip-pipe/bulge': Nothing;
  'do-not-cut-bulge/bulge': Nothing;
  /** days 0: as many as there are */
  'empty-only-in/free': { months: number[]; days: number; briefly: Briefly | null };
  'empty-only-in/briefly': Briefly;
  'do-not-lower/bulge': Nothing;
  'do-not-lower/barred': { months: number[]; cause: Barred };
  /** `below_m`: so far under the floor the water must stand in the pipe, where it stands higher uphill; negative: above it, where a slab holds so much */
  'do-not-lower/unread': { months: number[]; below_m: number };
  'do-not-lower/other-months': { months: number[] };
  /** `brim`: months in which the level is that of the brim */
  'keep-above-level/brim': { months: number[]; brim: number[]; excepted: boolean };
  'keep-above-level/level': { months: number[]; level_m: number; excepted: boolean };
  'full-may-lift/undrained': { months: number[] };
  'full-before-rains/topped-up': { within_m: number; months: number[] };
  'full-before-rains/left': { months: number[] };
  'mend-leak/pond': Nothing;
  'trees/clay': Nothing;
  'ice/rim': { walled: boolean };
}

/** Rules that go with a drain. */
export interface DrainRules {
  /** a flood that was surveyed stays below the drain's bed, or below the mouth where the drain lies uphill */
  'flap/outlet': { below: boolean };
  'animal-guard/outlet': Nothing;
  'inspection-pipe/head': Nothing;
  'pump-alarm/sump': Nothing;
  'if-drain-stops/may-lift': { months: number[] };
  'full-if-power-fails/holds': Nothing;
  /** hours of seepage that are taken up, null: a year at least; and of the design storm, null: all of it */
  'full-if-power-fails/may-lift': { months: number[]; hours: number | null; storm_hours: number | null };
  'old-drain/works': { level_m: number };
  'old-drain/open': OldDrainFound;
  'ring-outlet/flooded': Nothing;
  /** what the ring is filled with, where it lets the water through only slowly */
  'ring-outlet/open': { slow: string | null };
  /** `counted`: the answer rests on it */
  'keep-surface-water-out/led-away': { counted: boolean };
  'keep-surface-water-out/rain': Nothing;
  'leave-gravel-out/no-outlet': Nothing;
  'ask-way/boundary': WayQuestion;
  'notify-neighbour/outlet': Nothing;
  'ask-engineer/lowered-house': Nothing;
  /** `lowered_m`: likely, at the least permeable and the most it may be less and more */
  'ask-engineer/lowered-place': { place: string; lowered_m: number };
}

/** Rules of building and rebuilding. m, N/m, m³/s; slopes horizontal to 1 vertical. */
export interface BuildingRules {
  /** `liner`: it comes out; the pond is emptied and filled again within `months` */
  'rebuild/emptied': { liner: boolean; months: number[] };
  /** the liner comes out, and the hole under it holds, though the water would lift it as long as it lies */
  'rebuild/opened': { months: number[] };
  /** the sides stand for `days` at most, and a slab needs `needed` of them */
  'rebuild/too-brief': { months: number[]; days: number; needed: number };
  /** the liner stays, and only pumping keeps the water from lifting it */
  'rebuild/pumped': { months: number[] };
  'rebuild/barred': { causes: Governs[] };
  'batter-sides/behind-wall': Nothing;
  'batter-sides/laid-back': { slope: number };
  /** `floor_m`: length and width of the floor that is left */
  'batter-sides/flatter': { slope: number; drawn: number; floor_m: [number, number] };
  /** `stands_m`: dug below the lowest ground at the rim; `raised_m`: what a raised rim adds to it */
  'batter-sides/no-deeper': { slope: number; stands_m: number; raised_m: number; wish_m: number };
  'batter-sides/too-steep': { slope: number; wish_m: number };
  /** `height_m` of the highest side, `deep_m` of the lowest */
  'working-slope/class': {
    type: string;
    slope: number;
    due: 'less-deep' | 'protect' | 'engineer';
    height_m: number;
    deep_m: number;
  };
  'wall-load/empty': { load_n_m: number; wall: string; height_m: number; clay: boolean };
  'rim-load/edge': { above_m: number; push_n_m: number };
  'dig-in/planned': { months: number[] };
  'dig-in/instead': { months: number[]; planned: number[]; against: Governs };
  'dig-in/months': { months: number[]; against: Governs };
  /** `depth_m` below the ground at the pit: where the water of the layer must stand, or deeper */
  'read-before-digging/pressure': { pit: string; depth_m: number };
  'pump-while-digging/inflow': { flow_m3_s: number; months: number[]; pit_m: number };
  'fill-at-once/months': { months: number[]; hours: number };
  /** `away`: what the full pond runs over with is led away as planned */
  'keep-old-ground-open/bank': { away: boolean };
  'vent-high-point/bulge': Nothing;
  /** `wet`: water stands above the floor; `fall`: what the floor lacks, null: it has it */
  'vent-high-point/gas': { count: number; diameter_m: number; wet: boolean; fall: number | null };
  'ask-engineer/steep-dig': { depth_m: number; slope: number };
  'ask-engineer/unnamed-ground': { texture: string; slope: number };
  'ask-engineer/walls': Nothing;
  'ask-engineer/footing': Nothing;
  'ask-engineer/slab': Nothing;
  'ask-engineer/pressure': Nothing;
  /** `above_m`: water above the lowest ground that the rim holds */
  'notify-neighbour/bank': { above_m: number };
  'notify-neighbour/near-boundary': Nothing;
  'notify-neighbour/footing': Nothing;
}

/** Rules of what is to be asked and looked up first. m. */
export interface AskingRules {
  'ask-regulator/protected': Nothing;
  'ask-regulator/wet-plants': Nothing;
  'measure-first/old-drain': Nothing;
  'measure-first/seam': Nothing;
  'measure-first/footing': Nothing;
  'measure-first/season': Nothing;
  'measure-first/discharge': Nothing;
  'measure-first/place': Coded<ObstacleValues>;
  'seam-unknown/layer': { pit: string; top_m: number; deepest_m: number };
  /** the depth that its 45° line allows; null: no limit from it */
  /** `known_m`: how far down the ground was looked at; `to_m`: how far it is to be */
  'look-deeper/hole': { pit: string; known_m: number; to_m: number };
  'footing-unknown/houses': { names: string[]; taken_m: number; allows_m: number | null };
}

/** Everything that a rule can say, by its code and subject. */
export interface RuleValues extends UsingRules, DrainRules, BuildingRules, AskingRules {}
