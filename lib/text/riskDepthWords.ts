/** Chance that a pond fails against the depth dug, in words. */
import type { Governs, OptionName, OptionResult, Report } from '../contract/index.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { chanceText, yearlyText } from './say.js';
import { listText } from './sentence.js';
import { ADVICE_NAMES, GOVERNS_WORDS } from './terms.js';

/** The accepted risk, on its line. */
export function acceptedText(chance: number): string {
  return `accepted: ${chanceText(chance)} a year`;
}

/** Name of the axis of depths. */
export function depthDugAxis(unit: string): string {
  return `depth dug below the rim's ground (${unit})`;
}

/**
 * A depth on the line of an option.
 * @param name - of the option, or of several
 * @param at - depth, m, its chance a year, what governs it, and whether it is safe
 * @param units - how numbers are written
 * @returns words
 */
export function riskAtDepthText(
  name: string,
  at: { depth: number; risk: { per_year: number; upkeep: number }; governs: Governs; safe: boolean },
  units: UnitSystem,
): string {
  return (
    `${name}, ${formatQuantity(at.depth, 'length', units)}: ${yearlyText(at.risk)}` +
    `${at.governs === 'none' ? '' : `, ${GOVERNS_WORDS[at.governs]}`}${at.safe ? '' : ' - not safe'}`
  );
}

/**
 * The safe depth of an option, at its ring.
 * @param name - of the option, or of several
 * @param safe - m
 * @param units - how numbers are written
 * @returns words
 */
export function safeDepthText(name: string, safe: number, units: UnitSystem): string {
  return `${name}: safe to ${formatBound(safe, 'length', units, 'down')}`;
}

/**
 * How deep an option is safe, its number on one line.
 * @param option - with its safe depth, and how deep was looked
 * @param units - how numbers are written
 * @returns words without a stop
 */
export function safeToWords(
  { safe_depth_m, depth_searched_m }: Pick<OptionResult, 'safe_depth_m' | 'depth_searched_m'>,
  units: UnitSystem,
): string {
  if (safe_depth_m === 0) return 'not safe at any depth';
  const depth = (m: number) => formatBound(m, 'length', units, 'down').replaceAll(' ', '\u00a0');
  return safe_depth_m === null
    ? `safe to ${depth(depth_searched_m)} at least`
    : `safe to ${depth(safe_depth_m)}`;
}

/**
 * What the chances show, for whoever does not see them.
 * @param report - with its options
 * @param drawn - options in the order of their lines
 * @param units - how numbers are written
 * @returns sentences
 */
export function riskDepthAlt(
  { result: { options }, accepted_risk, pond }: Report,
  drawn: readonly OptionName[],
  units: UnitSystem,
): string {
  const said = drawn.map((name) => {
    const option = options.find((each) => each.option === name)!;
    const { risk_at_wish, governs } = option;
    const wish = risk_at_wish ? `at the wish ${yearlyText(risk_at_wish)}` : 'not possible at the wish';
    return (
      `${ADVICE_NAMES[name]}: ${safeToWords(option, units)}, ${wish}` +
      `${governs === 'none' ? '' : ` (${GOVERNS_WORDS[governs]})`}`
    );
  });
  const out = options
    .filter(({ possible }) => !possible)
    .map(({ option }) => ADVICE_NAMES[option].toLowerCase());
  return (
    `Chance in a year that liner or sides fail, against the depth dug, from 0.1 % to 100 %; smaller chances lie in the grey strip. ` +
    `Accepted is ${chanceText(accepted_risk)} a year; the wish is ${formatQuantity(pond.depth_m, 'length', units)}. ` +
    `${said.join('; ')}.${out.length > 0 ? ` Not possible here: ${listText(out)}.` : ''}`
  );
}
