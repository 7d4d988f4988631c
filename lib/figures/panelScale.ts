/** One scale for all panels: up and along alike. */
import type { Report } from '../contract/index.js';
import type { WaterPanel } from './waterPanels.js';

/** What all panels of a figure share. Levels m above the datum, lengths m. */
export interface PanelScale {
  per_m: number;
  top_m: number;
  bottom_m: number;
  /** across the pond at its rim, and what of its flat floor is left out */
  across_m: number;
  cut_m: number;
  /** ground beside it */
  bank_m: number;
  slope: number;
}

/** Whether the sides are drawn steeper than wished, as they would meet. */
export function isSteepened({ slope }: PanelScale, { pond }: Report): boolean {
  return slope < pond.side_slope - 1e-9;
}

/** How far the liner ends above the water, m. */
export const FREEBOARD = 0.06;
/** Least and greatest height of a panel, and width of its ground, m. */
const BANK = 0.45;
const AIR = 0.14;
/** Pixels of ground below the floor. */
const WORDS = 32;
/** Pixels a metre below which a margin is hard to see. */
const LEAST = 56;
/** Water that lies deeper below the floor is not drawn, as part of the depth. */
const DEEPEST = 1.3;

/** Pixels a metre that all panels can have in a box of that size, and how much of the floor is left out for it. */
export function panelScale(panels: WaterPanel[], report: Report, width: number, most: number): PanelScale {
  const { pond } = report;
  const depth = Math.max(...panels.map(({ depth_m }) => depth_m));
  const floors = panels.map(({ depth_m, raise_m }) => raise_m - depth_m);
  const deepest = Math.min(...floors) - Math.max(DEEPEST * depth, 0.6);
  const waters = panels.map(({ row }) => row.water?.level_m ?? 0);
  const rims = panels.map((panel) => crestOf(panel));
  const top_m = Math.max(pond.high_rim_m, 0, ...rims, ...waters) + AIR;
  const bottom_m = Math.min(...floors, Math.max(deepest, Math.min(...waters))) - AIR;
  const bank_m = BANK + pond.ring_width_m;
  const [short, long] = [Math.min(pond.width_m, pond.length_m), Math.max(pond.width_m, pond.length_m)];
  // The shorter way where the sides leave a floor on it.
  const across_m = 2 * pond.side_slope * depth < 0.8 * short ? short : long;
  const slope = Math.min(pond.side_slope, (0.47 * across_m) / depth);
  const tallest = most / (top_m - bottom_m);
  // Some of the floor is left out only where the pond would else be small.
  const wanted = Math.min(tallest, LEAST);
  const floor = across_m - 2 * slope * depth;
  const spare = 2 * bank_m + across_m - width / wanted;
  const cut = Math.min(Math.max(spare, 0), Math.max(floor - 0.8, 0));
  const cut_m = cut < 0.5 ? 0 : cut;
  const per_m = Math.min(tallest, width / (2 * bank_m + across_m - cut_m));
  // Below the floor there is room for a row of words.
  const under = Math.min(...floors) - WORDS / per_m;
  return { per_m, top_m, bottom_m: Math.min(bottom_m, under), across_m, cut_m, bank_m, slope };
}

function crestOf({ pond_m, raise_m }: WaterPanel): number {
  return Math.max(raise_m, pond_m ?? 0, 0) + FREEBOARD;
}

/** Height of the panels of a figure. */
export function panelHeight({ per_m, top_m, bottom_m }: PanelScale): number {
  return per_m * (top_m - bottom_m);
}
