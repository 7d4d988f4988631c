/**
 * underpond: what groundwater will do to a lined pond, and what to do about it. The part that runs anywhere: from the
 * files of a survey to the answer, its words, its figures and its page.
 */
export type { Measurement, OptionName, Report, Result, SiteDrain, Situation } from './contract/index.js';
export { type Assessment, assess, type Judged, LOSS, possibleDrain } from './decision/index.js';
export type { Drawing, Figure, Table } from './figures/index.js';
export * as figures from './figures/index.js';
export { type Measures, NOTHING } from './heads/index.js';
export {
  changesText,
  type PageOptions,
  pageHtml,
  pondCardHtml,
  settingOutCsv,
  shoppingCsv,
  type WhatIf,
  waterYearCsv,
  whatIf,
  workedCsv,
  yearlyHeadsCsv,
} from './page/index.js';
export { chanceOf, type Verdict, verdictAt } from './reliability/index.js';
export { recommend, reportOf, resultOf, workedSheet } from './report/index.js';
export { type Site, type SiteOptions, siteModel } from './site/index.js';
export {
  formatProblem,
  formatWarning,
  type GivenSurvey,
  givenSurvey,
  parseSurvey,
  type Survey,
  SurveyError,
  surveyFiles,
  surveyFrom,
} from './survey/index.js';
export {
  ADVICE_NAMES,
  chanceText,
  drainWords,
  GOVERNS_WORDS,
  GRADING_FAULTS,
  type Headline,
  headlineOf,
  monthWords,
  nextWords,
  obstacleText,
  READINGS,
  ruleText,
  todayWords,
  verdictWords,
  yearWords,
} from './text/index.js';
export {
  formatQuantity,
  InputError,
  parseQuantity,
  QuantityError,
  UnderpondError,
  type UnitSystem,
} from './units/index.js';
