import { method } from '../formula/index.js';
import { type LinerProfile, profileFloor, profilePieces, profileRim } from './linerProfile.js';
import { netPressure, waterPressure } from './netHead.js';
import { areaWithin, PondGeometryError } from './pondShape.js';

export const linerPressure = method({
  title: 'Water pressure along the liner',
  what:
    'Pressure inside and outside at every point of floor, shelves and sides, its resultant, and the levels between ' +
    'which the outside wins.',
  assumptions: [
    'still water on both sides; one head outside, or one below and another above the top of a drained layer',
    'tension and weight of the liner are not counted on',
    'integrated piece by piece with two Gauss points, exact for straight sides',
  ],
  source: 'hydrostatics; checked against the buoyancy of the displaced volume (Archimedes)',
});

/** Water on both sides of a liner; levels m above one datum, that of the {@link LinerProfile}. */
export interface LinerWater {
  /** pond level; at the floor: empty */
  pond: number;
  /** head outside */
  outside: number;
  /** where a drained layer ends: its top, and the head the liner feels above it */
  above?: { level: number; head: number };
}

/** States of a pond, from the fullest. The name is what people do; {@link waterOfStates} gives the levels. */
export const POND_STATES = ['full', 'drawn-down', 'emptied'] as const;
/** A state of the pond, by name. */
export type PondState = (typeof POND_STATES)[number];

/**
 * Water of the three states under one head.
 * @param profile - of the liner
 * @param full - level of the full pond, m above the datum of the profile
 * @param usualDrawdown - how far it falls in use, m, 0 and more; counted down to the floor at most
 * @param outside - head outside, m above the same datum
 * @returns levels by state, m
 */
export function waterOfStates(
  profile: LinerProfile,
  full: number,
  usualDrawdown: number,
  outside: Omit<LinerWater, 'pond'>,
): Record<PondState, LinerWater> {
  const floor = profileFloor(profile);
  return {
    full: { ...outside, pond: full },
    'drawn-down': { ...outside, pond: Math.max(full - usualDrawdown, floor) },
    emptied: { ...outside, pond: floor },
  };
}

function checked(profile: LinerProfile, water: LinerWater): LinerWater {
  const floor = profileFloor(profile);
  const rim = profileRim(profile);
  if (!(water.pond >= floor))
    throw new PondGeometryError(
      `invalid water: a pond level of ${water.pond} m lies below the floor at ${floor} m, so its depth of water would be ` +
        'less than nothing. An empty pond has its level at the floor.',
    );
  if (water.pond > rim)
    throw new PondGeometryError(
      `outside: a pond level of ${water.pond} m is above the rim at ${rim} m; the water would run over. Lower it or raise the rim.`,
    );
  if (!Number.isFinite(water.outside))
    throw new PondGeometryError(
      `invalid water: a head outside of ${water.outside} m. Give a level in metres.`,
    );
  return water;
}

/**
 * Head that the liner feels from outside at a level.
 * @param water - levels of pond and ground, m above one datum
 * @param level - of a point of the liner, m above the same
 * @returns m above the same
 */
export function headOutside({ outside, above }: LinerWater, level: number): number {
  return above && level > above.level ? above.head : outside;
}

/** Pressures at a point of the liner, Pa; `net` positive holds, negative lifts. Inset and level as in {@link ProfilePoint}. */
export interface PressurePoint {
  inset: number;
  level: number;
  inside: number;
  outside: number;
  net: number;
}

/** Ends of the pieces into which the waters cut the profile, rim to floor; the middle of each tells which head acts. */
function cuts(
  profile: LinerProfile,
  { pond, outside, above }: LinerWater,
): [LinerProfile['points'][0], LinerProfile['points'][0]][] {
  const levels = [pond, outside, ...(above ? [above.level, above.head] : [])];
  return profilePieces(profile).flatMap(([top, bottom]) => {
    const height = top.level - bottom.level;
    const inner = levels.filter((z) => z < top.level && z > bottom.level).sort((a, b) => b - a);
    const ends = [
      top,
      ...inner.map((level) => ({
        level,
        inset: bottom.inset + ((level - bottom.level) / height) * (top.inset - bottom.inset),
      })),
      bottom,
    ];
    return ends.slice(1).map((end, i): [typeof top, typeof top] => [ends[i]!, end]);
  });
}

/**
 * Pressures from the rim to the edge of the floor, at every bend of the liner and of the pressures.
 * Where the head outside changes at the top of a drained layer, that level comes twice: above and below.
 * @param profile - of the liner
 * @param water - levels of pond and ground, m above the datum of the profile
 * @returns points from top to bottom, two for each straight piece, with the pressures of both waters, Pa
 * @throws PondGeometryError when the pond level is below the floor or above the rim, or the head is no number
 */
export function pressureAlong(profile: LinerProfile, water: LinerWater): PressurePoint[] {
  checked(profile, water);
  return cuts(profile, water).flatMap(([from, to]) => {
    const head = headOutside(water, (from.level + to.level) / 2);
    return [from, to].map(({ inset, level }) => ({
      inset,
      level,
      inside: waterPressure.compute(Math.max(water.pond - level, 0)),
      outside: waterPressure.compute(Math.max(head - level, 0)),
      net: netPressure.compute(water.pond, head, level),
    }));
  });
}

/** Two-point Gauss places on 0–1; exact for the cubics that arise here. */
const GAUSS = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6];

/**
 * Vertical force of both waters on the whole liner, N; positive presses it down.
 * @param profile - of the liner
 * @param water - levels of pond and ground, m above the datum of the profile
 * @returns N
 * @throws PondGeometryError as {@link pressureAlong}
 */
export function netForce(profile: LinerProfile, water: LinerWater): number {
  checked(profile, water);
  const { shape, length, width, points } = profile;
  const shapeFactor = shape === 'box' ? 1 : Math.PI / 4;
  const at = (z: number, head: number) => netPressure.compute(water.pond, head, z);
  const floor = profileFloor(profile);
  let force = at(floor, headOutside(water, floor)) * areaWithin(profile, points[points.length - 1]!.inset);
  for (const [from, to] of cuts(profile, water)) {
    const run = to.inset - from.inset;
    const head = headOutside(water, (from.level + to.level) / 2);
    for (const t of GAUSS) {
      const inset = from.inset + t * run;
      // Plan area lost per metre that the sides come in.
      const ring = 2 * shapeFactor * (length + width - 4 * inset);
      force += 0.5 * run * ring * at(from.level + t * (to.level - from.level), head);
    }
  }
  return force;
}

/**
 * Levels between which the outside wins, top to bottom; where one ends, the net pressure changes sign.
 * @param profile - of the liner
 * @param water - levels of pond and ground, m above the datum of the profile
 * @returns m above the datum; empty where the outside wins nowhere on the sides
 * @throws PondGeometryError as {@link pressureAlong}
 */
export function liftedBands(profile: LinerProfile, water: LinerWater): { top: number; bottom: number }[] {
  const bands: { top: number; bottom: number }[] = [];
  const points = pressureAlong(profile, water);
  for (let i = 0; i < points.length; i += 2) {
    const [a, b] = [points[i]!, points[i + 1]!];
    if (a.net + b.net >= 0) continue;
    const last = bands.at(-1);
    if (last && last.bottom === a.level) last.bottom = b.level;
    else bands.push({ top: a.level, bottom: b.level });
  }
  return bands;
}
