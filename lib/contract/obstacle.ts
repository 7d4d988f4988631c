import type { Coded, Nothing } from './coded.js';
import type { Governs } from './governs.js';

/** What keeps something from being had, by code. m, m³/s. */
export interface ObstacleValues {
  'no-ring': Nothing;
  'already-kept-out': Nothing;
  'level-ground': Nothing;
  'no-low-outlet-uphill': Nothing;
  /** of the trench of a cut-off drain */
  'trench-near-footing': { name: string };
  'discharge-forbidden': Nothing;
  'discharge-not-said': Nothing;
  'endless-flow': { flow_m3_s: number; limit_m3_s: number };
  /** level at which the water is held */
  'outlet-too-high': { outlet: string; level_m: number };
  /** `spill`: low way out of the ring, where the survey has one below the ground at the rim */
  'no-outlet': { spill: string | null };
  'outlet-not-placed': { outlets: string[] };
  'outlets-beyond-boundary': Nothing;
  'outlet-near-boundary': { outlet: string; to_boundary_m: number; setback_m: number };
  'no-power-or-pump': Nothing;
  'discharge-not-placed': { place: string };
  'no-discharge-place': Nothing;
  'rim-must-stay': Nothing;
  'nothing-lacks': Nothing;
  'slab-too-thick': { thickness_m: number };
  /** a link of the drain takes less than what would come */
  'link-too-narrow': { link: string; depth_m: number; takes_m3_s: number; comes_m3_s: number };
  /** a link lets the soil through: share of what it must have, below 1 */
  'soil-comes-through': { link: string; share: number };
}

/** Why something cannot be had. */
export type Obstacle = {
  governs: Governs;
  /** a fact not said keeps it back, that may be had by looking */
  asks?: true;
} & Coded<ObstacleValues>;
