/** The first screen in words: an order that can be followed, how far it holds, how sure it is, and what to do next. */

import {
  advisedOption,
  BEFORE_DIGGING,
  type DepthCurve,
  decidingRows,
  type Governs,
  monthsPlanned,
  type OptionName,
  possibleOption,
  type Report,
  type Situation,
  wallsUnjudged,
} from '../contract/index.js';
import { formatBound, formatGap, formatQuantity, type UnitSystem } from '../units/index.js';
import { changeWords } from './changeWords.js';
import { isTimed } from './emptiedWords.js';
import { engineerFirst } from './engineerFirst.js';
import { HAPPENS } from './happens.js';
import { inHandWords } from './inHandWords.js';
import { monthName } from './monthWords.js';
import { lookOrder, nextStep } from './nextStep.js';
import { isRebuilt, rebuildWhen } from './rebuildWords.js';
import { isRimTaken } from './rimTaken.js';
import { oftenText, orderText } from './say.js';
import { sentence } from './sentence.js';
import { useOrder } from './useOrder.js';
import { insteadWords } from './verdictWords.js';
import { withoutPump } from './withoutPump.js';

/** The first screen. */
export interface Headline {
  /** the answer as an order */
  answer: string;
  /** how far it holds, and what happens beyond */
  margin: string;
  /** what would do without what is built; empty where nothing would */
  otherwise: string;
  /** how often it fails */
  chance: string;
  /** what the water may still rise */
  inHand: string;
  /** what to find out next */
  next: string;
}

/** What is built, after `Yes, 1.00 m deep`. */
const BUILT: Record<OptionName, string> = {
  'no-drain': ' without a drain',
  'surface-water-only': ', with rain water kept away from its edge',
  'cutoff-drain': ', with a drain uphill of it',
  'drain-to-outlet': ', with a drain to the outlet',
  'drain-to-sump': ', with a drain and a pump',
  'raise-pond': '',
  ballast: ', with a concrete slab on the liner',
};

/**
 * The headline of a report.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns sentences without markup; names from the survey stand in them as written
 */
export function headlineOf(report: Report, units: UnitSystem = report.units): Headline {
  return {
    answer: answerWords(report, units),
    margin: marginWords(report, units),
    otherwise: report.result.instead
      ? insteadWords(report.result.instead, report, units)
      : withoutPump(report.result, units),
    chance: chanceWords(report),
    inHand: inHandWords(report, units),
    next: nextStep(report),
  };
}

function answerWords(report: Report, units: UnitSystem): string {
  const { recommendation, spots } = report.result;
  const { option, depth_m, raise_m, as_built, change } = recommendation;
  const size = (value: number) => formatQuantity(value, 'length', units);
  const [next] = recommendation.measure_next;
  switch (option) {
    case 'do-not-dig':
      return report.pond.existing
        ? 'No: change nothing here before the regulator agrees.'
        : 'No: do not dig here.';
    case 'move': {
      if (report.pond.existing)
        return 'It does not hold, and nothing that was tried would make it hold: ask a licensed engineer.';
      const better = spots.find(({ planned, option }) => !planned && !BEFORE_DIGGING.includes(option));
      return better
        ? `Not here: dig at the spot ${better.spot}.`
        : 'Not at this spot: no depth worth digging is safe here.';
    }
    case 'measure-first':
      return next
        ? `Not yet: ${lookOrder(next)}, then ask again.`
        : 'Not yet: first find out what is asked below.';
    case 'relieve-and-keep-full':
      return 'Let the water out from under the liner slowly, and keep the pond full.';
  }
  if (as_built) return 'Keep the old drain: it works.';
  const built = advisedOption(report.result)?.option ?? 'no-drain';
  // Of the months the rules know more than the one that was tried.
  const { emptied_in, ...others } = change ?? {};
  // The time that the rules give is never longer, and is told with the months.
  const timed = isTimed(recommendation);
  const told = changeWords(timed ? { ...others, days_empty: undefined } : others, size);
  const changed = told.length > 0 ? `, if it is ${told.join(' and ')}` : '';
  const raised = raise_m > 0 ? `, with rim and floor raised ${size(raise_m)}` : '';
  const dry =
    built !== 'surface-water-only' && recommendation.also.includes('surface-water-only')
      ? BUILT['surface-water-only']
      : '';
  const vent = recommendation.also.includes('vent') || option === 'vent' ? ', with a gas vent' : '';
  const walls = wallsUnjudged(recommendation) ? ', behind walls that an engineer designs' : '';
  const emptied = useOrder(report, size);
  const engineer = engineerFirst(recommendation);
  const level = (answer: string) => {
    const whole = engineer && !report.pond.existing ? `${answer} ${sentence(engineer)}.` : answer;
    return isRimTaken(report.result)
      ? `If the ground there is level: ${whole.charAt(0).toLowerCase()}${whole.slice(1)}`
      : whole;
  };
  if (report.pond.existing)
    return level(
      built === 'no-drain' && raise_m === 0 && !isRebuilt(recommendation)
        ? `Leave it as it is${vent && ', but with a gas vent'}${changed}${emptied}.`
        : `Rebuild it${depth_m < report.pond.depth_m - NEAR ? ` only ${size(depth_m)} deep` : ''}${BUILT[built]}${raised}${dry}${vent}${changed}${emptied}.${rebuildWhen(recommendation)}`,
    );
  const yes = option === 'shallower' ? `Yes, but only ${size(depth_m)} deep` : `Yes, ${size(depth_m)} deep`;
  return level(`${yes}${BUILT[built]}${walls}${raised}${dry}${vent}${changed}${emptied}.`);
}

const WALLED = 'Dig to that depth and stop: the walls are to be designed for it.';

/** Down to where it holds, and what happens deeper. */
function marginWords(report: Report, units: UnitSystem): string {
  const { result, advised: curve, pond } = report;
  const { option, depth_m, governs, reason } = result.recommendation;
  if (BEFORE_DIGGING.includes(option)) {
    const bare = option !== 'do-not-dig' && possibleOption(result, 'no-drain');
    return bare && governs !== 'evidence' && governs !== 'none'
      ? `${pond.existing ? 'As it is' : 'Dug as wished with nothing done'}, ${HAPPENS[governs]}.`
      : firstSentence(reason);
  }
  const { change } = result.recommendation;
  if (change?.side_slope !== undefined || change?.built_in) return firstSentence(reason);
  if (change) {
    const bare = possibleOption(result, 'no-drain');
    return bare
      ? `Used as wished, ${HAPPENS[bare.governs]}, ${oftenText(bare.risk_at_wish.per_year)}.`
      : firstSentence(reason);
  }
  if (pond.existing) return firstSentence(reason);
  const here = asWished(curve, report);
  // Safe by its rules of use only: what it may not be used for comes before what is deeper.
  if (!here.safe) {
    const often = LIFTS.test(here.governs) ? `, ${oftenText(here.perYear)}` : '';
    const any = pond.emptied_in === 'any';
    return `Emptied ${any ? 'in the worst month' : 'as wished'}, ${HAPPENS[here.governs]}${often}. ${deepestAsWished(curve, units, any)}`;
  }
  const edge = edgeOf(curve, depth_m);
  if (!edge && option === 'shallower') return firstSentence(reason);
  const walled = wallsUnjudged(result.recommendation);
  const deepest = curve.depth_m.at(-1)!;
  if (!edge)
    return walled
      ? WALLED
      : deepest - depth_m < 0.005
        ? 'Dig to that depth and stop: deeper was not reckoned.'
        : `It stays safe down to ${formatBound(deepest, 'length', units, 'down')} at least; deeper was not reckoned.`;
  const often = edge.chance >= 0.001 ? `, ${oftenText(edge.chance)}` : '';
  return edge.safe - depth_m < 0.005
    ? `Stop there: ${formatGap(edge.fails - depth_m, units, 'up')} deeper ${HAPPENS[edge.governs]}${often}.`
    : `${walled ? WALLED : `Dig to that depth and stop. There is room for ${formatGap(edge.safe - depth_m, units, 'down')} of error:`} ${walled ? 'Deeper' : 'deeper'} than ${formatBound(edge.safe, 'length', units, 'down')} ${HAPPENS[edge.governs]}${often}.`;
}

/** What is recommended, at its depth but used as wished. */
function asWished({ depth_m, safe, governs, per_year }: DepthCurve, { result }: Report) {
  const at = depth_m.findIndex((depth) => Math.abs(depth - result.recommendation.depth_m) < NEAR);
  return { safe: safe[at]!, governs: governs[at]!, perYear: per_year[at]! };
}

/** How deep it may be dug where it is emptied as wished. */
function deepestAsWished({ depth_m, safe }: DepthCurve, units: UnitSystem, any: boolean): string {
  const deepest = depth_m[safe.indexOf(false) - 1];
  const use = any ? 'To be emptied in any month' : 'For that';
  return deepest === undefined
    ? `${use} no depth is safe.`
    : `${use} it may be only ${formatBound(deepest, 'length', units, 'down')} deep.`;
}

/** Lengths of a result have six figures, m. */
const NEAR = 1e-5;

interface Edge {
  /** last safe depth and first that fails, m */
  safe: number;
  fails: number;
  governs: Governs;
  /** of failing there in a year; 0 where the dig or a condition fails */
  chance: number;
}

const LIFTS = /^lift-/;

/** The first depth below one that is not safe; undefined where all that were reckoned are. */
function edgeOf({ depth_m, safe, governs, per_year, per_dig }: DepthCurve, from: number): Edge | undefined {
  const at = depth_m.findIndex((depth, i) => depth > from + NEAR && !safe[i]);
  if (at < 0) return undefined;
  return {
    safe: Math.max(depth_m[at - 1] ?? from, from),
    fails: depth_m[at]!,
    governs: governs[at]!,
    // A chance a year is of the liner, never of a dig or of what a drain lacks.
    chance: LIFTS.test(governs[at]!) && per_year[at]! > per_dig[at]! ? per_year[at]! : 0,
  };
}

function chanceWords(report: Report): string {
  const rows = decidingRows(report);
  if (!rows.some(({ of }) => of === 'recommended')) {
    // Emptied in the months wished, and in no other.
    const bare = possibleOption(report.result, 'no-drain');
    return bare
      ? `As wished, with nothing done, it fails ${oftenText(bare.risk_at_wish.per_year)}.`
      : 'No chance can be given yet.';
  }
  const counted = rows.filter(
    ({ situation, allowed }) =>
      situation === 'drawn-down' || situation === 'power-out' || (situation === 'emptied' && allowed),
  );
  const planned = monthsPlanned(report);
  const asPlanned = ({ month }: Situation) => month === null || planned.includes(month);
  const [wished, any] = [worstOf(counted.filter(asPlanned)), worstOf(counted)];
  const worst = wished?.chance;
  if (!worst) return 'No chance can be given yet.';
  const often = oftenText(worst.middle);
  // It may be emptied in more months than it is to be: that is another use than the one wished.
  const other =
    any && oftenText(any.chance!.middle) !== often
      ? ` Emptied in ${monthName(any.month!)}, which is allowed, it would fail ${oftenText(any.chance!.middle)}.`
      : '';
  // Where the bad end reads like the middle nothing is told by it.
  const between =
    worst.middle >= 0.001 && oftenText(worst.high) !== often
      ? ` (from ${bare(worst.low)} to ${bare(worst.high)}, as far as is known)`
      : '';
  const by =
    worst.middle < 0.001
      ? ''
      : worst.from === 'upkeep'
        ? ` How well you look after drain and ${report.result.recommendation.also.includes('drain-to-sump') || advisedOption(report.result)?.option === 'drain-to-sump' ? 'pumps' : 'flap'} makes most of that.`
        : '';
  const dig = rows
    .filter(({ situation, allowed }) => situation === 'dig' && allowed)
    .map(({ chance }) => chance!.middle)
    .reduce((a, b) => Math.min(a, b), 1);
  const digging =
    rows.some(({ situation }) => situation === 'dig') && dig >= 0.005 && dig < 1
      ? ` The dig itself goes wrong ${orderText(dig).replace('year', 'time')}.`
      : '';
  return `It fails ${often}${between}.${by}${other}${digging}`;
}

/** The row that fails most often, of those with a chance. */
function worstOf(rows: Situation[]): Situation | undefined {
  return rows
    .filter(({ chance }) => chance !== null)
    .reduce<Situation | undefined>((a, b) => (a && a.chance!.middle >= b.chance!.middle ? a : b), undefined);
}

const bare = (chance: number) =>
  oftenText(chance)
    .replace(/^about /, '')
    .replace('less often', 'less');

function firstSentence(words: string): string {
  return /^.*?[.!?](?=\s|$)/s.exec(words.trim())?.[0] ?? words;
}
