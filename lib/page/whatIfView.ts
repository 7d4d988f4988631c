/** What the what-if shows of what is tried. */

import type { Figure } from '../figures/figure.js';
import type { FigureSize } from '../figures/layout.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import type { Table } from '../figures/table.js';
import { reportOf } from '../report/index.js';
import { type Standing, triedChances, usedWords, whatIfText } from '../text/whatIfText.js';
import type { UnitSystem } from '../units/index.js';
import { comparedTried, type TriedColumn, toldTried } from './comparedTried.js';
import { carried } from './drainSection.js';
import { type Holder, type Tried, withCurves } from './heldMeasures.js';
import { triedVerdict, whatIfAnswer } from './whatIfAnswer.js';

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
 * @param tried - from its `asked`
 * @param survey - column of the survey
 * @param units - how numbers are written
 * @returns what the panel says
 */
export function viewOf(holder: Holder, tried: Tried, survey: TriedColumn, units: UnitSystem): View {
  const { words, standing } = whatIfText(whatIfAnswer(holder, tried), units);
  const verdict = tried.stop ? undefined : tried.held?.decision.verdict;
  const { change } = holder;
  return {
    headline: words,
    standing,
    used: change ? usedWords(change, units) : '',
    compared: comparedTried(survey, toldTried(tried, units)),
    chances: verdict ? triedChances(verdict.chance.modes, triedVerdict(verdict)) : '',
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
