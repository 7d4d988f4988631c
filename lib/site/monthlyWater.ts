import { calendarOf, isoDate } from '../climate/index.js';
import type { ColourEvidence } from '../soil/index.js';
import type { Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import { type PitDip, WET_MONTHS_NEEDED, wetMonthsCovered } from './dips.js';
import { interpolate, wetFilled } from './filledMonths.js';
import { otherYearSpread, wetSeasons } from './otherYears.js';
import type { Places } from './places.js';
import { plannedHeads } from './spots.js';

/** Water known month by month, without a daily model. Depths m below the datum ground (negative above it). */
export interface MonthlyWater {
  /** highest of each month in an ordinary year, at the low side */
  low: number[];
  /** the same behind the uphill wall; absent where nobody measured there */
  high?: number[];
  /** one standard deviation, m */
  spread: number;
  /** the spread is reading error: one draw for all years */
  fixed: boolean;
  /** water was told or seen above the ground: else a draw of it ends there */
  aboveGround: boolean;
  /** months 1–12 of which nothing is known but what is usual */
  usual: number[];
  source: 'heads' | 'dips' | 'spill level';
}

/**
 * From heads.csv, or undefined when it holds nothing of the water at the pond: what it says of the site itself, else
 * the plane through three or more levelled holes, else the hole whose ground is nearest in height.
 */
export function monthlyFromHeads(
  survey: Survey,
  places: Places,
  wetMonths: readonly number[],
  colour: ColourEvidence | undefined,
  assume: Assumptions,
): MonthlyWater | undefined {
  const at = (place: string) => {
    const rows = survey.heads.filter((h) => h.place === place);
    return rows.length > 0 ? rows : undefined;
  };
  const fromGround = (place: string) => Math.abs(places.pits.get(place) ?? 0);
  const [pit] = [...new Set(survey.heads.map((h) => h.place))]
    .filter((p) => p !== 'site' && p !== 'uphill' && !p.startsWith('below:'))
    .sort((a, b) => fromGround(a) - fromGround(b));
  const plane = plannedHeads(survey).map(({ month, head, spread }) => ({
    month,
    depth: places.datum - head,
    spread,
    source: 'plane through levelled holes',
  }));
  const own = at('site');
  if (!own && plane.length > 0)
    assume.add(
      'heads at the pond',
      'plane',
      '',
      'heads.csv says nothing of the site itself: taken from the plane through its levelled holes',
    );
  const low = own ?? (plane.length > 0 ? plane : at(pit));
  const uphill = at('uphill');
  if (!low && !uphill) return undefined;
  const lowMonths = low ? months(low, wetMonths, colour, assume) : undefined;
  const highMonths = uphill
    ? months(uphill, wetMonths, colour, assume).map((d) => d - places.highRim)
    : undefined;
  const rows = (low ?? uphill)!;
  const spreads = rows.map((r) => r.spread).filter((s): s is number => s !== undefined);
  const spread =
    spreads.length > 0
      ? Math.max(...spreads)
      : assume.or(
          undefined as number | undefined,
          'heads.csv spread',
          0.15,
          'm',
          'no spread given: a level told rather than recorded',
        );
  return {
    low: lowMonths ?? highMonths!.map((d) => d + places.highRim),
    high: highMonths,
    spread,
    fixed: rows.some((r) => /reading error/i.test(r.source ?? '')),
    aboveGround: [...(low ?? []), ...(uphill ?? [])].some(({ depth }) => depth < 0),
    usual: [],
    source: [low, uphill].some((told) => told && winterUntold(told, wetMonths)) ? 'spill level' : 'heads',
  };
}

/** Rows of one place as depths of the twelve months. */
function months(
  rows: { month: number | 'high'; depth: number }[],
  wetMonths: readonly number[],
  colour: ColourEvidence | undefined,
  assume: Assumptions,
): number[] {
  const told: (number | undefined)[] = Array.from(
    { length: 12 },
    (_, m) => rows.find((r) => r.month === m + 1)?.depth,
  );
  const high = rows.find((r) => r.month === 'high')?.depth;
  if (told.every((d) => d === undefined)) {
    assume.add('heads.csv months', high!, 'm', 'only the yearly high is known: it is taken for every month');
    return Array(12).fill(high);
  }
  const isWet = (m: number) => wetMonths.includes(m + 1);
  const inWet = told.filter((d, m): d is number => d !== undefined && isWet(m));
  const wettest = Math.min(
    ...inWet,
    high ?? (inWet.length > 0 ? Number.POSITIVE_INFINITY : winterUnread(told, colour)),
  );
  const filled = interpolate(wetFilled(told, wetMonths, wettest));
  if (told.some((d) => d === undefined))
    assume.add(
      'heads.csv months',
      'filled',
      '',
      `months without a level: wet ones are taken as high as ${
        high !== undefined
          ? 'the yearly high'
          : inWet.length > 0
            ? 'the highest told of a wet month'
            : 'the ground, or the colours in it, for nothing is told of a wet month'
      }, one alone between two that are told and the others between their neighbours`,
    );
  if (high !== undefined && high < Math.min(...filled)) {
    const wet = filled.map((d, m) => (isWet(m) ? d : Number.POSITIVE_INFINITY));
    filled[wet.indexOf(Math.min(...wet))] = high;
  }
  return filled;
}

/** Nothing is told of a wet month: whether rows leave the winter unknown. */
const winterUntold = (rows: { month: number | 'high' }[], wetMonths: readonly number[]) =>
  rows.every(({ month }) => month !== 'high' && !wetMonths.includes(month));

/** Depth of a winter that nobody read: at the ground, or as the colours say, or as near as it was seen in summer. */
const winterUnread = (told: readonly (number | undefined)[], colour: ColourEvidence | undefined) =>
  Math.min(leastByColour(colour), ...told.filter((d): d is number => d !== undefined));

/** Colour alone never clears the ground deeper than 0.3 m. */
const leastByColour = (colour: ColourEvidence | undefined) =>
  colour === undefined ? 0 : Math.min(colour.depth, 0.3);

/**
 * From dips that cover the wet months: the highest of each month, 'dry' as the hole's floor.
 * @param wetMonths - 1–12
 */
export function monthlyFromDips(
  dips: PitDip[],
  wetMonths: readonly number[],
  assume: Assumptions,
): MonthlyWater {
  const known: (number | undefined)[] = Array(12).fill(undefined);
  for (const dip of dips) {
    if (dip.says === 'above') continue;
    const m = calendarOf(dip.day).month - 1;
    known[m] = Math.min(known[m] ?? Number.POSITIVE_INFINITY, dip.depth);
  }
  const wettest = Math.min(
    ...known.filter((d, m): d is number => d !== undefined && wetMonths.includes(m + 1)),
  );
  const told = dips.flatMap(({ day, says }) => (says === 'above' ? [] : [day]));
  const seasons = wetSeasons(told, wetMonths);
  const spread = otherYearSpread(seasons);
  assume.add(
    'year-to-year spread',
    spread,
    'm',
    `as far as other years stand from those looked in, in six open wells: ${seasons === 1 ? 'one wet season' : `${seasons} wet seasons`} of dips without weather`,
  );
  return {
    low: interpolate(wetFilled(known, wetMonths, wettest)),
    spread,
    fixed: false,
    aboveGround: seenAboveGround(dips),
    usual: [],
    source: 'dips',
  };
}

/** A look in a month of one year is so much off that month in others, m. */
const ONE_YEAR = otherYearSpread(1);

const seenAboveGround = (dips: PitDip[]) =>
  dips.some(({ depth, says, aboveGround = depth < 0 }) => says !== 'below' && aboveGround);

/**
 * The winter unknown: water at the spill level all through the wet months, or as near as it was seen; in the others as
 * looks there tell, else a little lower.
 * @param dips - too few to tell the wet months
 */
export function monthlyAtSpill(
  spillDepth: number,
  wetMonths: readonly number[],
  colour: ColourEvidence | undefined,
  assume: Assumptions,
  dips: PitDip[] = [],
): MonthlyWater {
  const expected = Math.max(spillDepth, leastByColour(colour));
  const [highest] = dips.filter(({ says }) => says !== 'below').sort((a, b) => a.depth - b.depth);
  const winter = Math.min(expected, highest?.depth ?? expected);
  const lacking =
    dips.length > 0 ? fewLooks(dips, highest, wetMonths) : 'no levels, no wet-season dips and no weather';
  assume.add(
    'winter water',
    winter,
    'm below ground',
    winter < expected
      ? `${lacking}: taken in all wet months as near as it was seen`
      : colour === undefined
        ? `${lacking}: taken at the spill level in the wet months`
        : `${lacking}: ${colour.rule} say the winter water comes at least this near; ${colour.bias}`,
  );
  return {
    ...restOfYear(winter, wetMonths, dips, assume),
    spread: 0.12,
    fixed: true,
    aboveGround: seenAboveGround(dips),
    source: 'spill level',
  };
}

function fewLooks(dips: PitDip[], highest: PitDip | undefined, wetMonths: readonly number[]): string {
  const seen = highest
    ? `the highest ${Number(highest.depth.toFixed(2))} m below ground on ${isoDate(highest.day)}`
    : `dry to ${Number(Math.max(...dips.map(({ depth }) => depth)).toFixed(2))} m`;
  const covered = wetMonthsCovered(dips, wetMonths);
  return `no levels, no weather, and of ${dips.length} ${dips.length === 1 ? 'look' : 'looks'} (${seen}) ${covered} of the wet months told, where ${WET_MONTHS_NEEDED} are needed`;
}

/** The months that are not wet: what was seen in them less a year's difference, straight between; else 0.3 m lower. */
function restOfYear(
  winter: number,
  wetMonths: readonly number[],
  dips: PitDip[],
  assume: Assumptions,
): Pick<MonthlyWater, 'low' | 'usual'> {
  const known = Array.from({ length: 12 }, (_, m): number | undefined =>
    wetMonths.includes(m + 1) ? winter : undefined,
  );
  const drier = dips.filter(({ day }) => !wetMonths.includes(calendarOf(day).month));
  const looks = drier.filter(({ says }) => says !== 'above');
  for (const { day } of looks) {
    const { month } = calendarOf(day);
    const seen = drier.flatMap((dip) => (calendarOf(dip.day).month === month ? [dip.depth] : []));
    known[month - 1] = Math.max(Math.min(...seen) - ONE_YEAR, winter);
  }
  if (looks.length === 0) {
    const usual = known.flatMap((depth, m) => (depth === undefined ? [m + 1] : []));
    return { low: known.map((depth) => depth ?? winter + 0.3), usual };
  }
  assume.add(
    'summer water',
    Math.max(...known.map((depth) => depth ?? winter)),
    'm below ground',
    `by ${looks.length} ${looks.length === 1 ? 'look' : 'looks'} in the drier months, taken ${ONE_YEAR} m nearer than seen: another year is wetter (six open wells); straight between`,
  );
  return { low: interpolate(known), usual: [] };
}
