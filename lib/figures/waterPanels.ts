/** Which water wins: what each panel of the figure is about, as data. */

import {
  emptiedRows,
  type Holding,
  holdingOf,
  hoursEmpty,
  isDoneOtherwise,
  type Report,
  type Situation,
} from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import { doneWords } from '../text/doneWords.js';
import { emptyOrder, failsEmpty, notThen } from '../text/emptyOrder.js';
import { monthName } from '../text/monthWords.js';
import { sentence } from '../text/sentence.js';
import { brieflyWords, decidingWater, fillAgain, spareWords } from '../text/situationWords.js';
import { WHY_WORDS } from '../text/terms.js';
import type { UnitSystem } from '../units/index.js';

/** One pond in one situation, against the water that decides there. */
export interface WaterPanel {
  title: string;
  row: Situation;
  verdict: Holding;
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
  const told = emptiedRows(report);
  if (!kept || !told) return [];
  const { never, bare: emptied } = told;
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
    if (!emptied.allowed)
      panels[1]!.note = noted([panels[1]!.note, emptyOrder(rows('no-drain', 'emptied'), recommendation)]);
    return panels;
  }
  const advised = keptRow(rows('recommended', 'full'), rows('recommended', 'drawn-down'));
  if (!advised || !told.done) return panels;
  const { rows: mine, worst, shown } = told.done;
  const by = doneWords(report, units);
  if (shown) {
    const title = `${when(shown)}, ${by}`;
    const note = worst.allowed ? null : notThen(worst, mine, recommendation);
    return [...panels, panelOf(report, units, { ...done, row: shown, pond_m: null, title, note })];
  }
  const note = failsEmpty(worst, mine, recommendation);
  return [...panels, panelOf(report, units, { ...advised, ...done, title: `${advised.title}, ${by}`, note })];
}

/** Full, or, where only that fails, as low as it usually falls. */
function keptRow([full]: Situation[], lower: Situation[]) {
  const low = lower.find(({ month }) => month === null);
  if (!full) return undefined;
  const usual = low !== undefined && full.allowed && !low.allowed;
  const row = usual ? low : full;
  return { row, pond_m: row.level_m, title: usual ? 'At its usual low level' : 'Full', note: null };
}

const noted = (notes: (string | null)[]) => notes.filter((each) => each !== null).join(' ') || null;

function panelOf(
  report: Report,
  units: UnitSystem,
  about: Pick<WaterPanel, 'title' | 'row' | 'depth_m' | 'raise_m' | 'pond_m' | 'drained' | 'note'>,
): WaterPanel {
  const { why } = about.row;
  const verdict = holdingOf(about.row);
  const hours = hoursEmpty(about.row, report);
  const row = why === 'floor-heaves' ? fromBelow(report, about.row) : about.row;
  return {
    ...about,
    row,
    note: about.note ?? (verdict === 'briefly' && hours !== null ? fillAgain(hours) : null),
    verdict,
    word: verdict === 'briefly' ? brieflyWords(hours) : sentence(WHY_WORDS[why]),
    margin: spareWords(row.margin_m ?? 0, units),
    water: row.water ? decidingWater(row.water.which) : '',
    band: bandOf(report, row),
  };
}

const UNDER: Partial<Record<Situation['situation'], Situation['situation']>> = {
  full: 'seam-full',
  'drawn-down': 'seam-drawn-down',
  emptied: 'seam-emptied',
};

/** The same pond over the water below the clay, which breaks its floor up. */
function fromBelow({ result }: Report, row: Situation): Situation {
  const below = UNDER[row.situation];
  return (
    result.situations.find(
      ({ of, situation, month }) => of === row.of && situation === below && month === row.month,
    ) ?? row
  );
}

/** The month's highest water at the place that decides; with a drain what stands there without it. */
function bandOf({ result, pond }: Report, { water, month }: Situation): WaterPanel['band'] {
  if (!water || water.which === 'seam') return null;
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
