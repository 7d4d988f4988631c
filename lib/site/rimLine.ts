/** The rim of the pond on the plan, through its levelled points. */
import type { PlanPoint } from './boundary.js';

/** Share of the pond's rectangle below which what the points enclose lies within it: they mark the middles of its sides. */
const CORNERS = 0.75;

/**
 * The line of the rim, closed. Points at the corners are joined, of three the fourth is put where it makes a rectangle of them;
 * where they mark the middles of the sides, the rectangle through them along the longest way between two of them.
 * @param points - levelled on the rim
 * @param area - of the rectangle around the pond, m²; absent: not known
 * @returns points to be joined in order; as they are where there are fewer than three
 */
export function rimLine(points: readonly PlanPoint[], area: number | undefined): PlanPoint[] {
  if (points.length < 3) return [...points];
  const hull = hullOf(points);
  const within = areaOf(hull);
  // All at one place, or on one line.
  if (within === 0) return hull;
  const line =
    area === undefined || within >= CORNERS * area
      ? hull
      : hull.length === 3
        ? withFourth(hull, area)
        : rectangle(points);
  return [...line, line[0]!];
}

/** Three corners with the fourth across from the widest of their angles; as they are where that leaves too little for a pond. */
function withFourth(hull: readonly PlanPoint[], area: number): PlanPoint[] {
  const sides = hull.map((_, i) => lengthOf([hull[(i + 1) % 3]!, hull[(i + 2) % 3]!]));
  const widest = sides.indexOf(Math.max(...sides));
  const [b, c, a] = [0, 1, 2].map((i) => hull[(widest + i) % 3]!) as [PlanPoint, PlanPoint, PlanPoint];
  const line = [a, b, c, { x: a.x + c.x - b.x, y: a.y + c.y - b.y }];
  return areaOf(line) >= CORNERS * area ? line : [...hull];
}

/**
 * How far the pond may reach beyond the line of its rim, m: points that enclose too little of it do not tell on which side of
 * them it lies.
 * @param line - from {@link rimLine}
 * @param length - of the pond's rectangle, m
 * @param width - of it, no more than the length, m
 * @returns 0 where the line encloses it; else no more than what is left of the rectangle beside the longest way between two
 */
export function reachBeyond(line: readonly PlanPoint[], length: number, width: number): number {
  if (line.length > 2 && areaOf(line) >= CORNERS * length * width) return 0;
  const longest = Math.max(0, ...line.flatMap((a, i) => line.slice(i + 1).map((b) => lengthOf([a, b]))));
  // Of the way between two no more than the width lies across the pond; what is left of its length may lie beyond either.
  const along = Math.sqrt(Math.max(longest ** 2 - width ** 2, 0));
  return Math.hypot(Math.max(length - along, 0), width);
}

/** Convex hull, counter-clockwise: the points sorted, the lower chain and the upper one. */
function hullOf(points: readonly PlanPoint[]): PlanPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const chain = (of: PlanPoint[]) =>
    of
      .reduce<PlanPoint[]>((line, p) => {
        while (line.length > 1 && turn(line.at(-2)!, line.at(-1)!, p) <= 0) line.pop();
        line.push(p);
        return line;
      }, [])
      .slice(0, -1);
  const hull = [...chain(sorted), ...chain(sorted.reverse())];
  // All on one line.
  return hull.length > 2 ? hull : [sorted[0]!, sorted.at(-1)!];
}

const turn = (a: PlanPoint, b: PlanPoint, p: PlanPoint) =>
  (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

function areaOf(line: readonly PlanPoint[]): number {
  return Math.abs(
    line.reduce((sum, { x, y }, i) => {
      const next = line[(i + 1) % line.length]!;
      return sum + (x * next.y - next.x * y) / 2;
    }, 0),
  );
}

function rectangle(points: readonly PlanPoint[]): PlanPoint[] {
  const [a, b] = points
    .flatMap((p, i) => points.slice(i + 1).map((q): [PlanPoint, PlanPoint] => [p, q]))
    .reduce((far, pair) => (lengthOf(pair) > lengthOf(far) ? pair : far));
  const long = lengthOf([a, b]);
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const along = points.map(({ x, y }) => x * ux + y * uy);
  const across = points.map(({ x, y }) => y * ux - x * uy);
  const at = (u: number, v: number): PlanPoint => ({ x: u * ux - v * uy, y: u * uy + v * ux });
  const [u0, u1, v0, v1] = [Math.min(...along), Math.max(...along), Math.min(...across), Math.max(...across)];
  return [at(u0, v0), at(u1, v0), at(u1, v1), at(u0, v1)];
}

const lengthOf = ([a, b]: [PlanPoint, PlanPoint]) => Math.hypot(b.x - a.x, b.y - a.y);
