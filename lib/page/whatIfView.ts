/** What the what-if shows of what is tried. */

import type { Figure } from '../figures/figure.js';
import type { FigureSize } from '../figures/layout.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import type { Table } from '../figures/table.js';
import { reportOf } from '../report/index.js';
import { type Standing, trialChances, usedWords, whatIfText } from '../text/whatIfText.js';
import type { UnitSystem } from '../units/index.js';
import { carried } from './drainSection.js';
import { type Holder, type Trial, withCurves } from './heldMeasures.js';
import { type TrialColumn, trialColumn, trialTable } from './trialColumn.js';
import { trialVerdict, whatIfAnswer } from './whatIfAnswer.js';

/** The answer in words. */
interface View {
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
 * @param trial - from its `asked`
 * @param survey - column of the survey
 * @param units - how numbers are written
 * @returns what the panel says
 */
export function viewOf(holder: Holder, trial: Trial, survey: TrialColumn, units: UnitSystem): View {
  const { words, standing } = whatIfText(whatIfAnswer(holder, trial), units);
  const verdict = trial.stop ? undefined : trial.held?.decision.verdict;
  const { change } = holder;
  return {
    headline: words,
    standing,
    used: change ? usedWords(change, units) : '',
    compared: trialTable(survey, trialColumn(trial, units)),
    chances: verdict ? trialChances(verdict.chance.modes, trialVerdict(verdict)) : '',
  };
}

/** What is drawn and listed of what is tried. */
interface Pictured {
  /** what to buy and to dig for the drain */
  buy: Table;
  section: Figure;
  risk: Figure;
}

/**
 * Figures of what is tried; they take a multiple of the time of its words.
 * @param trial - from {@link holder}
 * @returns undefined where what is held cannot be had, or nothing may be dug
 */
export function trialFigures(
  { held, option, stop }: Trial,
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
