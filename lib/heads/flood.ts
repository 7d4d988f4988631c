import { formula, type Use, unrecorded } from '../formula/index.js';
import type { Outlet } from '../site/index.js';

/** Highest receiving water where the survey has a ditch or outlet but no flood mark, m above it. Our choice. */
export const FLOOD_ABOVE = 0.4;

/** Flood where nobody marked one. */
export const floodAbove = formula({
  title: 'Highest water of the receiver, where no flood was marked',
  symbol: 'r',
  unit: 'm',
  expression: 'w + a',
  parameters: {
    w: { meaning: 'ordinary water at the outlet, or its level', unit: 'm', min: -20, max: 10 },
    a: { meaning: 'rise in flood', unit: 'm', min: 0, max: 3 },
  },
  compute: (w: number, a: number) => w + a,
  validity: 'a garden ditch; ask who has seen it in flood',
  source: 'our choice',
});

/** Flood level at an outlet, m above the datum. */
export function floodOf(outlet: Outlet, use: Use = unrecorded): number {
  return outlet.flood ?? use(floodAbove, outlet.ditch ?? outlet.level, FLOOD_ABOVE);
}
