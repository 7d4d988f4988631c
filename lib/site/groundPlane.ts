/** Points nearer to one line than this share of their spread span no plane. */
const FLAT = 1e-6;

/** A plane through levelled ground. */
interface GroundPlane {
  /** rise along x and y, m/m */
  slope: { x: number; y: number };
  /** level at a place, m */
  levelAt(x: number, y: number): number;
}

/**
 * Plane of least squares through levelled points.
 * @param points - x, y and level, m
 * @returns the plane; undefined where the points do not span one
 */
export function groundPlane(points: readonly [number, number, number][]): GroundPlane | undefined {
  if (points.length < 3) return undefined;
  const mean = (key: 0 | 1 | 2) => points.reduce((sum, p) => sum + p[key], 0) / points.length;
  const [mx, my, mz] = [mean(0), mean(1), mean(2)];
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0];
  for (const [x, y, z] of points) {
    const [dx, dy, dz] = [x - mx, y - my, z - mz];
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
    xz += dx * dz;
    yz += dy * dz;
  }
  const det = xx * yy - xy * xy;
  if (!(det > FLAT * (xx + yy) ** 2)) return undefined;
  const slope = { x: (xz * yy - yz * xy) / det, y: (yz * xx - xz * xy) / det };
  return { slope, levelAt: (x, y) => mz + slope.x * (x - mx) + slope.y * (y - my) };
}
