import { insetAt, PondGeometryError, type PondShape } from './pondShape.js';

/** Where the side has come in by `inset` from the rim, m, its level, m above any datum. */
export interface ProfilePoint {
  inset: number;
  level: number;
}

/**
 * The liner as a section that runs round the pond: from the rim down to the edge of the floor, the floor level within.
 * Round a circle it is turned, along a box laid out; a shelf is two points of one level.
 */
export interface LinerProfile {
  shape: PondShape['shape'];
  length: number;
  width: number;
  points: ProfilePoint[];
}

const metres = (value: number) => `${Number(value.toFixed(3))} m`;

/**
 * The liner of a pond.
 * @param pond - dimensions at the rim, m
 * @param depth - rim to floor, m, above 0
 * @param rim - level of the rim, m above any datum; absent: the rim is the datum
 * @returns points from rim to floor
 * @throws PondGeometryError for sizes, slope, depth or shelf that cannot be dug, or sides that meet above the floor
 */
export function linerProfile(pond: PondShape, depth: number, rim = 0): LinerProfile {
  const { shape, length, width, sideSlope, shelf } = pond;
  if (!(depth > 0))
    throw new PondGeometryError(
      `invalid depth ${depth} m: the floor lies below the rim. Give a depth above 0.`,
    );
  if (!(sideSlope >= 0))
    throw new PondGeometryError(
      `invalid side slope ${sideSlope}: such sides would overhang. Give 0 for upright sides, 1 for sides that lean ` +
        'back as far as they go down.',
    );
  if (shelf && !(shelf.depth > 0 && shelf.depth < depth))
    throw new PondGeometryError(
      `outside: a shelf at ${metres(shelf.depth)} is not between the rim and the floor at ${metres(depth)}. ` +
        'Make the shelf shallower or the pond deeper.',
    );
  if (shelf && !(shelf.width >= 0))
    throw new PondGeometryError(
      `invalid shelf width ${shelf.width} m: give the width of the step, 0 or more.`,
    );
  const at = (d: number, inset: number) => ({ inset, level: rim - d });
  const step = shelf
    ? [at(shelf.depth, sideSlope * shelf.depth), at(shelf.depth, sideSlope * shelf.depth + shelf.width)]
    : [];
  return checkedProfile({
    shape,
    length,
    width,
    points: [at(0, 0), ...step, at(depth, insetAt(pond, depth))],
  });
}

/**
 * A profile of any points, if a pond can have it.
 * @param profile - points from rim to floor, m
 * @returns the same profile
 * @throws PondGeometryError naming what is wrong
 */
export function checkedProfile(profile: LinerProfile): LinerProfile {
  const { length, width, points } = profile;
  if (!(length > 0 && width > 0))
    throw new PondGeometryError(`invalid size ${length} m by ${width} m: give a length and a width above 0.`);
  if (points.length < 2)
    throw new PondGeometryError('missing points: a liner runs at least from a rim to a floor.');
  points.forEach(({ inset, level }, i) => {
    const before = points[i - 1];
    if (!Number.isFinite(inset) || !Number.isFinite(level))
      throw new PondGeometryError(`invalid point ${inset} m in, level ${level} m: both must be numbers.`);
    if (before && inset < before.inset)
      throw new PondGeometryError(
        `invalid side: at level ${metres(level)} it is ${metres(before.inset - inset)} farther out than above it, steeper ` +
          'than upright. Earth does not overhang: let the sides go straight down or lean back.',
      );
    if (before && level > before.level)
      throw new PondGeometryError(
        `invalid side: it climbs from ${metres(before.level)} to ${metres(level)} towards the middle. A liner goes down or ` +
          'level from the rim to the floor.',
      );
  });
  const last = points[points.length - 1]!;
  if (2 * last.inset > Math.min(length, width))
    throw new PondGeometryError(
      `outside: sides that come in by ${metres(last.inset)} meet before the floor of a pond ${metres(Math.min(length, width))} ` +
        'across. Make the sides steeper, the pond wider or less deep.',
    );
  return profile;
}

/**
 * Level of the floor.
 * @param profile - of the liner
 * @returns m above the datum of the profile
 */
export function profileFloor({ points }: LinerProfile): number {
  return points[points.length - 1]!.level;
}

/**
 * Level of the rim.
 * @param profile - of the liner
 * @returns m above the datum of the profile
 */
export function profileRim({ points }: LinerProfile): number {
  return points[0]!.level;
}

/**
 * The straight pieces between points, top to bottom.
 * @param profile - of the liner
 * @returns pairs of neighbouring points
 */
export function profilePieces({ points }: LinerProfile): [ProfilePoint, ProfilePoint][] {
  return points.slice(1).map((point, i) => [points[i]!, point]);
}
