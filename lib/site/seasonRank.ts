import { type ClimateRecord, calendarOf } from '../climate/index.js';
import { method, SECONDS_PER_DAY } from '../formula/index.js';

export const seasonRankMethod = method({
  title: 'Whether the season looked in was wet or dry',
  what: 'Ranks the rain of every wet season in which somebody looked among all whole wet seasons of the weather record.',
  assumptions: [
    'by what fell in its wet months, snow too',
    'a season of which a day is missing from the record, or fewer than five seasons, is not ranked (our choice)',
  ],
  source: 'ranking; common practice',
});

/** A wet season in which somebody looked. */
interface SeasonRank {
  /** its first and last month, 1–12, each with its year */
  from: { month: number; year: number };
  to: { month: number; year: number };
  /** 1 the wettest */
  rank: number;
  /** whole seasons in the record */
  of: number;
}

/** Share of the days whose rain may be filled in. Our choice. */
const FILLED = 0.05;
/** Whole seasons from which on a rank says something. Our choice. */
const FEWEST = 5;

/**
 * Ranks of the wet seasons looked in, see {@link seasonRankMethod}; the earliest first.
 * @param wetMonths - 1–12
 * @param looks - days since 1970-01-01 of looks that gave a level or a bound
 */
export function seasonRanks(
  { firstDay, rain, filled }: Pick<ClimateRecord, 'firstDay' | 'rain' | 'filled'>,
  wetMonths: readonly number[],
  looks: readonly number[],
): SeasonRank[] {
  const starts = wetMonths.filter((month) => !wetMonths.includes(month === 1 ? 12 : month - 1));
  // All year wet, or wet twice: no season to speak of.
  if (starts.length !== 1 || filled.rain > FILLED * rain.length) return [];
  const [start] = starts;
  const length = wetMonths.length;
  const seasonOf = (day: number) => {
    const { year, month } = calendarOf(day);
    return (month - start + 12) % 12 < length ? (month >= start ? year : year - 1) : undefined;
  };
  const fell = new Map<number, number>();
  rain.forEach((amount, d) => {
    const season = seasonOf(firstDay + d);
    if (season !== undefined) fell.set(season, (fell.get(season) ?? 0) + amount);
  });
  // The record may begin or end within a season.
  const inside = (day: number) => day >= firstDay && day < firstDay + rain.length;
  for (const season of fell.keys())
    if (!inside(dayOf(season, start)) || !inside(dayOf(season, start + length) - 1)) fell.delete(season);
  if (fell.size < FEWEST) return [];
  const looked = [...new Set(looks.map(seasonOf))].filter((s) => s !== undefined && fell.has(s)) as number[];
  return looked
    .sort((a, b) => a - b)
    .map((season) => {
      const last = start + length - 2;
      return {
        from: { month: start, year: season },
        to: { month: (last % 12) + 1, year: season + Math.floor(last / 12) },
        rank: 1 + [...fell.values()].filter((amount) => amount > fell.get(season)!).length,
        of: fell.size,
      };
    });
}

/** First day of a month, counted on over the end of the year, in days since 1970-01-01. */
function dayOf(year: number, month: number): number {
  return Date.UTC(year, month - 1, 1) / (1000 * SECONDS_PER_DAY);
}
