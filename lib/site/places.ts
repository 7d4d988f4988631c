import type { LevelPoint, LevelRole, Survey } from '../survey/index.js';
import { crossesLine, distanceToLine, type PlanPoint } from './boundary.js';

/** A place where a drain may end, with the water it meets there. Levels m above the lowest rim ground. */
export interface Outlet {
  name: string;
  level: number;
  /** from the pond's edge, m */
  distance: number;
  /** ordinary and highest water at the receiver, m; absent where the survey does not say */
  ditch?: number;
  flood?: number;
  /** whether the boundary lies between; by tape alone: is nearer than the outlet; absent: no boundary levelled */
  beyondBoundary?: boolean;
  /** from the outlet to the boundary, m; by tape alone at least that */
  toBoundary?: number;
}

/** A footing near the dig. */
export interface Footing {
  name: string;
  /** underside, m above the lowest rim ground */
  level: number;
  /** from the pond's edge, m */
  distance: number;
}

/** Levelled points, brought to metres above the lowest natural ground at the rim. */
export interface Places {
  /** level of that ground on the survey's mark, m */
  datum: number;
  /** highest rim ground, m */
  highRim: number;
  outlets: Outlet[];
  /** a lawful place for pumped water; distances here are from the pond's edge, m */
  discharge?: { name: string; level: number; distance: number };
  footings: Footing[];
  /** lowest spill point, m */
  spill?: number;
  houses: { name: string; level: number; distance: number; neighbour: boolean }[];
  /** from the pond's edge to the line that joins the boundary points, m */
  boundary?: number;
  /** the marks from which the pond's own level and that in the dip pipe are read */
  pondPoint?: number;
  dipPipePoint?: number;
  /** ground at a pit, m */
  pits: Map<string, number>;
}

/** Where a point lies on the plan, where the survey gives that. */
function onPlan({ x, y }: LevelPoint): PlanPoint[] {
  return x !== undefined && y !== undefined ? [{ x, y }] : [];
}

/** Distance of a point from the pond's edge: as taped, else from its coordinates to the nearest rim point. */
function distanceOf(point: LevelPoint, rims: LevelPoint[]): number | undefined {
  if (point.distance !== undefined) return point.distance;
  const [at] = onPlan(point);
  const rim = rims.flatMap(onPlan);
  return at && rim.length > 0 ? Math.min(...rim.map((r) => distanceToLine(at, [r]))) : undefined;
}

/** The boundary points, joined in the order of the file, against pond and outlets. */
function boundaryOf(points: LevelPoint[], rims: LevelPoint[]) {
  const line = points.flatMap(onPlan);
  const rim = rims.flatMap(onPlan);
  const drawn = line.length > 0 ? rim.map((r) => distanceToLine(r, line)) : [];
  // A taped distance stands beside what is drawn; where both are given for a point, the tape measured to the edge.
  const taped = points.flatMap((p) => (p.distance !== undefined ? [p.distance] : []));
  const distance = drawn.length + taped.length > 0 ? Math.min(...drawn, ...taped) : undefined;
  const against = (outlet: LevelPoint): Pick<Outlet, 'beyondBoundary' | 'toBoundary'> => {
    const [at] = onPlan(outlet);
    if (at && drawn.length > 0) {
      const start = rim.reduce((a, b) => (distanceToLine(at, [b]) < distanceToLine(at, [a]) ? b : a));
      return { beyondBoundary: crossesLine(start, at, line), toBoundary: distanceToLine(at, line) };
    }
    if (distance === undefined) return {};
    const reach = distanceOf(outlet, rims) ?? 0;
    return { beyondBoundary: reach > distance, toBoundary: Math.max(distance - reach, 0) };
  };
  return { distance, against };
}

/** Brings the levelled points of a survey to one datum. */
export function placesOf(survey: Survey): Places {
  const of = (role: LevelRole) => survey.levels.filter((p) => p.role === role);
  const rims = of('rim');
  const ground = rims.length > 0 ? rims : of('spot').slice(0, 1);
  const datum = ground.length > 0 ? Math.min(...ground.map((p) => p.level)) : 0;
  const level = (p: LevelPoint) => p.level - datum;
  const lowest = (points: LevelPoint[]) => (points.length > 0 ? Math.min(...points.map(level)) : undefined);
  const apart = (a: LevelPoint, b: LevelPoint) =>
    a.x !== undefined && a.y !== undefined && b.x !== undefined && b.y !== undefined
      ? Math.hypot(a.x - b.x, a.y - b.y)
      : Math.abs((distanceOf(a, rims) ?? 0) - (distanceOf(b, rims) ?? 0));
  const nearest = (points: LevelPoint[], to: LevelPoint): LevelPoint | undefined =>
    [...points].sort((a, b) => apart(a, to) - apart(b, to))[0];
  const boundary = boundaryOf(of('boundary'), rims);
  const outlets = of('outlet').map((p): Outlet => {
    const ditch = nearest(of('ditch'), p);
    const flood = nearest(of('flood'), p);
    return {
      name: p.point,
      level: level(p),
      distance: distanceOf(p, rims) ?? 0,
      ditch: ditch && level(ditch),
      flood: flood && level(flood),
      ...boundary.against(p),
    };
  });
  const discharge = of('discharge')[0];
  return {
    datum,
    highRim: ground.length > 0 ? Math.max(...ground.map(level)) : 0,
    outlets,
    discharge: discharge && {
      name: discharge.point,
      level: level(discharge),
      distance: distanceOf(discharge, rims) ?? 0,
    },
    footings: of('footing').map((p) => ({
      name: p.point,
      level: level(p),
      distance: distanceOf(p, rims) ?? 0,
    })),
    spill: lowest(of('spill')),
    houses: [...of('house'), ...of('neighbour-house')].map((p) => ({
      name: p.point,
      level: level(p),
      distance: distanceOf(p, rims) ?? 0,
      neighbour: p.role === 'neighbour-house',
    })),
    boundary: boundary.distance,
    pondPoint: lowest(of('pond')),
    dipPipePoint: lowest(of('dip-pipe')),
    pits: new Map(of('pit').map((p) => [p.point, level(p)])),
  };
}
