import type { NextDoor } from '../contract/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { fullLevel } from '../heads/index.js';
import { LEVEL_RIM, type Site } from '../site/index.js';
import type { Decision } from './decide.js';

/** Water above the ground that any edging holds, m: up to here nothing is told of a rim that gives way. Our choice. */
const KERB = 0.1;

/** Level of the full pond above the lowest ground at the rim, m; 0 where it lies in the ground. */
export function brimOf(site: Site, { measures }: Decision): number {
  return Math.max(fullLevel(site, measures), 0);
}

/** Whether a bank, frame or wall holds water above the ground around. */
export function isHeld(site: Site, d: Decision): boolean {
  return brimOf(site, d) > KERB + LEVEL_RESOLUTION;
}

/** Houses that water from the full pond or the pipe could run to. */
export function housesBelow(
  site: Site,
  d: Decision,
  { kind, level_m }: Pick<NextDoor['exit'], 'kind' | 'level_m'>,
): NextDoor['downhill'] {
  const { places, survey } = site;
  // Where an overflow ends is not surveyed: it may be anywhere from the brim down. A bank may give way whatever leads away.
  const brim = isHeld(site, d) || kind === 'brim' || survey.pond.overflow !== 'away' ? [brimOf(site, d)] : [];
  const highest = Math.max(...brim, ...(level_m === null ? [] : [level_m]));
  return places.houses
    .map(({ name, neighbour, level, distance }) => ({
      name,
      neighbour,
      below_m: highest - level,
      distance_m: distance,
    }))
    .filter(({ below_m }) => below_m > LEVEL_RIM)
    .sort((a, b) => b.below_m - a.below_m);
}
