import type { Outlet, Site } from '../site/index.js';
import type { Obstacle } from './result.js';
import { sayer } from './say.js';

/**
 * Outlets that a drain may end at: the boundary does not lie between, and the outlet keeps its distance from it.
 * @returns the outlets that are left; with none left, why
 */
export function lawfulOutlets(site: Site): { outlets: Outlet[]; why?: Obstacle } {
  const all = site.places.outlets;
  if (all.length === 0)
    return {
      outlets: [],
      why: { governs: 'fall', text: 'the survey has no point where a drain may end by gravity' },
    };
  const within = all.filter((o) => !o.beyondBoundary);
  if (within.length === 0)
    return {
      outlets: [],
      why: { governs: 'discharge', text: 'the boundary lies between the pond and every outlet' },
    };
  const setback = site.survey.site.outlet_setback ?? 0;
  const outlets = within.filter((o) => o.toBoundary === undefined || o.toBoundary >= setback);
  if (outlets.length > 0) return { outlets };
  const { length } = sayer(site);
  const nearest = within.reduce((a, b) => (b.toBoundary! > a.toBoundary! ? b : a));
  return {
    outlets,
    why: {
      governs: 'discharge',
      text: `the outlet ${nearest.name} is ${length(nearest.toBoundary!)} from the boundary and must keep ${length(setback)} (outlet_setback)`,
    },
  };
}
