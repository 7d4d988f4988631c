/** The year month by month, as data of the figure: water, looks, and what may be done. */
import type { Holding, Report, Situation } from '../contract/index.js';
import { holdingOf, hoursEmpty, isDoneOtherwise } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import { doneWords } from './doneWords.js';
import { timeWords } from './situationWords.js';

/** What may be done in a month. */
export interface MonthCell {
  verdict: Holding;
  /** a word or two in its cell */
  word: string;
  /** the floor of the hole, where that is what is told */
  floor?: true;
  row: Situation | null;
}

/** A row of cells, January first. */
export interface MonthStrip {
  kind: 'dig' | 'nothing' | 'done';
  title: string;
  /** over a narrow column */
  head: [string, string];
  cells: MonthCell[];
}

/**
 * What may be done in which month: dig, where something is to be dug; empty it with nothing done; and with what is
 * recommended, where that is something else.
 * @param report what was computed
 * @param units system of the numbers in the titles
 * @returns a strip each
 */
export function monthStrips(report: Report, units: UnitSystem): MonthStrip[] {
  const { result } = report;
  const { recommendation } = result;
  const rows = (of: Situation['of'], situation: Situation['situation']) =>
    result.situations.filter((each) => each.of === of && each.situation === situation);
  const otherwise = isDoneOtherwise(recommendation, report.pond.depth_m);
  const dig = digStrip(report, rows);
  const nothing = emptyCells(rows('no-drain', 'emptied'), report);
  const done = otherwise ? emptyCells(rows('recommended', 'emptied'), report) : [];
  const plain = otherwise || recommendation.option !== 'no-drain';
  return [
    ...(dig ? [dig] : []),
    ...(nothing.length > 0
      ? [
          {
            kind: 'nothing' as const,
            title: plain ? 'Empty it, nothing done' : 'Empty it',
            head: ['Empty', plain ? 'as is' : ''] as [string, string],
            cells: nothing,
          },
        ]
      : []),
    ...(done.length > 0
      ? [
          {
            kind: 'done' as const,
            title: `Empty it, ${doneWords(report, units)}`,
            head: ['Empty', result.drain ? 'drain' : 'advised'] as [string, string],
            cells: done,
          },
        ]
      : []),
  ];
}

function emptyCells(rows: Situation[], report: Report): MonthCell[] {
  return rows.map((row) => {
    const hours = hoursEmpty(row, report);
    const verdict = holdingOf(row);
    const word =
      verdict === 'fails'
        ? 'no'
        : verdict === 'holds'
          ? 'yes'
          : hours === null
            ? 'briefly'
            : timeWords(hours);
    return { verdict, word, row };
  });
}

/** Chance at which a floor counts as dry. */
const DRY = 0.8;

/** The hole: whether it may be dug, and whether its floor stays dry. */
function digStrip(
  report: Report,
  rows: (of: Situation['of'], situation: Situation['situation']) => Situation[],
): MonthStrip | null {
  const { result, digging } = report;
  const { option } = result.recommendation;
  const advised = rows('recommended', 'dig');
  const digs = advised.length > 0 ? advised : rows('no-drain', 'dig');
  if (digs.length === 0) return null;
  const seams = rows(digs[0]!.of, 'seam');
  const later = option === 'measure-first';
  const never = option === 'move' || option === 'do-not-dig';
  // A dig planned for its months is judged in them only; of the others the floor alone is told.
  const planned = digs.some(({ month }) => month === null);
  const cells = Array.from({ length: 12 }, (_, at): MonthCell => {
    const row =
      digs.find(({ month }) => month === at + 1) ?? digs.find(({ month }) => month === null) ?? null;
    if (later) return { verdict: 'fails', word: 'not yet', row };
    const seam = seams.find(({ month }) => month === (row?.month ?? null));
    if (seam && !seam.allowed) return { verdict: 'fails', word: 'no', row: seam };
    if (never || !row?.allowed) return { verdict: 'fails', word: 'no', row };
    const dry = dryChance(digging, -row.level_m, at);
    if (dry === null) return { verdict: planned ? 'briefly' : 'holds', word: planned ? '?' : 'yes', row };
    return dry >= DRY
      ? { verdict: 'holds', word: planned ? 'dry' : 'yes', row, floor: true }
      : { verdict: 'briefly', word: 'wet', row, floor: true };
  });
  const barred = cells.every(({ verdict }) => verdict === 'fails');
  return {
    kind: 'dig',
    title: planned && !barred ? 'Dig it: the floor of the hole' : 'Dig it',
    head: ['Dig', ''],
    cells,
  };
}

/** Chance of a dry floor all month, at the next depth that is not less. */
function dryChance(digging: Report['digging'], depth: number, month: number): number | null {
  if (!digging) return null;
  const at = digging.depths.findIndex((each) => each >= depth - 1e-6);
  return digging.dry[at < 0 ? digging.depths.length - 1 : at]?.[month] ?? null;
}
