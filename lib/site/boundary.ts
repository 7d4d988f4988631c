/** A point on the survey's plan, m. */
export interface PlanPoint {
  x: number;
  y: number;
}

/** Distance of a point from a line of joined points, m; one point is a line of no length. */
export function distanceToLine(point: PlanPoint, line: readonly PlanPoint[]): number {
  const first = line[0];
  let least = Math.hypot(point.x - first.x, point.y - first.y);
  for (let i = 1; i < line.length; i++) least = Math.min(least, distanceToPiece(point, line[i - 1], line[i]));
  return least;
}

function distanceToPiece(p: PlanPoint, a: PlanPoint, b: PlanPoint): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const along = square > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / square : 0;
  const t = Math.min(Math.max(along, 0), 1);
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

/** On which side of the line from a to b a point lies: above 0 left, 0 on it. */
function side(a: PlanPoint, b: PlanPoint, p: PlanPoint): number {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

/**
 * Whether the straight way between two points goes through a line of joined points. To end on the line is not to
 * cross it: a ditch along the boundary can be reached. To go through one of its corners is.
 */
export function crossesLine(from: PlanPoint, to: PlanPoint, line: readonly PlanPoint[]): boolean {
  let last = 0;
  for (let i = 0; i < line.length; i++) {
    const now = Math.sign(side(from, to, line[i]));
    if (i > 0) {
      const [a, b] = [line[i - 1], line[i]];
      const between = side(a, b, from) * side(a, b, to) < 0;
      if (between && now * last < 0) return true;
    }
    // A corner on the way counts with the side that the line came from, so that leaving on the other side crosses.
    if (now !== 0 || i === 0) last = now;
  }
  return false;
}
