/** How deep with what: a row of the figure, as data. */
import {
  advisedOption,
  BEFORE_DIGGING,
  type OptionName,
  type OptionResult,
  type PossibleOption,
  type Report,
  type Result,
} from '../contract/index.js';
import { isUpkeep, LEAST_CHANCE, orderText } from '../text/say.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { obstacleWords } from './obstacleWords.js';
import { ADVICE_NAMES, adviceWords, GOVERNS_WORDS } from './words.js';

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
 * @returns a row an option
 */
export function depthRows(report: Report, units: UnitSystem): DepthRow[] {
  const { options, recommendation } = report.result;
  const advised = BEFORE_DIGGING.includes(recommendation.option)
    ? undefined
    : advisedOption(report.result)?.option;
  const order = (option: OptionResult) =>
    option.option === advised ? -1e9 : option.possible ? -(option.safe_depth_m ?? 1e6) : 1e9;
  return [...options]
    .sort((a, b) => order(a) - order(b))
    .map((option) =>
      option.possible ? rowOf(option, report, units, option.option === advised) : barredRow(option),
    );
}

function barredRow(option: OptionResult): DepthRow {
  return {
    option: option.option,
    name: ADVICE_NAMES[option.option],
    advised_m: null,
    safe_m: null,
    endless: false,
    edge: '',
    told: obstacleWords(option),
    chance: '',
    chance_note: '',
  };
}

function rowOf(option: PossibleOption, report: Report, units: UnitSystem, advised: boolean): DepthRow {
  const { recommendation } = report.result;
  const wish = report.pond.depth_m;
  const safe = option.safe_depth_m ?? option.depth_searched_m;
  const endless = option.safe_depth_m === null;
  const depth = advised ? recommendation.depth_m : wish;
  const chance =
    advised && depth !== wish ? chanceAt(option.option, depth, report) : chanceOf(option, report.result);
  return {
    option: option.option,
    name: advised && recommendation.as_built ? adviceWords(recommendation) : ADVICE_NAMES[option.option],
    advised_m: advised ? depth : null,
    safe_m: safe,
    endless,
    edge: safe > 0 ? formatBound(safe, 'length', units, 'down') : '',
    told: toldOf(option, wish, safe, endless, units),
    chance: chance.text,
    chance_note: advised && depth !== wish ? `at ${formatQuantity(depth, 'length', units)}` : chance.note,
  };
}

function toldOf(
  { governs }: PossibleOption,
  wish: number,
  safe: number,
  endless: boolean,
  units: UnitSystem,
): string {
  const fails = GOVERNS_WORDS[governs];
  if (endless)
    return `nothing fails down to ${formatBound(safe, 'length', units, 'down')}, where the search ends`;
  if (safe <= 0) return `not even shallow: ${fails}`;
  const off = safe - wish;
  if (off < -1e-6) return `${formatBound(-off, 'length', units, 'up')} short of the wish: ${fails}`;
  return off < 5e-4
    ? `nothing in hand: ${fails} below`
    : `${formatBound(off, 'length', units, 'down')} in hand, then ${fails}`;
}

/** A chance in words, and what it is of. */
interface Told {
  text: string;
  note: string;
}

/** The greater of the chance a year and the chances while it is dug. */
function chanceOf({ risk_at_wish, per_dig }: PossibleOption, result: Result): Told {
  const dig = isDug(result) ? Math.max(per_dig.heave, per_dig.slump, per_dig.wet_floor) : 0;
  if (dig > risk_at_wish.per_year && dig >= LEAST_CHANCE) return { text: digsWords(dig), note: '' };
  return { text: yearsWords(risk_at_wish.per_year), note: isUpkeep(risk_at_wish) ? 'by how it is kept' : '' };
}

/** The same at a depth that is not the wish, from the curve. */
function chanceAt(option: OptionName, depth: number, { curves, result }: Report): Told {
  const curve = curves.find((each) => each.option === option);
  if (!curve || curve.depth_m.length === 0) return { text: 'not counted', note: '' };
  const off = curve.depth_m.map((each) => Math.abs(each - depth));
  const at = off.indexOf(Math.min(...off));
  const dug = isDug(result);
  const [year, dig] = [curve.per_year[at]!, dug ? curve.per_dig[at]! : 0];
  return dig > year && dig >= LEAST_CHANCE
    ? { text: digsWords(dig), note: '' }
    : { text: yearsWords(year), note: '' };
}

/** A pond that is there is not dug. */
function isDug({ situations }: Result): boolean {
  return situations.some(({ situation }) => situation === 'dig');
}

/**
 * A chance a year in words.
 * @param chance - 0–1
 * @returns such as `about 1 year in 50`, `most years`
 */
export function yearsWords(chance: number): string {
  if (chance < LEAST_CHANCE) return 'less than 1 year in 1000';
  if (chance >= 0.95) return 'nearly every year';
  if (chance >= 0.6) return 'most years';
  return chance >= 0.4 ? 'every second year' : orderText(chance);
}

function digsWords(chance: number): string {
  if (chance >= 0.95) return 'nearly every dig';
  if (chance >= 0.6) return 'most digs';
  return chance >= 0.4 ? 'every second dig' : orderText(chance).replace('year', 'dig');
}
