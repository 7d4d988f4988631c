/** What the what-if shows of what is tried. */

import { type Governs, LEAST_CHANCE } from '../contract/index.js';
import type { Figure } from '../figures/figure.js';
import type { FigureSize } from '../figures/layout.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import type { Table } from '../figures/table.js';
import type { Verdict } from '../reliability/index.js';
import { reportOf } from '../report/index.js';
import { changeWords } from '../text/changeWords.js';
import { chanceText, isUpkeep, orderText, yearlyText } from '../text/say.js';
import { listText, sentence } from '../text/sentence.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { comparedTried, type TriedColumn, toldTried } from './comparedTried.js';
import { carried } from './drainSection.js';
import { type Holder, type Tried, withCurves } from './heldMeasures.js';
import { type Standing, whatIfAnswer } from './whatIfAnswer.js';

/** The answer in words. */
export interface View {
  /** the answer to what is tried */
  headline: string;
  standing: Standing;
  /** the change of the wish that is held with what is built; empty: none */
  used: string;
  /** the survey against what is tried */
  compared: Table;
  /** chances of each state, and of the dig; empty where what is held cannot be had */
  chances: string;
}

/**
 * Words of what is tried.
 * @param holder - of the survey
 * @param tried - from its `asked`
 * @param survey - column of the survey
 * @param units - how numbers are written
 * @returns what the panel says
 */
export function viewOf(holder: Holder, tried: Tried, survey: TriedColumn, units: UnitSystem): View {
  const { words, standing } = whatIfAnswer(holder, tried, units);
  const verdict = tried.stop ? undefined : tried.held?.decision.verdict;
  const { change } = holder;
  return {
    headline: words,
    standing,
    used: change
      ? `Used as is recommended: ${listText(changeWords(change, (m) => formatQuantity(m, 'length', units)))}.`
      : '',
    compared: comparedTried(survey, toldTried(tried, units)),
    chances: verdict ? chanceWords(verdict) : '',
  };
}

/** What is drawn and listed of what is tried. */
export interface Pictured {
  /** what to buy and to dig for the drain */
  buy: Table;
  section: Figure;
  risk: Figure;
}

/**
 * Figures of what is tried; they take a multiple of the time of its words.
 * @param tried - from {@link holder}
 * @returns undefined where what is held cannot be had, or nothing may be dug
 */
export function picturedTried(
  { held, option, stop }: Tried,
  units: UnitSystem,
  size: FigureSize,
): Pictured | undefined {
  if (!held || stop) return undefined;
  const report = reportOf(withCurves(held), { units, quick: true });
  return {
    buy: carried(report, units),
    section: sectionFigure(report, units, size),
    risk: riskDepthFigure(report, units, size, { option, per_year: held.decision.verdict.chance.perYear }),
  };
}

/** Chances of a year as they may be told: none more exactly than their sum. */
function yearlyWords({ chance: { perYear, upkeep } }: Verdict): (chance: number) => string {
  if (!isUpkeep({ per_year: perYear, upkeep })) return chanceText;
  return (chance) => (chance < LEAST_CHANCE ? chanceText(chance) : orderText(chance));
}

function chanceWords(verdict: Verdict): string {
  const { dig } = verdict;
  const { modes, perYear, upkeep } = verdict.chance;
  const yearly = yearlyWords(verdict);
  const say = (mode: Governs, words: string) =>
    modes[mode] === undefined ? [] : [`${words} ${yearly(modes[mode])}`];
  const year = [
    ...say('lift-full', 'full'),
    ...say('lift-drawn-down', 'at its usual lowest level'),
    ...say('lift-emptied', 'emptied'),
    ...say('lift-power-out', 'with the power out'),
  ];
  return sentence(
    `the liner lifts: ${[...year, ...say('side-slump', 'a bared side slumps')].join(', ')}; together ${yearlyText({ per_year: perYear, upkeep })}. ` +
      `In a dig: floor heaves ${chanceText(dig.heave)}, sides slump ${chanceText(dig.slump)}, wet floor ${chanceText(dig.wet_floor)}.`,
  );
}
