/** The verdict in sentences, for the page, the notebook and the terminal. */

import { MONTHS } from '../climate/index.js';
import {
  advisedOption,
  advisedOptions,
  type DrainResult,
  type Instead,
  isDug,
  monthsFree,
  monthsToEmpty,
  type PossibleOption,
  possibleOption,
  type Report,
  type Result,
  type Rule,
  ruleOf,
  type Water,
} from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { brieflyUndrained } from './brieflyUndrained.js';
import { changeOrders, dugWords } from './changeWords.js';
import { dugAndRaised } from './dugAndRaised.js';
import { whenEmptied } from './emptiedWords.js';
import { keptLine, keptOtherwise } from './keptOtherwise.js';
import { monthName } from './monthWords.js';
import { chanceText, WITH_OPTION, withOptions } from './say.js';
import { listText, lowerFirst, sentence } from './sentence.js';
import { ADVICE_NAMES, adviceWords } from './terms.js';

/** The verdicts in sentences. */
export interface VerdictWords {
  /** what happens while the pond is kept full */
  full: string;
  /** what happens when it is emptied, and when it may be */
  emptied: string;
  /** where the water goes */
  water: string;
  /** what is not known, and what would tell */
  unknown: string;
  /** what to do, and why */
  recommendation: string;
}

/**
 * The verdict of a report in plain sentences.
 * @param report what was computed
 * @param units system of the numbers; the survey's own unless said
 * @returns five paragraphs without markup; names from the survey stand in them as written
 */
export function verdictWords(report: Report, units: UnitSystem = report.units): VerdictWords {
  const undrained = possibleOption(report.result, 'no-drain');
  const advised = advisedOption(report.result);
  const treated = advised?.option === 'no-drain' ? undefined : advised;
  const several = advisedOptions(report.result.recommendation);
  const built = several.length > 0 ? withOptions(several) : '';
  const kept = keptOtherwise(report.result);
  return {
    full: paragraph([
      undrained && `With no drain ${fullWords(undrained, report, units)}`,
      treated &&
        (kept ? `${built} it ${keptLine(kept, units)}.` : `${built} ${treatedWords(treated, report, units)}`),
    ]),
    emptied: emptiedParagraph(report, units),
    water: waterWords(report, units),
    unknown: unknownWords(report),
    recommendation: recommendationWords(report, units),
  };
}

/** The water that decides, in words; without an uphill side the clay stands alike all round. */
function whereWords(where: Water, { pond }: Report): string {
  const clay = pond.high_rim_m > LEVEL_RIM ? 'the clay at the low side' : 'the clay all round';
  return {
    'low side': clay,
    'uphill wall': 'the clay behind the uphill wall',
    ring: 'the dug ring',
    receiver: 'the water at the outlet',
    drain: 'what the drain leaves',
  }[where];
}

function fullWords({ full }: PossibleOption, report: Report, units: UnitSystem): string {
  const { accepted_risk } = report;
  const { p10 } = full.net_head_m;
  const where = whereWords(full.where, report);
  const size = formatBound(Math.abs(p10), 'length', units, 'down');
  const level = report.pond.kept.habit === 'held' ? "the pond's usual lowest level" : 'the pond of that day';
  if (full.safe)
    return p10 >= 0
      ? `the liner stays down: in nine years of ten ${level} keeps ${size} or more above the highest water outside (highest water: ${where}).`
      : `the liner stays down in all but ${chanceText(accepted_risk)} of years.`;
  return p10 < 0
    ? `the liner lifts: in one year of ten the water outside rises ${size} or more above ${level} (highest water: ${where}).`
    : `it holds in nine years of ten, by ${size} or more (highest water: ${where}), but fails oftener than the accepted ${chanceText(accepted_risk)} a year.`;
}

/** The same beside the undrained case, in fewer words. */
function treatedWords(option: PossibleOption, report: Report, units: UnitSystem): string {
  const { full } = option;
  const { p10 } = full.net_head_m;
  return full.safe && p10 >= 0
    ? `it stays down, with ${formatBound(p10, 'length', units, 'down')} or more to spare.`
    : fullWords(option, report, units);
}

/** As wished with nothing done, and as recommended: at that depth, with what is then built and done otherwise. */
function emptiedParagraph(report: Report, units: UnitSystem): string {
  const { result, pond, limits, emptying } = report;
  const { depth_m, raise_m, change } = result.recommendation;
  const undrained = possibleOption(result, 'no-drain');
  const advised = advisedOption(result);
  const asWished = depth_m === pond.depth_m && !change;
  const dug = (depth: number) => ` and dug ${formatQuantity(depth, 'length', units)} deep`;
  const when = `${depth_m === pond.depth_m ? '' : dug(depth_m)}${change ? ', as changed,' : ''}`;
  const brief = undrained && brieflyUndrained(report, undrained);
  const wished = undrained && {
    free: [...monthsFree(undrained.lowest_safe_level_m), ...(brief?.months ?? [])].sort((a, b) => a - b),
    rules: brief ? [ruleOf('empty-only-in/briefly', brief)] : [],
    levels: undrained.lowest_safe_level_m,
    hours: undrained.hours_empty_safe,
    raised: 0,
  };
  const then = {
    free: monthsToEmpty(result.recommendation),
    rules: result.recommendation.rules,
    levels: limits.lowestSafeLevel,
    hours: emptying.map(({ hours }) => hours),
    raised: raise_m,
    emptiedIn: change?.emptied_in,
  };
  return paragraph([
    wished &&
      !(advised?.option === 'no-drain' && asWished) &&
      `With no drain${asWished ? '' : dug(pond.depth_m)} ${emptiedWords(wished, report, units)}`,
    advised &&
      `${withOptions(advisedOptions(result.recommendation))}${when} ${emptiedWords(then, report, units)}`,
  ]);
}

/** A pond emptied, month by month. */
interface EmptiedYear {
  rules: readonly Rule[];
  /** months in which it may be, 1–12 */
  free: readonly number[];
  /** that it must not fall below, m; null where it may be emptied on any day */
  levels: (number | null)[];
  /** until something gives way */
  hours: (number | null)[];
  /** rim, m */
  raised: number;
  /** in other months than wished */
  emptiedIn?: readonly number[];
}

function emptiedWords(
  { free, rules, levels, hours, raised, emptiedIn }: EmptiedYear,
  { pond }: Report,
  units: UnitSystem,
): string {
  if (free.length === 12) return 'it may be emptied in any month.';
  const levelIn = (month: number) => levels[month - 1] ?? null;
  const bound = MONTHS.filter((month) => levelIn(month) !== null);
  const worst = bound.reduce((a, b) => (levelIn(b)! > levelIn(a)! ? b : a));
  const wished = emptiedIn ?? (pond.emptied_in === 'any' ? [] : pond.emptied_in);
  const planned = wished.filter((month) => levelIn(month) !== null);
  const until = planned.flatMap((month) => hours[month - 1] ?? []);
  const level = formatBound(levelIn(worst)!, 'level', units, 'up');
  const above = levelIn(worst)! > pond.full_level_m + raised ? ', higher than the pond itself' : '';
  return [
    free.length === 0
      ? 'it may be emptied in no month'
      : `it may be emptied only ${whenEmptied({ rules }, free)}`,
    `; in ${monthName(worst)} its level must not fall below ${level} (from the lowest ground at the rim${above}).`,
    until.length > 0
      ? ` Emptied in ${listText(planned.map(monthName))} as ${emptiedIn ? 'changed' : 'planned'}, liner or sides could give way ${timeWords(Math.min(...until), units)}.`
      : '',
  ].join('');
}

function timeWords(hours: number, units: UnitSystem): string {
  if (hours < 0.1) return 'at once';
  // Down, for somebody acts on it: one figure below ten hours, two above.
  const step = 10 ** (Math.floor(Math.log10(hours)) - (hours < 10 ? 0 : 1));
  const rounded = Number((Math.floor(hours / step + 1e-9) * step).toPrecision(2));
  return `after about ${formatQuantity(rounded * 3600, 'time', units)}`;
}

/** What a drain carries: from the clay, in a storm, and if the liner leaks. */
function flowWords({ inflow_m3_s }: DrainResult, units: UnitSystem): string {
  const { clay, leak, ring_storm, roof, uphill } = inflow_m3_s;
  const storm = ring_storm + roof + uphill;
  return [
    `about ${formatQuantity(clay, 'flow', units)} from the clay when the water stands high`,
    storm > 0
      ? `${formatQuantity((clay + storm) * 60, 'volume', units)} a minute at the worst of a storm`
      : 'no more in a storm, as no run-off reaches it',
    ...(leak > 0 ? [`${formatQuantity(leak, 'flow', units)} more should the liner be holed`] : []),
  ].join('; ');
}

/** Where a drain ends. */
function placeWords({ outlet, result }: Report, units: UnitSystem): string {
  if (outlet) return `${outlet.name}, ${formatQuantity(outlet.distance_m, 'length', units)} from the pond`;
  return result.drain?.fall_available_m === null
    ? 'a sump beside the pond, from which it is pumped to the discharge the survey names'
    : (result.drain?.outlet ?? 'nowhere');
}

function waterWords(report: Report, units: UnitSystem): string {
  const { drain, recommendation } = report.result;
  if (!drain)
    return recommendation.option === 'do-not-dig'
      ? 'Nothing is dug and nothing is drained.'
      : 'No drain is recommended under the pond, so no water is led away from there: what runs over the brim leaves at the lowest ground of the rim, as rain does there now.';
  const flood = report.outlet?.flood_m;
  const high =
    flood === null || flood === undefined
      ? ''
      : ` The highest water there stands at ${formatQuantity(flood, 'level', units)}.`;
  return `The drain's water goes to ${placeWords(report, units)}.${high} It is ${flowWords(drain, units)}.`;
}

function unknownWords({ result }: Report): string {
  const { recommendation, assumptions } = result;
  const next = recommendation.measure_next[0];
  const items = assumptions.slice(0, 3).map(({ item }) => item.replaceAll('_', ' '));
  const assumed =
    assumptions.length === 0
      ? 'Nothing had to be assumed beyond the survey.'
      : `${assumptions.length === 1 ? 'One value is' : `${assumptions.length} values are`} assumed, not measured: ${listText(items)}${
          assumptions.length > items.length ? ' among them' : ''
        }.`;
  return paragraph([
    assumed,
    ...result.water.seasons_looked_in.map(seasonWords),
    next &&
      `What would most likely change the answer (chance ${chanceText(next.chance_to_change)}): ${next.what}, at ${next.where}${
        next.month === null ? '' : `, in ${monthName(next.month)}`
      }.`,
    recommendation.close_call &&
      'It is a close call: a small change of what was measured changes the answer.',
    'Holes show the ground at the holes only; water can stand higher than was seen.',
  ]);
}

/** Whether the season somebody looked in was a wet or a dry one. */
function seasonWords({ from, to, rank, of }: Result['water']['seasons_looked_in'][number]): string {
  const named = (month: string) => `${monthName(Number(month.slice(5)))} ${month.slice(0, 4)}`;
  const third = rank <= of / 3 ? 'a wet one' : rank > (2 * of) / 3 ? 'a dry one' : 'an ordinary one';
  const place =
    rank === 1 ? 'the wettest' : rank === of ? 'the driest' : `number ${rank}, counted from the wettest,`;
  const most = third === 'a dry one' ? ': in most years the water stands higher than you saw it' : '';
  return `The wet season you looked in, ${named(from)} to ${named(to)}, was ${third}, ${place} of ${of} in the weather file${most}.`;
}

function recommendationWords(report: Report, units: UnitSystem): string {
  const { result } = report;
  const { depth_m, raise_m, reason } = result.recommendation;
  const dug = isDug(result) ? `, ${dugAndRaised({ depth_m, raise_m }, units)}` : '';
  return paragraph([
    `${adviceWords(result.recommendation)}${dug}.`,
    `${sentence(reason.trim())}${/[.!?]$/.test(reason.trim()) ? '' : '.'}`,
    result.instead && insteadWords(result.instead, report, units),
  ]);
}

/** The same pond used otherwise: with no drain or slab, or as deep as wished; as a sentence. */
export function insteadWords(
  { depth_m, change, option, also, raise_m, per_year }: Instead,
  report: Report,
  units: UnitSystem,
): string {
  const size = (value: number) => formatQuantity(value, 'length', units);
  const besides = also.map((name) => ADVICE_NAMES[name].toLowerCase());
  const fails = `(${chanceText(per_year)} of years fail)`;
  const { emptied_in: wished } = report.pond;
  const { side_slope, built_in, ...use } = change;
  const dug = dugWords({ side_slope, built_in }, size);
  const wish = `as wished${dug.length > 0 ? ` but ${listText(dug)}` : ''}`;
  if (change.emptied_in?.length === 0) {
    const raised = raise_m > 0 ? ` and it raised by ${size(raise_m)}` : '';
    const others = besides.length > 0 ? `, and ${listText(besides)}` : '';
    return `Or dig it ${size(depth_m)} deep ${wish}, ${lowerFirst(WITH_OPTION[option])}${raised}${others}, and never empty it ${fails}.`;
  }
  const built =
    option === 'no-drain'
      ? 'build nothing'
      : raise_m > 0
        ? `raise it by ${size(raise_m)} and no more is needed`
        : 'keep surface water out and no more is needed';
  const used = changeOrders(use, wished === 'any' ? [] : wished, size).map((order) => `, ${order}`);
  return `Or keep the pond ${wish}${used.join('')}, and ${built}${besides.length > 0 ? `, with ${listText(besides)}` : ''} ${fails}.`;
}

function paragraph(sentences: (string | undefined | false | null)[]): string {
  return sentences.filter(Boolean).join(' ');
}
