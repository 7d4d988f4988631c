/** How deep with what: a row of the figure, as data. */

import {
  advisedOption,
  advisedOptions,
  advisedTogether,
  BEFORE_DIGGING,
  LEAST_CHANCE,
  type OptionName,
  type OptionResult,
  type PossibleOption,
  type Report,
  type Situation,
} from '../contract/index.js';
import { formatBound, formatGap, formatQuantity, type UnitSystem } from '../units/index.js';
import { beforeDiggingWords } from './beforeDigging.js';
import { changeWords, dugWords } from './changeWords.js';
import { emptiedWords } from './emptiedWords.js';
import { isUpkeep, oftenText } from './say.js';
import { listText } from './sentence.js';
import { shortObstacle } from './shortObstacle.js';
import { ADVICE_NAMES, adviceWords, GOVERNS_WORDS } from './terms.js';

/** An option and how deep it goes. */
export interface DepthRow {
  option: OptionName;
  name: string;
  /** this is recommended: at that depth, m */
  advised_m: number | null;
  /** safe from the top down to here, m; null: it cannot be had */
  safe_m: number | null;
  /** nothing ends it down to the depth that was looked at */
  endless: boolean;
  /** the safe depth, written */
  edge: string;
  /** what is in hand from the depth wished to the edge, or lacks, and what fails there */
  told: string;
  /** chance that it fails, in words; empty where it cannot be had */
  chance: string;
  chance_note: string;
}

/**
 * Rows of the figure: what is recommended, what can be had by how deep it goes, what cannot be had.
 * @param report what was computed
 * @param units system of the numbers
 * @param fits - whether the reason of what cannot be had has room
 * @returns a row an option
 */
export function depthRows(report: Report, units: UnitSystem, fits: (words: string) => boolean): DepthRow[] {
  const { options, recommendation } = report.result;
  const advised = BEFORE_DIGGING.includes(recommendation.option)
    ? undefined
    : advisedOption(report.result)?.option;
  const order = (option: OptionResult) =>
    option.option === advised ? -1e9 : option.possible ? -(option.safe_depth_m ?? 1e6) : 1e9;
  return [...options]
    .sort((a, b) => order(a) - order(b))
    .map((option) =>
      option.possible ? rowOf(option, report, units, option.option === advised) : barredRow(option, fits),
    );
}

function barredRow(option: OptionResult, fits: (words: string) => boolean): DepthRow {
  return {
    option: option.option,
    name: ADVICE_NAMES[option.option],
    advised_m: null,
    safe_m: null,
    endless: false,
    edge: '',
    told: shortObstacle(option, fits),
    chance: '',
    chance_note: '',
  };
}

function rowOf(alone: PossibleOption, report: Report, units: UnitSystem, advised: boolean): DepthRow {
  const { recommendation } = report.result;
  const wish = report.pond.depth_m;
  const built = advised ? advisedOptions(recommendation) : [];
  const option = (advised && advisedTogether(report)) || alone;
  const name =
    advised && recommendation.as_built
      ? adviceWords(recommendation)
      : built.length > 1
        ? `${ADVICE_NAMES[built[0]!]}, ${listText(built.slice(1).map((each) => ADVICE_NAMES[each].toLowerCase()))}`
        : ADVICE_NAMES[option.option];
  const row = { option: option.option, name, advised_m: advised ? recommendation.depth_m : null };
  const safe = option.safe_depth_m ?? option.depth_searched_m;
  if (advised && safe < recommendation.depth_m - NEAR) return usedOtherwise(row, option, report, units);
  const endless = option.safe_depth_m === null && safe >= wish - NEAR;
  const chance =
    advised && (recommendation.depth_m !== wish || built.length > 1)
      ? chanceAt(recommendation.depth_m, report)
      : chanceOf(option, report);
  return {
    ...row,
    safe_m: safe,
    endless,
    edge: safe > 0 ? formatBound(safe, 'length', units, 'down') : '',
    told: toldOf(option, wish, safe, units),
    chance: chance.text,
    chance_note:
      advised && recommendation.depth_m !== wish
        ? `at ${formatQuantity(recommendation.depth_m, 'length', units)}`
        : advised && dugWords(recommendation.change, String).length > 0
          ? 'dug as advised'
          : chance.note,
  };
}

/** What is recommended is safe there only as it is then used, which the option as wished is not. */
function usedOtherwise(
  row: Pick<DepthRow, 'option' | 'name' | 'advised_m'>,
  { governs }: PossibleOption,
  { result }: Report,
  units: UnitSystem,
): DepthRow {
  const { change, depth_m } = result.recommendation;
  const mine = result.situations.filter(({ of }) => of === 'recommended');
  const emptied = mine.filter(({ situation }) => situation === 'emptied');
  const months = emptied.filter(({ allowed }) => allowed).map(({ month }) => month!);
  const length = (metres: number) => formatQuantity(metres, 'length', units);
  const how = change ? changeWords(change, length) : [emptiedWords(result.recommendation, months)];
  const kept = mine.filter(
    ({ situation, month }) =>
      (situation === 'full' || situation === 'drawn-down' || situation === 'power-out') && month === null,
  );
  // Dug in a month in which it may be.
  const dug = mine.filter(({ situation, allowed }) => situation === 'dig' && allowed);
  const most = (rows: Situation[]) => Math.max(0, ...rows.map(({ chance }) => chance?.middle ?? 0));
  // Emptied in the months that are left: the chance of each is its own.
  const [year, dig] = [most([...kept, ...emptied.filter(({ allowed }) => allowed)]), most(dug)];
  return {
    ...row,
    safe_m: depth_m,
    endless: false,
    edge: formatBound(depth_m, 'length', units, 'down'),
    told: `${listText(how)}; used as wished: ${GOVERNS_WORDS[governs]}`,
    chance: dig > year && dig >= LEAST_CHANCE ? digsWords(dig) : oftenText(year),
    chance_note: 'used as advised',
  };
}

/** Lengths of a result have six figures; nothing is dug closer, m. */
const NEAR = 1e-5;

function toldOf(option: PossibleOption, wish: number, safe: number, units: UnitSystem): string {
  const fails = GOVERNS_WORDS[option.governs];
  const off = safe - wish;
  const lacks = formatGap(Math.abs(off), units, 'up');
  if (option.safe_depth_m === null)
    return off < -NEAR
      ? `${lacks} short of the wish: deeper the sloping sides meet`
      : `nothing fails down to ${formatBound(safe, 'length', units, 'down')}, where the search ends`;
  if (safe <= 0) return `not even shallow: ${fails}`;
  if (off < -NEAR) return `${lacks} short of the wish: ${fails}`;
  return off < 5e-4
    ? `nothing in hand: ${fails} below`
    : `${formatGap(off, units, 'down')} in hand, then ${fails}`;
}

/** A chance in words, and what it is of. */
interface WordedChance {
  text: string;
  note: string;
}

/** The greater of the chance a year and the chances while it is dug. */
function chanceOf({ risk_at_wish, per_dig }: PossibleOption, { pond }: Report): WordedChance {
  // A pond that is there is not dug.
  const dig = pond.existing ? 0 : Math.max(per_dig.heave, per_dig.slump, per_dig.wet_floor);
  if (dig > risk_at_wish.per_year && dig >= LEAST_CHANCE) return { text: digsWords(dig), note: '' };
  return { text: oftenText(risk_at_wish.per_year), note: isUpkeep(risk_at_wish) ? 'by how it is kept' : '' };
}

/** The same of what is recommended at a depth, from its curve. */
function chanceAt(depth: number, { advised: curve, pond }: Report): WordedChance {
  const off = curve.depth_m.map((each) => Math.abs(each - depth));
  const at = off.indexOf(Math.min(...off));
  const [year, dig] = [curve.per_year[at]!, pond.existing ? 0 : curve.per_dig[at]!];
  return dig > year && dig >= LEAST_CHANCE
    ? { text: digsWords(dig), note: '' }
    : { text: oftenText(year), note: '' };
}

/** How often a dig fails. */
function digsWords(chance: number): string {
  return oftenText(chance).replace('year', 'dig');
}

/** What how deep an option goes shows, for whoever does not see it. */
export function depthRowsAlt(rows: DepthRow[], report: Report, units: UnitSystem): string {
  const told = rows.map((row) => {
    if (row.safe_m === null) return `${row.name}: cannot be had, ${row.told}.`;
    const deep = row.endless ? '' : row.safe_m > 0 ? `safe to ${row.edge}, ` : '';
    const first = row.advised_m !== null ? ' (recommended)' : '';
    return `${row.name}${first}: ${deep}${row.told}; it fails: ${row.chance}${row.chance_note ? ` ${row.chance_note}` : ''}.`;
  });
  const { option } = report.result.recommendation;
  const before = beforeDiggingWords(report);
  return `How deep with what? Wished: ${formatQuantity(report.pond.depth_m, 'length', units)}; advised: ${ADVICE_NAMES[option].toLowerCase()}. ${before ? `${before} ` : ''}${told.join(' ')}`;
}
