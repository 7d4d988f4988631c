import { isoDate } from '../climate/index.js';
import type { Judged } from './assess.js';
import { floorLevel } from './measures.js';

/** What the last look into the dip pipe under the liner allows. Levels m above the datum. */
export interface LowerToday {
  date: string;
  /** 1–12 */
  month: number;
  /** water under the liner; for a dry pipe the floor of the pipe, below which it stands */
  water_m: number;
  dry: boolean;
  /** lowest pond level on that day; null: may be emptied */
  lowest_m: number | null;
  /** lowest level of that month without a dip; null: may be emptied */
  month_lowest_m: number | null;
}

/**
 * May the pond be lowered on the day of the last dip: to the water found under the liner and the margin, as long as
 * the pipe is read again before the next lowering.
 * @returns null where the dip pipe has not been read, or was found dry without saying how deep it is
 */
export function lowerToday({ site, decision, limits }: Judged): LowerToday | null {
  const { survey, places, pond } = site;
  const look = survey.looks
    .filter((l) => l.pit === 'dip-pipe' && (l.reading === 'level' || l.reading === 'dry'))
    .at(-1);
  const depth = look?.reading === 'dry' ? look.holeDepth : look?.depth;
  if (!look || depth === undefined) return null;
  const water = (places.dipPipePoint ?? 0) - depth;
  const floor =
    floorLevel(decision.depth || pond.depth, decision.measures) +
    pond.floorBallast +
    decision.measures.ballast;
  const date = isoDate(Math.floor(look.day));
  const month = Number(date.slice(5, 7));
  return {
    date,
    month,
    water_m: water,
    dry: look.reading === 'dry',
    lowest_m: water <= floor ? null : water + pond.margin - decision.measures.ballast,
    month_lowest_m: limits.lowestSafeLevel[month - 1] ?? null,
  };
}
