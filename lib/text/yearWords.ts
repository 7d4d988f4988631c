import type { Report, Situation } from '../contract/index.js';
import { hoursEmpty, isDoneOtherwise, liftsEvenFull, monthWaters } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { doneWords } from './doneWords.js';
import { type MonthStrip, monthStrips } from './monthStrips.js';
import { monthName } from './monthWords.js';
import { sentence } from './sentence.js';
import { onlyWords, spareWords } from './situationWords.js';
import { WHY_WORDS } from './terms.js';

/** Nobody levels closer, m. */
const LEVEL = 0.01;

/**
 * A month in sentences: where the water stands, whether the pond holds, and what may be done.
 * @param report what was computed
 * @param units system of the numbers; the survey's own unless said
 * @returns January to December
 */
export function yearWords(report: Report, units: UnitSystem = report.units): string[] {
  const strips = monthStrips(report, units);
  const waters = monthWaters(report);
  const kept = (of: Situation['of'], month: number) =>
    report.result.situations.find(
      (each) => each.of === of && each.situation === 'drawn-down' && each.month === month,
    );
  const raised = report.pond.full_level_m + report.result.recommendation.raise_m;
  const lifting = (of: Situation['of'], full: number) =>
    liftsEvenFull(
      report.result.situations.filter((each) => each.of === of),
      full,
    );
  const lifts = { own: lifting('no-drain', report.pond.full_level_m), mine: lifting('recommended', raised) };
  const otherwise = isDoneOtherwise(report.result.recommendation, report.pond.depth_m);
  return Array.from({ length: 12 }, (_, at) => {
    const water = waters[at];
    const own = kept('no-drain', at + 1);
    const mine = otherwise ? kept('recommended', at + 1) : undefined;
    const parts = [
      ...(water
        ? [
            `the highest water stands ${placeWords(water.middle_m, units)} in the middle year, and between ${placeWords(water.low_m, units)} and ${placeWords(water.high_m, units)} in 8 years of 10${
              water.uphill_m === null ? '' : `; behind the uphill wall ${placeWords(water.uphill_m, units)}`
            }${water.ring_m === null ? '' : `; in the dug ring ${placeWords(water.ring_m, units)}`}`,
          ]
        : []),
      ...keptWords('with nothing done', own, lifts.own.includes(at + 1)),
      ...(otherwise ? keptWords(doneWords(report, units), mine, lifts.mine.includes(at + 1)) : []),
      ...strips.map((strip) => stripWords(strip, at, report, units)),
    ];
    return `${monthName(at + 1)}: ${parts.map((part, i) => (i === 0 ? part : sentence(part))).join('. ')}.`;
  });
}

function keptWords(by: string, kept: Situation | undefined, lifts: boolean): string[] {
  if (lifts) return [`${by}: not safe even when kept full`];
  return kept && !kept.allowed ? [`${by}: not safe at its usual low level`] : [];
}

function placeWords(level: number, units: UnitSystem): string {
  if (Math.abs(level) < LEVEL) return 'at the ground';
  return `${formatQuantity(Math.abs(level), 'length', units)} ${level > 0 ? 'above' : 'below'} the ground`;
}

function stripWords({ kind, cells }: MonthStrip, at: number, report: Report, units: UnitSystem): string {
  const { verdict, word, row, floor } = cells[at]!;
  const why = row && !row.allowed ? WHY_WORDS[row.why] : undefined;
  if (kind === 'dig') {
    if (word === 'not yet') return 'do not dig yet: measure first';
    if (verdict === 'fails') return `do not dig${why ? `: ${why}` : ''}`;
    if (!floor)
      return verdict === 'holds' ? 'it may be dug' : 'whether the floor of the hole is dry is not known';
    if (word === 'dry') return 'the floor of the hole stays dry';
    return verdict === 'holds'
      ? 'it may be dug, and the floor stays dry'
      : 'expect a wet floor in the hole, and have a pump';
  }
  const by = kind === 'done' ? doneWords(report, units) : 'with nothing done';
  if (verdict === 'fails') {
    const lifts = row?.why === 'lifts' && row.margin_m !== null && row.margin_m < 0;
    const size = lifts ? `, the water stands ${spareWords(row.margin_m!, units)}` : '';
    return `${by}: do not empty it${why ? ` (${why}${size})` : ''}`;
  }
  return `${by}: it may be emptied${verdict === 'briefly' ? `, ${onlyWords(row && hoursEmpty(row, report))}` : ''}`;
}
