import { calendarOf } from '../climate/index.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { type Look, type Origin, RESERVED_PITS, type Survey } from '../survey/index.js';
import { lagOf } from './dips.js';
import type { GroundLayer } from './profile.js';

/** Spread of a level that is not said with one, and of one taken from another hole, m. Our choice. */
export const SPREAD = { read: 0.1, elsewhere: 0.2 };
/** A strike this near above a seam is of it, m. */
const STRIKE_TOLERANCE = 0.15;

/** A seam by the log alone; depths below the ground at the pit. */
export interface LoggedSeam {
  pit: string;
  top: number;
  bottom: number;
  /** at its slow end, m/s */
  permeability: number;
  coverWeight: number;
}

/** What is known of a level: m below the ground at the pit. */
export interface Reading {
  /** 1–12; absent: the highest of the year */
  month?: number;
  depth: number;
  /** a lower limit only */
  atLeast: boolean;
  spread: number;
  /** from heads.csv */
  given: boolean;
  origin: Origin;
}

/** Looks into a hole and into those that are not logged, hole by hole, depths below the ground at the hole. */
export function holesAt(survey: Survey, pit: string, logged: string[], pits: Map<string, number>): Look[][] {
  const groundAt = (name: string) => pits.get(name) ?? 0;
  const others = [...new Set(survey.looks.map((l) => l.pit))].filter(
    (name) => !logged.includes(name) && !RESERVED_PITS.includes(name),
  );
  return [pit, ...others].map((name) => {
    const down = groundAt(pit) - groundAt(name);
    const moved = (depth: number | undefined) => (depth === undefined ? undefined : depth + down);
    let opened: Look | undefined;
    return survey.looks
      .filter((look) => look.pit === name)
      .map((look) => {
        if (look.reading === 'opened') opened = look;
        return {
          ...look,
          depth: moved(look.depth),
          holeDepth: moved(look.holeDepth ?? opened?.holeDepth ?? opened?.depth),
          openFrom: moved(look.openFrom ?? opened?.openFrom),
        };
      });
  });
}

/** Whether looks into a hole show a layer's water to stand above it: struck there, or in a pipe open to it alone. */
export function pressesFrom(looks: Look[], { row, texture }: GroundLayer, bottom: number): boolean {
  if (texture.includes('clay')) return false;
  const inside = (depth: number | undefined) =>
    depth !== undefined && depth >= row.top - STRIKE_TOLERANCE && depth < bottom;
  return looks.some(
    ({ reading, depth, openFrom }) =>
      (reading === 'strike' && inside(depth)) ||
      (reading === 'level' && inside(openFrom) && depth! < row.top - STRIKE_TOLERANCE),
  );
}

/** What heads.csv says of a seam's own water. */
export function seamHeadReadings(survey: Survey, { pit }: LoggedSeam): Reading[] {
  return readingsAt(survey, `below:${pit}`, 0);
}

/** What heads.csv says of the ground's water, at the site or at the hole, for a seam that stands in it. */
export function groundHeadReadings(
  survey: Survey,
  place: 'site' | 'hole',
  { pit }: LoggedSeam,
  ground: number,
): Reading[] {
  return place === 'site' ? readingsAt(survey, 'site', ground) : readingsAt(survey, pit, 0);
}

/** @param ground at the hole over the one that depths are told from, m */
function readingsAt(survey: Survey, place: string, ground: number): Reading[] {
  return survey.heads
    .filter((head) => head.place === place)
    .map(
      (h): Reading => ({
        month: h.month === 'high' ? undefined : h.month,
        depth: h.depth + ground,
        atLeast: false,
        spread: h.spread ?? SPREAD.read,
        given: true,
        origin: h.origin,
      }),
    );
}

/** Whether looks found a seam's water higher than is told of the ground's in that month, or in any: it is another water. */
export function standsHigher(seen: Reading[], told: Reading[]): boolean {
  return seen.some((reading) => {
    const then = told.filter(({ month }) => month === reading.month);
    const depths = (then.length > 0 ? then : told).map(({ depth }) => depth);
    return reading.depth < Math.min(...depths) - SPREAD.read;
  });
}

/** Looks in a hole that is open to the seam. */
export function looksInto(looks: Look[], { top, bottom, permeability }: LoggedSeam): Reading[] {
  const readings: Reading[] = [];
  let start: Look | undefined;
  for (const look of looks) {
    if (look.reading === 'opened' || look.reading === 'bailed') {
      start = look;
      continue;
    }
    const reading = {
      month: calendarOf(look.day).month,
      spread: SPREAD.read,
      given: false,
      origin: look.origin,
    };
    if (look.reading === 'strike') {
      if (look.depth! >= top - STRIKE_TOLERANCE && look.depth! < bottom)
        readings.push({ ...reading, depth: look.depth!, atLeast: true });
      continue;
    }
    const floor = look.holeDepth ?? look.depth ?? 0;
    if (floor <= top || (look.openFrom ?? 0) >= bottom) continue;
    const lags =
      start === undefined
        ? Number.POSITIVE_INFINITY
        : ((look.day - start.day) * SECONDS_PER_DAY) / lagOf(look, permeability);
    if (look.reading === 'level') readings.push({ ...reading, depth: look.depth!, atLeast: lags < 3 });
    else if (lags >= 2) readings.push({ ...reading, depth: floor, atLeast: false });
  }
  return readings;
}
