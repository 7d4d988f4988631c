/** Which water wins: what each panel of the figure is about, as data. */
import {
  advisedOption,
  BEFORE_DIGGING,
  type Recommendation,
  type Report,
  type Situation,
} from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import { emptiedWords } from '../text/index.js';
import { WITH_OPTION } from '../text/say.js';
import { formatGap, formatQuantity, type UnitSystem } from '../units/index.js';
import type { Verdict } from './drawing.js';
import { monthName, sentence, WATER_NAMES, WHY_WORDS } from './words.js';

/** One pond in one situation, against the water that decides there. */
export interface WaterPanel {
  title: string;
  row: Situation;
  verdict: Verdict;
  /** what happens */
  word: string;
  /** what is to spare, or what lacks */
  margin: string;
  /** the water that decides */
  water: string;
  note: string | null;
  /** liner's lowest point and rise of the rim, m; pond level, null: empty */
  depth_m: number;
  raise_m: number;
  pond_m: number | null;
  /** a drain lies under it */
  drained: boolean;
  /** highest water of the wettest month, or of that month, in eight years of ten, m above the datum; `kept`: a drain keeps it off */
  band: { low_m: number; high_m: number; month: number; uphill: boolean; kept: boolean } | null;
}

const YEAR = Array.from({ length: 12 }, (_, at) => at + 1);
const RANK: Record<Verdict, number> = { holds: 0, briefly: 1, fails: 2 };

/**
 * The panels: full, emptied with nothing done, and with what is recommended.
 * @param report what was computed
 * @param units system of the numbers
 * @returns two or three; none where no situation was computed
 */
export function waterPanels(report: Report, units: UnitSystem): WaterPanel[] {
  const { result, pond } = report;
  const { recommendation } = result;
  const rows = (of: Situation['of'], situation: Situation['situation']) =>
    result.situations.filter((each) => each.of === of && each.situation === situation);
  const kept = keptRow(rows('no-drain', 'full'), rows('no-drain', 'drawn-down'));
  const planned = monthsPlanned(report);
  const never = planned.length === 0;
  const emptied = worstOf(rows('no-drain', 'emptied'), never ? YEAR : planned);
  if (!kept || !emptied) return [];
  const wished = { depth_m: pond.depth_m, raise_m: 0, drained: false };
  const done = {
    depth_m: recommendation.depth_m,
    raise_m: recommendation.raise_m,
    drained: result.drain !== null,
  };
  const when = (row: Situation) => `${never ? 'If emptied' : 'Emptied'} in ${monthName(row.month!)}`;
  const panels = [
    panelOf(report, units, { ...kept, ...wished, title: `${kept.title}, nothing done` }),
    panelOf(report, units, {
      ...wished,
      row: emptied,
      pond_m: null,
      title: `${when(emptied)}, nothing done`,
      note: null,
    }),
  ];
  if (!isDoneOtherwise(recommendation, pond.depth_m)) {
    if (!emptied.allowed) panels[1]!.note = whenWords(rows('no-drain', 'emptied'), recommendation);
    return panels;
  }
  const advised = keptRow(rows('recommended', 'full'), rows('recommended', 'drawn-down'));
  const mine = rows('recommended', 'emptied');
  const same = mine.find(({ month }) => month === emptied.month);
  if (!advised || !same) return panels;
  const by = doneWords(report, units);
  const worst = worstOf(mine, never ? YEAR : planned) ?? same;
  const free = mine.filter(({ allowed }) => allowed);
  // As planned where that holds, else in the months that are left, else kept full.
  const shown = worst.allowed
    ? RANK[verdictOf(worst)] > RANK[verdictOf(same)]
      ? worst
      : same
    : never
      ? undefined
      : worstOf(free, YEAR);
  if (shown) {
    const title = `${when(shown)}, ${by}`;
    const note = worst.allowed
      ? null
      : `Not in ${monthName(worst.month!)}: ${WHY_WORDS[worst.why]} then. ${whenWords(mine, recommendation)}`;
    return [...panels, panelOf(report, units, { ...done, row: shown, pond_m: null, title, note })];
  }
  const note = `${whenWords(mine, recommendation)} In ${monthName(worst.month!)} ${WHY_WORDS[worst.why]} when empty.`;
  return [...panels, panelOf(report, units, { ...advised, ...done, title: `${advised.title}, ${by}`, note })];
}

/** Months in which it may be emptied. */
function whenWords(rows: Situation[], recommendation: Recommendation): string {
  const free = rows.filter(({ allowed }) => allowed).map(({ month }) => month!);
  const order = emptiedWords(recommendation, free);
  return order === 'never emptied' ? 'Never empty it.' : `Empty it ${order.replace(/^emptied /, '')}.`;
}

/** Full, or, where only that fails, as low as it usually falls. */
function keptRow([full]: Situation[], lower: Situation[]) {
  const low = lower.find(({ month }) => month === null);
  if (!full) return undefined;
  const usual = low !== undefined && full.allowed && !low.allowed;
  const row = usual ? low : full;
  return { row, pond_m: row.level_m, title: usual ? 'At its usual low level' : 'Full', note: null };
}

/** Months in which it is to be emptied; none: never. */
export function monthsPlanned({ result, pond }: Report): number[] {
  return result.recommendation.change?.emptied_in ?? (pond.emptied_in === 'any' ? YEAR : pond.emptied_in);
}

function worstOf(rows: Situation[], months: number[]): Situation | undefined {
  const worse = (a: Situation, b: Situation) =>
    RANK[verdictOf(b)] - RANK[verdictOf(a)] || (a.margin_m ?? 0) - (b.margin_m ?? 0);
  return rows.filter(({ month }) => month !== null && months.includes(month)).sort(worse)[0];
}

/** A month that an empty pond outlasts is no limit to it, h. */
const MONTH_HOURS = 31 * 24;

/** How a situation ends, as it is drawn. */
export function verdictOf({ allowed, why, hours }: Pick<Situation, 'allowed' | 'why' | 'hours'>): Verdict {
  if (!allowed) return 'fails';
  return why === 'briefly' || (hours !== null && hours < MONTH_HOURS) ? 'briefly' : 'holds';
}

/** How long it may stand empty, h; briefly: as planned, and no longer. */
export function hoursEmpty({ why, hours }: Situation, { pond }: Report): number | null {
  if (why !== 'briefly') return hours;
  return Math.min(hours ?? Number.POSITIVE_INFINITY, 24 * pond.days_empty);
}

/** Whole days, or hours below two days, never more than the time is. */
export function timeWords(hours: number): string {
  if (hours < 1) return 'less than 1 hour';
  const days = hours >= 48 || Math.abs(hours - 24) < 1e-6;
  const size = Math.floor((days ? hours / 24 : hours) + 1e-6);
  return `${size} ${days ? 'day' : 'hour'}${size === 1 ? '' : 's'}`;
}

/** How long only. */
export function brieflyWords(hours: number | null): string {
  return hours === null ? 'Only as long as planned' : `Only for ${timeWords(hours)}`;
}

function panelOf(
  report: Report,
  units: UnitSystem,
  about: Pick<WaterPanel, 'title' | 'row' | 'depth_m' | 'raise_m' | 'pond_m' | 'drained' | 'note'>,
): WaterPanel {
  const { row } = about;
  const verdict = verdictOf(row);
  const hours = hoursEmpty(row, report);
  return {
    ...about,
    note:
      about.note ??
      (verdict === 'briefly' && hours !== null ? `Fill it again within ${timeWords(hours)}.` : null),
    verdict,
    word: verdict === 'briefly' ? brieflyWords(hours) : sentence(WHY_WORDS[row.why]),
    margin: spareWords(row.margin_m ?? 0, units),
    water: row.water ? waterWords(row.water.which, report) : '',
    band: bandOf(report, row),
  };
}

/**
 * What is to spare or lacks, rounded so that it never looks safer.
 * @param margin - that the water may rise before something fails, m
 * @param units system of the number
 * @returns such as `17 cm to spare`
 */
export function spareWords(margin: number, units: UnitSystem): string {
  const size = formatGap(Math.abs(margin), units, margin < 0 ? 'up' : 'down');
  if (margin < -1e-4) return `${size} too high`;
  return /[1-9]/.test(size) && margin > 1e-4 ? `${size} to spare` : 'nothing to spare';
}

/** The water that decides, in words; without an uphill side the clay stands alike all round. */
export function waterWords(which: keyof typeof WATER_NAMES, { pond }: Report): string {
  const level = which === 'uphill wall' && pond.high_rim_m <= LEVEL_RIM;
  return `water ${WATER_NAMES[level ? 'low side' : which]}`;
}

/** The month's highest water at the place that decides; with a drain what stands there without it. */
function bandOf({ result, pond }: Report, { water, month }: Situation): WaterPanel['band'] {
  if (!water) return null;
  const kept = water.which === 'drain' || water.which === 'receiver';
  const uphill = pond.high_rim_m > LEVEL_RIM && (water.which === 'uphill wall' || kept);
  const months = result.water.by_month.flatMap((each) => {
    const ring = water.which === 'ring' && each.tub_level_m;
    const depth = (uphill && each.uphill_depth_m) || each.table_depth_m;
    const [low_m, high_m] = ring ? [ring.p10, ring.p90] : [-depth.p90, -depth.p10];
    return month === null || month === each.month ? [{ low_m, high_m, month: each.month, uphill, kept }] : [];
  });
  return months.sort((a, b) => b.high_m - a.high_m || b.low_m - a.low_m)[0] ?? null;
}

/** Whether the recommended pond is another than the one wished with nothing done. */
export function isDoneOtherwise({ option, also, depth_m, change }: Recommendation, wish: number): boolean {
  if (BEFORE_DIGGING.includes(option)) return false;
  return option !== 'no-drain' || also.length > 0 || depth_m !== wish || change !== null;
}

/** What is recommended, after `emptied in March,`. */
export function doneWords(report: Report, units: UnitSystem): string {
  const { recommendation } = report.result;
  const { option, also, depth_m, raise_m, as_built, change } = recommendation;
  const say = (metres: number) => formatQuantity(metres, 'length', units);
  const built = advisedOption(report.result)?.option;
  const parts = [
    as_built
      ? 'with the old drain kept'
      : built === 'raise-pond'
        ? `with the pond raised ${say(raise_m)}`
        : built && built !== 'no-drain' && lower(WITH_OPTION[built]),
    raise_m > 0 && built !== 'raise-pond' && `raised ${say(raise_m)}`,
    depth_m !== report.pond.depth_m && `dug ${say(depth_m)} deep`,
    [option, ...also].includes('vent') && 'with a gas vent',
    [option, ...also].includes('relieve-and-keep-full') && 'relieved slowly and kept full',
    change && 'used as advised',
  ];
  return parts.filter(Boolean).join(', ') || 'as recommended';
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
