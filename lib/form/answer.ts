/** The answer to what has been typed so far, in words and drawings; runs in a worker. */

import { isDug, LEAST_CHANCE } from '../contract/index.js';
import { type Assessment, assess } from '../decision/index.js';
import { DESIGN_WIDTH } from '../figures/layout.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import { figureSvg } from '../figures/svg.js';
import { adviceWords } from '../figures/words.js';
import { measurementWords } from '../page/nextWords.js';
import { pageHtml } from '../page/pageHtml.js';
import { type Photos, takenText } from '../page/record.js';
import { verdictWords } from '../page/verdict.js';
import { reportOf, workedSheet } from '../report/index.js';
import { siteModel } from '../site/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { formatQuantity } from '../units/index.js';

/** Draws of a first answer, and of the one that is kept; the second as everywhere else. */
export const QUICK = 64;
export const FULL = 512;
const SEED = 1;

/** Something to find out, in words. */
export interface NextFact {
  text: string;
  /** it takes a wet half-year */
  waits: boolean;
}

/** An answer, fit to be sent to another thread. */
export interface Answer {
  samples: number;
  /** what to do, in a line */
  headline: string;
  words: { recommendation: string; full: string; emptied: string; water: string; unknown: string };
  /** the most telling first */
  next: NextFact[];
  /** items that the survey does not say */
  assumed: { item: string; value: string; reason: string }[];
  warnings: readonly Warning[];
  drawings: { section: string; risk: string };
}

/**
 * Assesses a survey.
 * @param samples draws of everything unknown
 */
export const assessmentOf = (survey: Survey, samples: number): Assessment =>
  assess(siteModel(survey, { seed: SEED, samples }));

/** Without a chance where there is none to speak of: what has to be measured first is named whatever it may change. */
const told = (words: string, chance: number) =>
  chance < LEAST_CHANCE ? words.replace(/: chance .*$/, '') : words;

/** The answer of an assessment. */
export function answerOf(assessment: Assessment, samples: number): Answer {
  const report = reportOf(assessment);
  const { recommendation, assumptions, warnings } = report.result;
  const { units } = report;
  const depth = isDug(recommendation)
    ? `, dug ${formatQuantity(recommendation.depth_m, 'length', units)} deep`
    : '';
  const drawn = (name: 'section' | 'risk') => {
    const make = name === 'section' ? sectionFigure : riskDepthFigure;
    return figureSvg(make(report, units, 'narrow'), DESIGN_WIDTH.narrow, `answer-${name}`);
  };
  return {
    samples,
    headline: `${adviceWords(recommendation)}${depth}`,
    words: verdictWords(report),
    next: recommendation.measure_next.map(({ what, where, month, waits, ...rest }) => ({
      text: told(measurementWords({ what, where, month, waits, ...rest }), rest.chance_to_change),
      waits,
    })),
    assumed: assumptions.map(({ item, value, unit, reason }) => ({
      item,
      value: takenText(item, value, unit, units),
      reason,
    })),
    warnings,
    drawings: { section: drawn('section'), risk: drawn('risk') },
  };
}

/** What the form hands out besides the survey, made from the same assessment. */
export interface Outputs {
  page: string;
  result: string;
}

/**
 * The page and `result.json`.
 * @param script of the what-if
 * @param photos as data by the name the survey gives
 */
export function outputsOf(
  assessment: Assessment,
  { script, version, photos }: { script: string; version: string; photos: Photos },
): Outputs {
  const report = reportOf(assessment);
  const { survey, seed, water } = assessment.site;
  return {
    page: pageHtml(report, {
      worked: workedSheet(assessment),
      version,
      photos,
      live: { script, survey, seed, samples: water.samples },
    }),
    result: `${JSON.stringify(report.result, null, 2)}\n`,
  };
}
