/** What `result.json` says, row by row: every other output is held against it, and all against one another. */
import { YEAR } from './amounts.js';
import { claimer } from './claim.js';
import type { Outputs } from './outputs.js';

// biome-ignore lint/suspicious/noExplicitAny: read as whoever has the file alone reads it
type Json = Record<string, any>;

/** What is needed to know of whom a text speaks. */
export interface Told {
  /** whose rows decide: what is recommended, or the wish with nothing done */
  of: string;
  /** the option that is recommended, by name; of several at once `together`; absent: none is built or the advice is no option */
  option?: string;
  /** of several the one that names it */
  built?: string;
  /** the recommendation is the wish as it stands, with nothing done */
  asWished: boolean;
  /** the recommended option, at the depth wished, used as wished */
  atWish: boolean;
  full: number;
  raise: number;
  depth: number;
  wish: number;
  existing: boolean;
  /** by wish */
  neverEmptied: boolean;
  dug: boolean;
}

export const OPTIONS: Record<string, string> = {
  'no drain': 'no-drain',
  'surface water kept out': 'surface-water-only',
  'cut-off drain uphill': 'cutoff-drain',
  'drain to an outlet': 'drain-to-outlet',
  'drain to a pumped sump': 'drain-to-sump',
  'pond raised': 'raise-pond',
  'slab on the liner': 'ballast',
};

/** Several options at once: no single one tells of them. */
export const TOGETHER = 'together';

/** What stands before any digging, as it is told. */
export const GO: Record<string, string> = {
  'measure-first': 'wait',
  move: 'elsewhere',
  'do-not-dig': 'never',
};

export function toldOf({ result, pond }: Outputs): Told {
  const { recommendation: r, options, situations }: Json = JSON.parse(result);
  const names = Object.values(OPTIONS);
  const option = [r.option, ...r.also].find((each: string) => names.includes(each));
  const undone = r.depth_m === pond.depth && r.change === null;
  const asWished = r.option === 'no-drain' && r.also.length === 0 && undone;
  const advised = situations.some(({ of }: Json) => of === 'recommended');
  const built = option ?? (r.option === 'shallower' ? 'no-drain' : undefined);
  const several = [r.option, ...r.also].filter((each: string) => names.includes(each)).length > 1;
  const figures = options.find((each: Json) => each.option === built);
  const possible = figures?.possible === true;
  // Safe as it is wished to be used, and not only as it is then advised to be.
  const safe = several ? r.safe_depth_m : figures?.safe_depth_m;
  // Where no month was wished the rules may leave out some, and those that are left fail less often.
  const anyMonth = !pond.any || r.rules.every(({ code }: Json) => code !== 'empty-only-in');
  const atWish = undone && possible && anyMonth && (safe ?? figures.depth_searched_m) >= r.depth_m;
  return {
    of: advised && !asWished ? 'recommended' : 'no-drain',
    ...(possible && { option: several ? TOGETHER : built, built }),
    asWished,
    atWish,
    full: pond.full,
    raise: advised ? r.raise_m : 0,
    depth: r.depth_m,
    wish: pond.depth,
    existing: pond.existing,
    neverEmptied: pond.never,
    dug: GO[r.option] === undefined,
  };
}

/** A month that an empty pond outlasts is no limit to it, h. */
const MONTH_HOURS = 31 * 24;

export function resultClaims(outputs: Outputs, told: Told) {
  const said = claimer('result.json');
  const result: Json = JSON.parse(outputs.result);
  const at = (about: string, value: number) =>
    said.span(about, about, String(value), { low: value, high: value });
  const says = (about: string, ...words: string[]) => said.says(about, about, words.join(' or '), ...words);
  const { recommendation: r, water } = result;

  for (const row of result.situations) {
    // The wish as it stands has rows under both names; those recommended know what is planned.
    if (told.asWished && row.of === 'no-drain') continue;
    const of = told.asWished && row.of === 'recommended' ? 'no-drain' : row.of;
    const key = `${of}|${row.situation}|${row.month ?? 'year'}`;
    if (row.margin_m !== null) at(`margin|${key}`, row.margin_m);
    at(`level|${key}`, row.level_m);
    if (row.water) at(`outside|${key}`, row.water.level_m);
    says(`allowed|${key}`, row.allowed ? 'yes' : 'no');
    if (row.chance) at(`chance|${key}`, row.chance.middle);
    if (row.month === null) continue;
    if (row.situation === 'emptied') {
      const days = row.why === 'briefly' ? 24 * DAYS(result, outputs) : Number.POSITIVE_INFINITY;
      const hours = Math.min(row.hours ?? Number.POSITIVE_INFINITY, days);
      const brief = row.why === 'briefly';
      const limited = brief || hours < MONTH_HOURS;
      says(
        `empty|${of}|${row.month}`,
        row.allowed ? (brief ? 'briefly' : limited ? 'limited' : 'free') : 'no',
      );
      if (row.allowed && limited) at(`hours|${of}|${row.month}`, hours);
      lowest(`lowest|${of}|${row.month}`, row.lowest_level_m);
    }
    if (row.situation === 'drain-blocked') lowest(`lowest blocked|${of}|${row.month}`, row.lowest_level_m);
    if (row.situation === 'emptied') {
      // A level that no water reaches, of a pond that fails oftener than accepted as it is kept.
      const brim = told.full + (row.of === 'recommended' ? told.raise : 0);
      const kept = result.situations.find(
        (each: Json) => each.of === row.of && each.situation === 'drawn-down' && each.month === null,
      );
      const lifts = row.lowest_level_m !== null && row.lowest_level_m > brim && !kept.allowed;
      says(`even full|${of}|${row.month}`, lifts ? 'lifts' : 'holds');
    }
  }
  function lowest(about: string, level: number | null) {
    if (level === null) says(about, 'floor');
    else at(about, level);
  }

  for (const option of result.options) {
    const { option: name, possible } = option;
    says(`possible|${name}`, possible ? 'yes' : 'no');
    if (!possible) continue;
    const { safe_depth_m: safe, depth_searched_m: searched } = option;
    if (safe === null) said.span(`safe depth|${name}`, name, 'at least', { low: searched, high: searched });
    else at(`safe depth|${name}`, safe);
    at(`risk|${name}`, option.risk_at_wish.per_year);
    at(`to spare|${name}`, option.full.net_head_m.p10);
    at(`net middle|${name}`, option.full.net_head_m.p50);
    for (const month of YEAR) lowest(`lowest|${name}|${month}`, option.lowest_safe_level_m[month - 1]);
  }

  says('go', GO[r.option] ?? 'dig');
  if (told.dug) at('depth', r.depth_m);
  if (told.dug) at('dug', r.depth_m - r.raise_m);
  if (told.dug) at('raise', r.raise_m);
  if (told.dug) says('built', told.built ?? 'no-drain');
  if (told.dug) says('kept out', [r.option, ...r.also].includes('surface-water-only') ? 'yes' : 'no');
  if (told.dug && r.safe_depth_m !== null) at(`safe depth|${TOGETHER}`, r.safe_depth_m);
  says('vent', [r.option, ...r.also].includes('vent') ? 'yes' : 'no');
  says('to measure', r.measure_next.length > 0 ? 'yes' : 'no');
  if (r.measure_next[0]) at('chance to change', r.measure_next[0].chance_to_change);
  for (const rule of r.rules.filter(({ code }: Json) => code === 'keep-above-level')) {
    at('keep above', rule.level_m);
    const levels = rule.months.map(
      (month: number) =>
        result.situations.find(
          (row: Json) => row.month === month && row.situation === 'emptied' && row.of === decidingOf(result),
        )?.lowest_level_m,
    );
    const known = levels.filter((level: unknown): level is number => typeof level === 'number');
    if (known.length > 0) at('keep above', Math.min(Math.max(...known), told.full + told.raise));
  }

  for (const each of water.by_month) {
    for (const part of ['p10', 'p50', 'p90']) at(`clay|${part}|${each.month}`, -each.table_depth_m[part]);
    if (each.uphill_depth_m) at(`uphill|p50|${each.month}`, -each.uphill_depth_m.p50);
    if (each.uphill_depth_m) at(`uphill|p10|${each.month}`, -each.uphill_depth_m.p10);
    if (each.tub_level_m) at(`ring|p50|${each.month}`, each.tub_level_m.p50);
    if (each.tub_level_m) at(`ring|p90|${each.month}`, each.tub_level_m.p90);
    if (each.daily_depth_m) at(`day|p50|${each.month}`, -each.daily_depth_m.p50);
    at(`dry floor|${each.month}`, each.dry_floor_chance);
  }
  for (const month of YEAR) says(`danger|${month}`, water.pond.danger_months.includes(month) ? 'yes' : 'no');
  for (const rung of water.ladder) {
    const key = `${rung.highest_of}|${rung.exceeded}|${rung.month ?? 'year'}`;
    at(`rung|${key}|low`, rung.low_side_m);
    if (rung.uphill_wall_m !== null) at(`rung|${key}|uphill`, rung.uphill_wall_m);
    if (rung.ring_m !== null) at(`rung|${key}|ring`, rung.ring_m);
    if (rung.outside_m !== null) at(`rung|${key}|outside`, rung.outside_m);
  }
  return said.claims;
}

const decidingOf = ({ situations }: Json) =>
  situations.some(({ of }: Json) => of === 'recommended') ? 'recommended' : 'no-drain';

/** Days that it stands empty as planned or changed. */
const DAYS = ({ recommendation }: Json, { days }: Outputs): number =>
  recommendation.change?.days_empty ?? days;

/** A month a row of `water-year.csv`, and the pond's own equation in `worked.csv`. */
export function fileClaims(outputs: Outputs, told: Told) {
  const year = claimer('water-year.csv');
  const [header = [], ...rows] = csv(outputs.waterYear);
  for (const row of rows) {
    const month = /^--(\d\d)$/.exec(row[0]!)?.[1];
    if (!month) continue;
    for (const part of ['p10', 'p50', 'p90']) {
      const cell = row[header.indexOf(`table_depth_m_${part}`)]!;
      year.span(`clay|${part}|${Number(month)}`, `month ${month}`, cell, point(-Number(cell)));
    }
  }
  const worked = claimer('worked.csv');
  const [titles = [], ...steps] = csv(outputs.worked);
  const column = (row: string[], name: string) => row[titles.indexOf(name)] ?? '';
  // The middle year stands first in its part, one year of ten after it.
  const middles = new Set<string>();
  for (const row of steps.filter((each) => column(each, 'role') === 'result')) {
    const value = Number(column(row, 'value'));
    const part = column(row, 'part');
    if (!/^(With nothing done|With what is recommended)/.test(part)) continue;
    if (!/^Net head on the liner$/.test(column(row, 'title')) || middles.has(part)) continue;
    middles.add(part);
    const of = part.startsWith('With nothing') ? 'no-drain' : told.option;
    if (of && (of === 'no-drain' || told.atWish))
      worked.span(`net middle|${of}`, part, String(value), point(value));
  }
  return [...year.claims, ...worked.claims];
}

const point = (value: number) => ({ low: value, high: value });

/** Cells of a CSV whose quoted cells hold no line end. */
export function csv(text: string): string[][] {
  return text
    .trimEnd()
    .split('\r\n')
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
        (quoted ?? plain ?? '').replaceAll('""', '"'),
      ),
    );
}
