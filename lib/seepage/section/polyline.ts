/** A point of a section: x to the right, z upwards, m. */
export interface SectionPoint {
  x: number;
  z: number;
}

/** Height of a line of points at a place, m; beyond its ends that of the end. Steps count as the lower side. */
export function heightOf(points: SectionPoint[], x: number): number {
  if (x <= points[0].x) return points[0].z;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if (x > b.x || a.x === b.x) continue;
    return a.z + ((b.z - a.z) * (x - a.x)) / (b.x - a.x);
  }
  return points[points.length - 1].z;
}

/**
 * Where a hollow's line of points, left rim to right rim, first and last goes below a level, m; above a rim, that rim;
 * nothing below its floor.
 */
export function widthAt(points: SectionPoint[], z: number): { left: number; right: number } | undefined {
  const crossing = (way: SectionPoint[]) => {
    if (way[0].z < z) return way[0].x;
    for (let i = 1; i < way.length; i++) {
      const [a, b] = [way[i - 1], way[i]];
      if (b.z <= z && a.z >= z) return a.z === b.z ? a.x : a.x + ((b.x - a.x) * (a.z - z)) / (a.z - b.z);
    }
    return undefined;
  };
  const left = crossing(points);
  const right = crossing([...points].reverse());
  return left === undefined || right === undefined ? undefined : { left, right };
}

/** How far along a line of points its nearest point to a place lies, m. */
export function alongLine(points: SectionPoint[], { x, z }: SectionPoint): number {
  let [best, nearest, passed] = [0, Number.POSITIVE_INFINITY, 0];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    const [dx, dz] = [b.x - a.x, b.z - a.z];
    const length = Math.hypot(dx, dz);
    if (length === 0) continue;
    const t = Math.min(Math.max(((x - a.x) * dx + (z - a.z) * dz) / length ** 2, 0), 1);
    const away = Math.hypot(x - a.x - t * dx, z - a.z - t * dz);
    if (away < nearest - 1e-12) {
      nearest = away;
      best = passed + t * length;
    }
    passed += length;
  }
  return best;
}
