import type { Outlet } from '../site/index.js';

/** Highest receiving water where the survey has a ditch or outlet but no flood mark, m above it. Our choice. */
export const FLOOD_ABOVE = 0.4;

/** Flood level at an outlet, m above the datum. */
export function floodOf(outlet: Outlet): number {
  return outlet.flood ?? (outlet.ditch ?? outlet.level) + FLOOD_ABOVE;
}
