import type { Obstacle } from '../contract/index.js';
import type { Measures } from '../heads/index.js';
import type { Outlet, Site } from '../site/index.js';
import { sayer } from '../text/index.js';

/**
 * Outlets that a drain may end at: the boundary is not known to lie between, nor to be nearer to the outlet than it may.
 * @returns the outlets that are left, in the order of the file; with none left, why
 */
export function lawfulOutlets({ places, survey }: Site): { outlets: Outlet[]; why?: Obstacle } {
  const all = places.outlets;
  if (all.length === 0) return { outlets: [], why: noOutlet(places.unplaced) };
  const within = all.filter((o) => !o.beyondBoundary);
  if (within.length === 0)
    return {
      outlets: [],
      why: { governs: 'discharge', text: 'the boundary lies between the pond and every outlet' },
    };
  const setback = survey.site.outlet_setback ?? 0;
  const left = ({ toBoundary = Number.POSITIVE_INFINITY }: Outlet) => toBoundary;
  const outlets = within.filter((o) => o.wayUnknown || left(o) >= setback);
  if (outlets.length > 0) return { outlets };
  const { length } = sayer({ survey });
  const farthest = within.reduce((a, b) => (left(b) > left(a) ? b : a));
  return {
    outlets,
    why: {
      governs: 'discharge',
      text: `the outlet ${farthest.name} is ${length(left(farthest))} from the boundary and must keep ${length(setback)} (outlet_setback)`,
    },
  };
}

function noOutlet(unplaced: Site['places']['unplaced']): Obstacle {
  const names = unplaced.filter(({ role }) => role === 'outlet').map(({ name }) => name);
  return names.length === 0
    ? { governs: 'fall', text: 'the survey has no point where a drain may end by gravity' }
    : {
        governs: 'fall',
        asks: true,
        text: `the survey does not say how far ${names.join(', ')} is from the pond (levels.csv, distance or x and y): without it there is no telling the fall`,
      };
}

/** What is to be asked before pipes are led to where measures lead them; absent: nothing. */
export function questionOf({ survey, places }: Site, { drain, cutoffTo }: Measures): string | undefined {
  const end = drain?.kind === 'outlet' ? drain.outlet : drain?.to;
  const open = [end, cutoffTo].find((to) => to?.wayUnknown);
  if (!open) return undefined;
  const { length } = sayer({ survey });
  const { boundary } = places;
  const known =
    boundary === undefined
      ? 'the survey leaves open where the boundary is'
      : `the survey has the boundary ${length(boundary)} and ${open.name} ${length(open.distance)} from the pond, and no direction`;
  const setback = survey.site.outlet_setback;
  const near = setback ? `, or comes nearer to it than ${length(setback)}` : '';
  return `whether the way from the pond to ${open.name} crosses the boundary${near}: ${known} (outlet_within_boundary in site.csv, or x and y of rim, outlet and boundary)`;
}
