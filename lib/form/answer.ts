/** The answer to what has been typed so far, in words and drawings; runs in a worker. */

import { LEAST_CHANCE } from '../contract/index.js';
import { type Assessment, assess } from '../decision/index.js';
import { howDeepFigure } from '../figures/howDeepFigure.js';
import { whichWaterFigure } from '../figures/whichWaterFigure.js';
import type { TableFits } from '../groundwater/index.js';
import { pageHtml } from '../page/pageHtml.js';
import { pondCardHtml } from '../page/pondCard.js';
import type { Photos } from '../page/record.js';
import { reportOf, workedSheet } from '../report/index.js';
import { siteModel } from '../site/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { type Headline, headlineOf } from '../text/headline.js';
import { measurementWords } from '../text/nextWords.js';
import { takenText } from '../text/takenText.js';
import { verdictWords } from '../text/verdictWords.js';
import { weatherGainWords } from '../text/weatherGain.js';

/** Draws of a first answer, and of the one that is kept; the second as everywhere else. */
export const QUICK = 64;
export const FULL = 512;
const SEED = 1;

/** Something to find out, in words. */
interface NextFact {
  text: string;
  /** it takes a wet half-year */
  waits: boolean;
}

/** An answer, fit to be sent to another thread. */
export interface Answer {
  samples: number;
  /** as on the first screen of the page */
  headline: Headline;
  /** why, in a few sentences */
  why: string;
  /** the most telling first */
  next: NextFact[];
  /** what daily weather would settle; empty where it is given */
  weather: string;
  /** items that the survey does not say */
  assumed: { item: string; value: string; reason: string }[];
  warnings: readonly Warning[];
  /** empty where nothing can be drawn yet */
  drawings: { water: string; depth: string };
}

/**
 * Assesses a survey.
 * @param samples draws of everything unknown
 * @param fits of the surveys answered before
 */
export const assessmentOf = (survey: Survey, samples: number, fits: TableFits): Assessment =>
  assess(siteModel(survey, { seed: SEED, samples, fits }));

/** Without a chance where there is none to speak of: what has to be measured first is named whatever it may change. */
const told = (words: string, chance: number) =>
  chance < LEAST_CHANCE ? words.replace(/: chance .*$/, '') : words;

/** The answer of an assessment. */
export function answerOf(assessment: Assessment, samples: number): Answer {
  const report = reportOf(assessment);
  const { recommendation, assumptions, warnings } = report.result;
  const { units } = report;
  return {
    samples,
    headline: headlineOf(report),
    why: verdictWords(report).recommendation,
    next: recommendation.measure_next.map(({ what, where, month, waits, ...rest }) => ({
      text: told(measurementWords({ what, where, month, waits, ...rest }), rest.chance_to_change),
      waits,
    })),
    weather: weatherGainWords(report),
    assumed: assumptions.map(({ item, value, unit, reason }) => ({
      item,
      value: takenText(item, value, unit, units),
      reason,
    })),
    warnings,
    drawings: { water: whichWaterFigure(report).narrow, depth: howDeepFigure(report).narrow },
  };
}

/** What the form hands out besides the survey, made from the same assessment. */
export interface Outputs {
  page: string;
  /** one sheet for the shed */
  card: string;
  result: string;
}

/**
 * The page, the pond card and `result.json`.
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
      issued: new Date().toISOString().slice(0, 10),
      live: { script, survey, seed, samples: water.samples },
    }),
    card: pondCardHtml(report),
    result: `${JSON.stringify(report.result, null, 2)}\n`,
  };
}
