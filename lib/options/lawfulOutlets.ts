import type { Obstacle, WayQuestion } from '../contract/index.js';
import type { Measures } from '../heads/index.js';
import type { Outlet, Site } from '../site/index.js';

/**
 * Outlets that a drain may end at: the boundary is not known to lie between, nor to be nearer to the outlet than it may.
 * @returns the outlets that are left, in the order of the file; with none left, why
 */
export function lawfulOutlets({ places, survey }: Site): { outlets: Outlet[]; why?: Obstacle } {
  const all = places.outlets;
  if (all.length === 0) return { outlets: [], why: noOutlet(places) };
  const within = all.filter((o) => !o.beyondBoundary);
  if (within.length === 0)
    return {
      outlets: [],
      why: { governs: 'discharge', code: 'outlets-beyond-boundary', values: {} },
    };
  const setback = survey.site.outlet_setback ?? 0;
  const left = ({ toBoundary = Number.POSITIVE_INFINITY }: Outlet) => toBoundary;
  const outlets = within.filter((o) => o.wayUnknown || left(o) >= setback);
  if (outlets.length > 0) return { outlets };
  const farthest = within.reduce((a, b) => (left(b) > left(a) ? b : a));
  return {
    outlets,
    why: {
      governs: 'discharge',
      code: 'outlet-near-boundary',
      values: { outlet: farthest.name, to_boundary_m: left(farthest), setback_m: setback },
    },
  };
}

function noOutlet({ unplaced, lowWayOut }: Site['places']): Obstacle {
  const outlets = unplaced.filter(({ role }) => role === 'outlet').map(({ name }) => name);
  return outlets.length === 0
    ? { governs: 'fall', code: 'no-outlet', values: { spill: lowWayOut?.name ?? null } }
    : {
        governs: 'fall',
        asks: true,
        code: 'outlet-not-placed',
        values: { outlets },
      };
}

/** What is to be asked before pipes are led to where measures lead them; absent: nothing. */
export function questionOf({ survey, places }: Site, { drain, cutoffTo }: Measures): WayQuestion | undefined {
  const end = drain?.kind === 'outlet' ? drain.outlet : drain?.to;
  const open = [end, cutoffTo].find((to) => to?.wayUnknown);
  if (!open) return undefined;
  return {
    to: open.name,
    distance_m: open.distance,
    boundary_m: places.boundary ?? null,
    setback_m: survey.site.outlet_setback ?? null,
  };
}
