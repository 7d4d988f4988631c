/** underpond: what groundwater will do to a lined pond, and what to do about it. The part that runs anywhere. */
export * from './climate/index.js';
export * from './drain/index.js';
export * from './figures/index.js';
export * from './formula/index.js';
export * from './groundwater/index.js';
export * from './page/index.js';
export type * from './risk/index.js';
export {
  assess,
  chanceMethod,
  chanceOf,
  diggingMethod,
  drainWords,
  driversMethod,
  judge,
  LOSS,
  lossMethod,
  measureNextMethod,
  monthWords,
  NOTHING,
  nextDoorMethod,
  possibleDrain,
  recommend,
  reportOf,
  resultOf,
  sayChance,
  spotsMethod,
  tippingMethod,
  verdictAt,
  workedSheet,
  workMethod,
} from './risk/index.js';
export {
  givenDataIndices,
  type Percentiles,
  percentiles,
  preposteriorAnalysis,
  replicateError,
  scrambledSobol,
  temperedPopulation,
  varianceIndices,
} from './sampling/index.js';
export * from './seepage/index.js';
export type * from './site/index.js';
export {
  digWindow,
  digWindowMethod,
  dipReading,
  evidenceAgainstEvidence,
  highEvidenceMethod,
  pooledDipsMethod,
  recoveredLevelMethod,
  siteModel,
  soilTestReading,
  spotHeadMethod,
  tubInflow,
  tubYearMethod,
  unknownsMethod,
  waterEnsemble,
  wetWinterScaling,
} from './site/index.js';
export * from './soil/index.js';
export { formatProblem, formatWarning, parseSurvey, type Survey, SurveyError } from './survey/index.js';
export * from './units/index.js';
export * from './uplift/index.js';
