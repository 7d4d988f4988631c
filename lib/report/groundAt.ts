/** Level of the natural ground where nobody levelled it. */
import type { Peg } from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import type { LevelPoint, LevelRole } from '../survey/index.js';
import { placedPoints } from './settingFrame.js';

/** Points that were levelled on the ground itself. */
const ON_GROUND: readonly LevelRole[] = ['rim', 'pit', 'spot', 'boundary'];
/** A levelled point speaks for the ground so far around it, m. Our choice. */
const NEAR = 2;
/** Points nearer to one line than this share of their spread span no plane. */
const FLAT = 1e-6;

/** Level of the ground and what it comes from. */
export type GroundFound = Pick<Peg, 'ground_m' | 'ground_from'>;

/**
 * What tells the ground at a place: within the pond and its banks the plane through the rim points, else the nearest point
 * levelled. Without places only a rim that is level all round tells it, and only there.
 */
export function groundFinder(
  levels: readonly LevelPoint[],
  datum: number,
  highRim: number,
): (x: number, y: number, atPond: boolean) => GroundFound {
  const placed = placedPoints(levels);
  const rims = placed.filter(({ role }) => role === 'rim');
  const plane = planeOf(rims.map(({ x, y, level }) => [x, y, level - datum]));
  const grounds = placed.filter(({ role }) => ON_GROUND.includes(role));
  return (x, y, atPond) => {
    if (atPond && plane) return { ground_m: plane(x, y), ground_from: 'plane' };
    if (atPond && rims.length < 2 && highRim <= LEVEL_RIM)
      return { ground_m: highRim / 2, ground_from: 'level-rim' };
    const off = (p: { x: number; y: number }) => Math.hypot(p.x - x, p.y - y);
    const nearest = grounds.reduce<(typeof grounds)[number] | undefined>(
      (best, p) => (best && off(best) <= off(p) ? best : p),
      undefined,
    );
    return nearest && off(nearest) <= NEAR
      ? { ground_m: nearest.level - datum, ground_from: 'nearest' }
      : { ground_m: null, ground_from: null };
  };
}

/** Plane of least squares; absent where the points do not span one. */
function planeOf(points: [number, number, number][]): ((x: number, y: number) => number) | undefined {
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
  const [sx, sy] = [(xz * yy - yz * xy) / det, (yz * xx - xz * xy) / det];
  return (x, y) => mz + sx * (x - mx) + sy * (y - my);
}
