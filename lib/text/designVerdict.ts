/** What the sheet of design situations says, row by row and of all. */
import type { DesignRow, DesignSheet, Unlooked } from '../contract/index.js';
import { HEAVE_FACTOR_WANTED } from '../uplift/index.js';
import { RULES_WORDS } from './designWords.js';
import { monthName } from './monthWords.js';
import { sentence } from './sentence.js';
import { SITUATION_NAMES, WHY_WORDS } from './terms.js';

/**
 * A row by name.
 * @param row - of the sheet
 * @returns situation and month
 */
export function designRowName({ situation, month }: DesignRow): string {
  return `${SITUATION_NAMES[situation]}${month === null ? '' : `, ${monthName(month)}`}`;
}

/**
 * Situations that the factors do not verify, and what the answer says of them.
 * @param shown - rows that are printed
 * @param drained - whether some hang on a drain
 * @returns a sentence or two
 */
export function unmetWords(shown: readonly DesignRow[], drained: boolean): string {
  const unmet = shown.filter(({ uplift, sides }) => uplift?.met === false || sides?.met === false);
  if (unmet.length === 0)
    return `Every row that is weighed is met${drained ? ', some only while the drain works' : ''}.`;
  const named = (rows: readonly DesignRow[]) => rows.map(designRowName).join('; ');
  const allowed = unmet.filter((row) => row.allowed);
  if (allowed.length === 0) return `Not met: ${named(unmet)}.`;
  return (
    `Not met: ${named(unmet)}. ` +
    `The answer of this page allows ${allowed.length === unmet.length ? 'these' : named(allowed)}, because that is rare enough, short enough or short of the factor only. Whoever signs decides whether it will do.`
  );
}

/**
 * Verdict of a row by the factors, and by the answer.
 * @param row - of the sheet
 * @returns a few words
 */
export function designVerdict(row: DesignRow): string {
  const { uplift, sides, drained } = row;
  const answer = answerWords(row);
  const weighed = uplift ?? sides;
  if (!weighed) return answer;
  const met = weighed.met ? (drained ? 'met while the drain works' : 'met') : 'not met';
  return `${met}; answer: ${answer}`;
}

/** What the answer says of a row: one whose water comes too high, but seldom enough, holds in most years only. */
function answerWords({ situation, allowed, why, margin_m }: DesignRow): string {
  const seldom = allowed && why === 'holds' && situation !== 'dig' && margin_m !== null && margin_m < -1e-4;
  return seldom ? 'fails, no oftener than is accepted' : WHY_WORDS[why];
}

/**
 * The water against the floor of a hole.
 * @param gap - between them, with its unit
 * @param above - whether the water stands over the floor
 * @returns a few words
 */
export function holeWater(gap: string, above: boolean): string {
  return above ? `${gap} of water over the floor, to be pumped` : `water ${gap} under the floor`;
}

/**
 * From where levels and pressures are counted.
 * @param lowest - level of the liner's lowest point, with its unit
 * @param weight - of water, as it is printed
 * @param plug - whether water below the clay is weighed
 * @returns sentences
 */
export function designLevels(lowest: string, weight: string, plug: boolean): string {
  return (
    `Levels count from the lowest natural ground at the rim. The liner's lowest point lies at ${lowest}. ` +
    `Pressure of water: ${weight} times the height, from that point up${plug ? '; of water below the clay, from the top of its layer, or from a floor that is cut into it' : ''}. ` +
    'Of each situation the month with the least in hand is shown; all months stand in result.json under design_sheet.'
  );
}

/**
 * Standard and country of the sheet, for the lines to sign.
 * @param sheet - of `result.json`
 * @returns a line
 */
export function rulesLine({ country, rules }: DesignSheet): string {
  return `${sentence(RULES_WORDS[rules].name)}${country ? ` (${country})` : ', by the units shown: no country is said'}`;
}

/**
 * What nobody looked at.
 * @param unlooked - of the sheet
 * @param to - depth of the deepest log, with its unit
 * @param wanted - depth that would tell, with its unit; null: none would
 * @returns sentences
 */
export function unlookedWords({ pit, factor }: Unlooked, to: string, wanted: string | null): string {
  const least = HEAVE_FACTOR_WANTED;
  const found =
    factor >= least
      ? `the open hole would still have a factor of ${factor.toFixed(2)}`
      : `the open hole would have a factor of ${factor.toFixed(2)} only, where ${least} is wanted${wanted === null ? '' : `; a log down to ${wanted} would rule that out`}`;
  return `Below ${to}, where the log of ${pit} ends, nobody looked. If a layer began just there whose water stands at the ground, ${found}. ${factor >= least ? '' : 'Without such a log, watch the floor while digging, as said there, and stop when it rises, softens or boils.'}`.trim();
}
