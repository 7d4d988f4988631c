import { formula } from '../formula/index.js';
import type { LevelPoint, LevelRole, Origin, Survey } from '../survey/index.js';
import { crossesLine, distanceToLine, type PlanPoint } from './boundary.js';
import { planOf } from './planOf.js';
import { reachBeyond, rimLine } from './rimLine.js';

/** A place where a drain may end, with the water it meets there. Levels m above the lowest rim ground. */
export interface Outlet {
  name: string;
  level: number;
  /** from the pond's edge, m */
  distance: number;
  /** ordinary and highest water at the receiver, m; absent where the survey does not say */
  ditch?: number;
  flood?: number;
  /** whether the boundary lies between; absent: no boundary levelled, or its distance alone does not tell */
  beyondBoundary?: boolean;
  /** from the outlet to the boundary, m; by tape alone at least that; absent where it does not tell */
  toBoundary?: number;
  /** whether the boundary lies between, or nearer than the setback, is a question: its distance alone does not tell */
  wayUnknown?: true;
}

/** Where pumped water goes: a lawful place for it, or an outlet. */
export interface PumpedTo {
  name: string;
  /** m above the lowest rim ground */
  level: number;
  /** from the pond's edge, m */
  distance: number;
  /** of an outlet */
  wayUnknown?: true;
}

/** A point whose way from the pond is not said: neither taped, nor on the plan with a rim point. */
interface Unplaced {
  name: string;
  role: 'outlet' | 'discharge' | 'footing' | 'house' | 'neighbour-house';
  origin: Origin;
}

/** A footing near the dig. */
export interface Footing {
  name: string;
  /** underside, m above the lowest rim ground */
  level: number;
  /** from the pond's edge, m */
  distance: number;
  /** of a house whose footing nobody levelled */
  assumed?: true;
  /** the way as drawn, m, where it is counted nearer: the rim points on the plan are too few */
  drawn?: number;
}

/** Levelled points, brought to metres above the lowest natural ground at the rim. */
export interface Places {
  /** level of that ground on the survey's mark, m */
  datum: number;
  /** highest rim ground, m */
  highRim: number;
  /** those whose way is known */
  outlets: Outlet[];
  discharges: PumpedTo[];
  /** outlets and discharges are left out, footings and houses taken at the pond's edge */
  unplaced: Unplaced[];
  /** footings and houses counted so much nearer than drawn, m: the rim points on the plan do not tell on which side of them the pond lies */
  shortOfRim?: { names: string[]; reach: number };
  footings: Footing[];
  /** lowest spill point, m, and the highest water there where the survey says it */
  spill?: number;
  spillFlood?: number;
  /** that point where it lies below the ground at the rim and how far off is known: a drain might end there */
  lowWayOut?: Outlet;
  /** `distance` from the pond's edge, m */
  houses: { name: string; level: number; distance: number; neighbour: boolean; drawn?: number }[];
  /** from the pond's edge to the line that joins the boundary points, m */
  boundary?: number;
  /** the marks from which the pond's own level and that in the dip pipe are read */
  pondPoint?: number;
  dipPipePoint?: number;
  /** ground at a pit, m */
  pits: Map<string, number>;
}

/** Level of a point above the lowest natural ground at the rim. */
export const overDatum = formula({
  title: 'Level above the lowest natural ground at the rim',
  symbol: 'z',
  unit: 'm',
  expression: 'l - d',
  parameters: {
    l: { meaning: 'level as surveyed', unit: 'm', min: -500, max: 9000 },
    d: { meaning: 'level of that ground as surveyed', unit: 'm', min: -500, max: 9000 },
  },
  compute: (l: number, d: number) => l - d,
  validity: 'both from one mark',
  source: 'levelling',
});

/** Rise of the ground at the rim below which the pond has no uphill side, m: what a hose level can tell. Our choice. */
export const LEVEL_RIM = 0.02;

/** Roles that a pipe leads to, and those that the dig may harm. */
const REACHED = ['outlet', 'discharge'] as const;
const NEAR = ['footing', 'house', 'neighbour-house'] as const;
/** Where a footing or a house stands whose distance is not said, m from the pond's edge: the unsafe end. */
const AT_EDGE = 0;

/** Where a point lies on the plan, where the survey gives that. */
function onPlan({ x, y }: LevelPoint): PlanPoint[] {
  return x !== undefined && y !== undefined ? [{ x, y }] : [];
}

/** Distance of a point from the pond's edge: as taped, else from its coordinates to the line of the rim. */
function distanceOf(point: LevelPoint, rim: PlanPoint[]): number | undefined {
  if (point.distance !== undefined) return point.distance;
  const [at] = onPlan(point);
  return at && rim.length > 0 ? distanceToLine(at, rim) : undefined;
}

/** The boundary points, joined in the order of the file, against pond and outlets. */
function boundaryOf(points: LevelPoint[], rims: LevelPoint[], { site }: Survey) {
  const line = points.flatMap(onPlan);
  const rim = rims.flatMap(onPlan);
  const drawn = line.length > 0 ? rim.map((r) => distanceToLine(r, line)) : [];
  // A taped distance stands beside what is drawn; where both are given for a point, the tape measured to the edge.
  const taped = points.flatMap((p) => (p.distance !== undefined ? [p.distance] : []));
  const distance = drawn.length + taped.length > 0 ? Math.min(...drawn, ...taped) : undefined;
  const against = (
    outlet: LevelPoint,
    reach: number,
  ): Pick<Outlet, 'beyondBoundary' | 'toBoundary' | 'wayUnknown'> => {
    const [at] = onPlan(outlet);
    if (at && drawn.length > 0) {
      const start = rim.reduce((a, b) => (distanceToLine(at, [b]) < distanceToLine(at, [a]) ? b : a));
      return { beyondBoundary: crossesLine(start, at, line), toBoundary: distanceToLine(at, line) };
    }
    const said = site.outlet_within_boundary;
    if (said === 'yes' || said === 'no') return { beyondBoundary: said === 'no' };
    if (distance === undefined) return said ? { wayUnknown: true } : {};
    // Nearer than any of the boundary: within it. Farther it may lie on the same side or on another.
    const left = distance - reach;
    if (left < 0) return { wayUnknown: true };
    const near = left < (site.outlet_setback ?? 0);
    return { beyondBoundary: false, toBoundary: left, ...(near ? { wayUnknown: true } : {}) };
  };
  return { distance, against };
}

/** Brings the levelled points of a survey to one datum. */
export function placesOf(survey: Survey): Places {
  const of = (role: LevelRole) => survey.levels.filter((p) => p.role === role);
  const rims = of('rim');
  const ground = rims.length > 0 ? rims : of('spot').slice(0, 1);
  const datum = ground.length > 0 ? Math.min(...ground.map((p) => p.level)) : 0;
  const level = (p: LevelPoint) => overDatum.compute(p.level, datum);
  const lowest = (points: LevelPoint[]) => (points.length > 0 ? Math.min(...points.map(level)) : undefined);
  const plan = planOf(survey.pond);
  const [long, wide] = [plan.length, plan.width].sort((a, b) => b - a) as [number, number];
  const rim = rimLine(rims.flatMap(onPlan), long * wide || undefined);
  const way = (p: LevelPoint) => distanceOf(p, rim);
  const reach = reachBeyond(rim, long, wide);
  // Of what the dig may harm the least that it can be: the tape measured to the edge, the plan may have too few points.
  const wayAtLeast = (p: LevelPoint): Pick<Footing, 'distance' | 'drawn'> => {
    const distance = way(p) ?? AT_EDGE;
    const least = p.distance === undefined ? Math.max(distance - reach, AT_EDGE) : distance;
    return least < distance ? { distance: least, drawn: distance } : { distance };
  };
  const apart = (a: LevelPoint, b: LevelPoint) => {
    if (a.x !== undefined && a.y !== undefined && b.x !== undefined && b.y !== undefined)
      return Math.hypot(a.x - b.x, a.y - b.y);
    const [there, here] = [way(a), way(b)];
    return there !== undefined && here !== undefined ? Math.abs(there - here) : Number.POSITIVE_INFINITY;
  };
  /** Level of the nearest; of several as near, or all at an unknown distance, the highest. */
  const nearest = (points: LevelPoint[], to: LevelPoint): number | undefined => {
    const least = Math.min(...points.map((p) => apart(p, to)));
    const near = points.filter((p) => apart(p, to) === least);
    return near.length > 0 ? Math.max(...near.map(level)) : undefined;
  };
  const drawn = NEAR.flatMap((role) => of(role).filter((p) => p.distance === undefined));
  const nearer = reach > 0 ? drawn.filter((p) => way(p) !== undefined) : [];
  const boundary = boundaryOf(of('boundary'), rims, survey);
  const spills = of('spill');
  const swale = spills.find((p) => level(p) === lowest(spills));
  const placed = (points: LevelPoint[]) =>
    points.flatMap((point) => {
      const distance = way(point);
      return distance === undefined ? [] : [{ point, distance }];
    });
  const outletAt = ({ point, distance }: { point: LevelPoint; distance: number }): Outlet => ({
    name: point.point,
    level: level(point),
    distance,
    ditch: nearest(of('ditch'), point),
    flood: nearest(of('flood'), point),
    ...boundary.against(point, distance),
  });
  const unplaced = ([...REACHED, ...NEAR] as const).flatMap((role) =>
    of(role).flatMap((p) => (way(p) === undefined ? [{ name: p.point, role, origin: p.origin }] : [])),
  );
  return {
    datum,
    highRim: ground.length > 0 ? Math.max(...ground.map(level)) : 0,
    outlets: placed(of('outlet')).map(outletAt),
    discharges: placed(of('discharge')).map(({ point, distance }) => ({
      name: point.point,
      level: level(point),
      distance,
    })),
    unplaced,
    ...(nearer.length > 0 && { shortOfRim: { names: nearer.map((p) => p.point), reach } }),
    footings: of('footing').map((p) => ({ name: p.point, level: level(p), ...wayAtLeast(p) })),
    spill: lowest(spills),
    spillFlood: swale && nearest(of('flood'), swale),
    lowWayOut: placed(swale && level(swale) < 0 ? [swale] : []).map(outletAt)[0],
    houses: [...of('house'), ...of('neighbour-house')].map((p) => ({
      name: p.point,
      level: level(p),
      ...wayAtLeast(p),
      neighbour: p.role === 'neighbour-house',
    })),
    boundary: boundary.distance,
    pondPoint: lowest(of('pond')),
    dipPipePoint: lowest(of('dip-pipe')),
    pits: new Map(of('pit').map((p) => [p.point, level(p)])),
  };
}
