/** Levelled points against each other. Limits: common practice, wide of what gardens have. */

import { type Doubt, Doubts, metres } from './doubt.js';
import type { LevelPoint, LevelRole, Survey } from './survey.js';

/** Rims of one pond differ by less, m. */
const RIM_RANGE = 1.5;
/** Ground, water and holes of a garden lie within this of the pond's rim, m. */
const OFF_RIM: Partial<Record<LevelRole, number>> = {
  pit: 4,
  spot: 6,
  ditch: 6,
  flood: 6,
  outlet: 8,
  spill: 2.5,
  pond: 2,
  'dip-pipe': 2.5,
  house: 8,
  'neighbour-house': 10,
};
/** Farther away a hole says nothing of the pond, and no pipe is dug, m. */
const FAR: Partial<Record<LevelRole, number>> = { rim: 3, pit: 60, outlet: 250, discharge: 250 };

/** What is odd about the levels. */
export function levelDoubts({ levels }: Survey): Doubt[] {
  const doubts = new Doubts();
  const of = (role: LevelRole) => levels.filter((point) => point.role === role);
  const rims = of('rim');
  if (rims.length === 0) return [];
  const low = lowest(rims);
  const at = ({ origin }: LevelPoint) => ({ ...origin, column: 'level' });
  const range = Math.max(...rims.map(({ level }) => level)) - low.level;
  doubts.when(
    range > RIM_RANGE,
    at(low),
    `the ground at the rim differs by ${metres(range)} from one side to the other: check the levels and their mark`,
  );
  for (const point of levels) {
    const off = point.level - low.level;
    const most = OFF_RIM[point.role];
    doubts.when(
      most !== undefined && Math.abs(off) > most,
      at(point),
      `${point.point} (${point.role}) lies ${metres(Math.abs(off))} ${off > 0 ? 'above' : 'below'} the lowest rim: check the level, its unit and its mark`,
    );
    doubts.when(
      (point.distance ?? 0) > (FAR[point.role] ?? Number.POSITIVE_INFINITY),
      { ...point.origin, column: 'distance' },
      `${point.point} (${point.role}) is ${metres(point.distance ?? 0)} from the pond's edge: check the distance and its unit`,
    );
  }
  for (const outlet of of('outlet'))
    doubts.when(
      outlet.level > low.level,
      at(outlet),
      `${outlet.point} (outlet) lies ${metres(outlet.level - low.level)} above the lowest rim, and water does not run uphill: check the level`,
    );
  const ditches = of('ditch');
  const floods = of('flood');
  if (ditches.length > 0) {
    const ditch = lowest(ditches);
    doubts.when(
      ditch.level > low.level + 0.3,
      at(ditch),
      `${ditch.point} (ditch) stands ${metres(ditch.level - low.level)} above the lowest rim in ordinary times: check the level`,
    );
    for (const flood of floods)
      doubts.when(
        flood.level < ditch.level,
        at(flood),
        `${flood.point} (flood) lies ${metres(ditch.level - flood.level)} below the ditch's ordinary water: check both`,
      );
  }
  for (const footing of of('footing'))
    doubts.when(
      footing.level > low.level + 1.5 || footing.level < low.level - 4,
      at(footing),
      `${footing.point} (footing) lies ${metres(Math.abs(footing.level - low.level))} ${footing.level > low.level ? 'above' : 'below'} the lowest rim: the level of its underside is asked`,
    );
  return doubts.list;
}

const lowest = (points: LevelPoint[]) => points.reduce((a, b) => (b.level < a.level ? b : a));
