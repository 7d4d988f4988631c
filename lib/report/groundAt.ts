/** Level of the natural ground where nobody levelled it. */
import type { Peg } from '../contract/index.js';
import { groundPlane, LEVEL_RIM, placedPoints } from '../site/index.js';
import type { LevelPoint, LevelRole } from '../survey/index.js';

/** Points that were levelled on the ground itself. */
const ON_GROUND: readonly LevelRole[] = ['rim', 'pit', 'spot', 'boundary'];
/** A levelled point speaks for the ground so far around it, m. Our choice. */
const NEAR = 2;

/** Level of the ground and what it comes from. */
type GroundFound = Pick<Peg, 'ground_m' | 'ground_from'>;

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
  const plane = groundPlane(rims.map(({ x, y, level }) => [x, y, level - datum]));
  const grounds = placed.filter(({ role }) => ON_GROUND.includes(role));
  return (x, y, atPond) => {
    if (atPond && plane) return { ground_m: plane.levelAt(x, y), ground_from: 'plane' };
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
