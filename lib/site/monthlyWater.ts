import { calendarOf } from '../climate/index.js';
import type { ColourEvidence } from '../soil/index.js';
import type { Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import type { PitDip } from './dips.js';
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
  const lowMonths = low ? months(low, wetMonths, assume) : undefined;
  const highMonths = uphill ? months(uphill, wetMonths, assume).map((d) => d - places.highRim) : undefined;
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
    source: 'heads',
  };
}

function months(
  rows: { month: number | 'high'; depth: number }[],
  wetMonths: readonly number[],
  assume: Assumptions,
): number[] {
  const out: (number | undefined)[] = Array.from(
    { length: 12 },
    (_, m) => rows.find((r) => r.month === m + 1)?.depth,
  );
  const high = rows.find((r) => r.month === 'high')?.depth;
  if (out.every((d) => d === undefined)) {
    assume.add('heads.csv months', high!, 'm', 'only the yearly high is known: it is taken for every month');
    return Array(12).fill(high);
  }
  const filled = interpolate(out);
  if (out.some((d) => d === undefined))
    assume.add(
      'heads.csv months',
      'interpolated',
      '',
      'months without a level are taken between their neighbours',
    );
  if (high !== undefined && high < Math.min(...filled)) {
    const wet = filled.map((d, m) => (wetMonths.includes(m + 1) ? d : Number.POSITIVE_INFINITY));
    filled[wet.indexOf(Math.min(...wet))] = high;
  }
  return filled;
}

/** Straight between the months that are known, round the year. */
function interpolate(known: (number | undefined)[]): number[] {
  return known.map((d, m) => {
    if (d !== undefined) return d;
    let back = 1;
    while (known[(m - back + 12) % 12] === undefined) back++;
    let on = 1;
    while (known[(m + on) % 12] === undefined) on++;
    const a = known[(m - back + 12) % 12]!;
    const b = known[(m + on) % 12]!;
    return a + ((b - a) * back) / (back + on);
  });
}

/** From dips that cover the wet half-year: the highest of each month, 'dry' as the hole's floor. */
export function monthlyFromDips(dips: PitDip[], assume: Assumptions): MonthlyWater {
  const known: (number | undefined)[] = Array(12).fill(undefined);
  for (const dip of dips) {
    if (dip.says === 'above') continue;
    const m = calendarOf(dip.day).month - 1;
    known[m] = Math.min(known[m] ?? Number.POSITIVE_INFINITY, dip.depth);
  }
  const winters = new Set(dips.map((d) => Math.floor((d.day - 182) / 365.25))).size;
  const spread = winters >= 5 ? 0.1 : winters >= 2 ? 0.15 : 0.25;
  assume.add(
    'year-to-year spread',
    spread,
    'm',
    `our choice: ${winters === 1 ? 'one winter' : `${winters} winters`} of dips without weather`,
  );
  return { low: interpolate(known), spread, fixed: false, source: 'dips' };
}

/** Nothing known: water at the spill level all through the wet months, and unknown in the others. */
export function monthlyAtSpill(
  spillDepth: number,
  wetMonths: readonly number[],
  colour: ColourEvidence | undefined,
  assume: Assumptions,
  looks = 0,
): MonthlyWater {
  // Colour alone never clears the ground deeper than 0.3 m.
  const winter = Math.max(spillDepth, colour === undefined ? 0 : Math.min(colour.depth, 0.3));
  const lacking =
    looks > 0
      ? 'no levels, no weather, and no looks that tell the level in four of the wet months'
      : 'no levels, no wet-season dips and no weather';
  assume.add(
    'winter water',
    winter,
    'm below ground',
    colour === undefined
      ? `${lacking}: taken at the spill level in the wet months`
      : `${lacking}: ${colour.rule} say the winter water comes at least this near; ${colour.bias}`,
  );
  return {
    low: Array.from({ length: 12 }, (_, m) => (wetMonths.includes(m + 1) ? winter : winter + 0.3)),
    spread: 0.12,
    fixed: true,
    source: 'spill level',
  };
}
