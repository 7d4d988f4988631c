/** What levels of heads.csv belong beside: holes, looks, the soil's colour, the way a clay moves in a year. */

import { calendarOf } from '../climate/index.js';
import { atMost, between, bottomsOf, type Comparison, type Pair, pair } from './comparison.js';
import { groupBy } from './rows.js';
import { isLateWinter } from './seasons.js';
import type { HeadRow, LayerRow, Look, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** The grey of a soil lies at most this far above the water that made it, m; our choice. */
const COLOUR_SLACK = 0.5;
/** The water of a clay moves more than this through a year, m; 15 mm of recharge lift it by as much. */
const YEARLY_RANGE = 0.3;
/** Months that must be known before their range says anything. */
const MONTHS_FOR_RANGE = 10;
/** Looks in late winter that must be there before the highest of them says anything of it. */
const LOOKS_FOR_HIGH = 2;

/** The comparisons of heads.csv; levels below a clay belong to a seam and are left out. */
export function headComparisons({ heads, looks, layers, site }: Survey): Comparison[] {
  const table = heads.filter((head) => !head.place.startsWith('below:'));
  const column = { file: 'heads.csv', column: 'depth' };
  const holes = looks.reduce((deepest, look) => Math.max(deepest, look.holeDepth ?? 0), 0);
  const reach = Math.max(holes, ...bottomsOf(layers).values());
  const grey = shallowest(
    layers.filter(({ mottles }) => mottles === 'many' || mottles === 'grey'),
    (layer) => layer.top,
  );
  const high = shallowest(table, (head) => head.depth);
  return [
    {
      ...column,
      ...atMost(1.1),
      pairs: table.map((head) => pair(head.depth, reach, head)),
      say: (value, hole) => `water is known at ${value}, the deepest hole of the survey ends at ${hole}`,
    },
    {
      ...column,
      ...between(0.35, 1.7),
      pairs: besideLooks(table, looks, site.latitude),
      say: (value, seen) => `water is given at ${value} where it was seen at ${seen}`,
    },
    {
      ...column,
      ...atMost(1),
      pairs: grey && high ? [pair(high.depth, grey.top + COLOUR_SLACK, high)] : [],
      say: (value) =>
        `water never comes above ${value}, and the soil is grey or heavily mottled from ${Number(grey?.top.toPrecision(3))} m down`,
    },
    {
      ...column,
      ...between(1, Number.POSITIVE_INFINITY),
      pairs: isClay(layers) ? yearlyRanges(table) : [],
      say: (value, least) => `water in clay moves by ${value} through the year, ${least} is little`,
    },
  ];
}

/** Known levels beside the highest look of that month; the highest of a year beside that of late winter. */
function besideLooks(heads: HeadRow[], looks: Look[], latitude?: number): Pair[] {
  const seen = new Map<string, { highest: Look; count: number }>();
  for (const look of looks) {
    if (look.reading !== 'level' || look.depth === undefined || !isNamedHole(look.pit)) continue;
    const { month } = calendarOf(look.day);
    for (const place of [look.pit, 'site'])
      for (const time of isLateWinter(month, latitude) ? [month, 'high'] : [month]) {
        const key = `${place} ${time}`;
        const { highest = look, count = 0 } = seen.get(key) ?? {};
        seen.set(key, { highest: (highest.depth ?? 0) <= look.depth ? highest : look, count: count + 1 });
      }
  }
  return heads.flatMap((head) => {
    const looked = seen.get(`${head.place} ${head.month}`);
    return looked && (head.month !== 'high' || looked.count >= LOOKS_FOR_HIGH)
      ? [pair(head.depth, looked.highest.depth, head)]
      : [];
  });
}

function yearlyRanges(heads: HeadRow[]): Pair[] {
  const known = heads.filter(({ month }) => month !== 'high');
  return [...groupBy(known, ({ place }) => place).values()].flatMap((months) => {
    const depths = months.map((head) => head.depth);
    const [first] = months;
    return first && months.length >= MONTHS_FOR_RANGE
      ? [pair(Math.max(...depths) - Math.min(...depths), YEARLY_RANGE, first)]
      : [];
  });
}

/** Is the thickest part of what was logged a clay? */
function isClay(layers: readonly LayerRow[]): boolean {
  const thickness = (clay: boolean) =>
    layers
      .filter(({ texture = 'clay' }) => texture.includes('clay') === clay)
      .reduce((sum, { top, bottom }) => sum + bottom - top, 0);
  return thickness(true) > thickness(false);
}

function shallowest<T>(rows: readonly T[], depth: (row: T) => number): T | undefined {
  return rows.reduce<T | undefined>(
    (best, row) => (best && depth(best) <= depth(row) ? best : row),
    undefined,
  );
}
