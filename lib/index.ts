/** underpond: what groundwater will do to a lined pond, and what to do about it. The part that runs anywhere. */

export type * from './basis/index.js';
export { keptPondMethod } from './basis/index.js';
export * from './climate/index.js';
export type * from './contract/index.js';
export type * from './decision/index.js';
export {
  assess,
  judge,
  LOSS,
  leastChangeMethod,
  lossMethod,
  measureNextMethod,
  openFactsMethod,
  possibleDrain,
  spotsMethod,
  tippingMethod,
} from './decision/index.js';
export type * from './digging/index.js';
export { diggingMethod, wetDigMethod } from './digging/index.js';
export * from './drain/index.js';
export * from './figures/index.js';
export * from './formula/index.js';
export * from './groundwater/index.js';
export type * from './heads/index.js';
export { NOTHING } from './heads/index.js';
export type * from './options/index.js';
export * from './page/index.js';
export * from './pond/index.js';
export type * from './reliability/index.js';
export { chanceMethod, chanceOf, driversMethod, verdictAt } from './reliability/index.js';
export type * from './report/index.js';
export { nextDoorMethod, recommend, reportOf, resultOf, workedSheet, workMethod } from './report/index.js';
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
export type * from './seepage/index.js';
export {
  augerHoleRate,
  augerHoleUnfilled,
  bailedRecovery,
  bailedRecoveryTest,
  basicTimeLag,
  conjugateGradientsMethod,
  discInflow,
  donnanSpacing,
  drainSpacing,
  drainUnderFloorMethod,
  dupuitSlot,
  dupuitWell,
  equalLooksLevel,
  equivalentDepth,
  equivalentDepthMethod,
  ernstHead,
  evenLines,
  flushIntakeShapeFactor,
  freeSurfaceMethod,
  gardnerConductivity,
  gloverDummSpacing,
  gradedLines,
  headAt,
  headLeftUnderFloor,
  hooghoudtSeries,
  hooghoudtSpacing,
  intakeShapeFactor,
  interceptedFlow,
  kirkhamHead,
  kirkhamMethod,
  kirkhamTerm,
  linerUplift,
  lonePipeDrawdown,
  lonePipeRelief,
  loweringAt,
  phreaticLine,
  pondSection,
  runSection,
  saturatedSectionMethod,
  sichardtRadius,
  soakedGroundInflow,
  soakedRowTerm,
  solveFreeSurface,
  solveSaturated,
  transientSectionMethod,
  USUAL_FINENESS,
} from './seepage/index.js';
export type * from './site/index.js';
export {
  digWindow,
  digWindowMethod,
  dipReading,
  evidenceAgainstEvidence,
  highEvidenceMethod,
  letFall,
  pondGroundMethod,
  pondGroundOf,
  pondYearsMethod,
  pooledDipsMethod,
  recoveredLevelMethod,
  seasonRankMethod,
  siteModel,
  soilTestReading,
  spotHeadMethod,
  strengthAt,
  tubInflow,
  tubYearMethod,
  unknownsMethod,
  waterEnsemble,
  wetWinterScaling,
} from './site/index.js';
export * from './soil/index.js';
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
export type * from './text/index.js';
export {
  ADVICE_NAMES,
  adviceWords,
  BULGE_NEVER,
  BULGE_REMEDY,
  bedWords,
  chanceText,
  conditionText,
  DRIVER_NAMES,
  dischargeWords,
  drainWords,
  FALL_NAMES,
  FLOTATION_NAMES,
  FLOTATION_WORDS,
  GOVERNS_WORDS,
  GRADING_FAULTS,
  LINK_NAMES,
  linkWords,
  listText,
  loweringWords,
  MEASURE_NAMES,
  MOVED_NAMES,
  measurementText,
  monthName,
  monthShort,
  monthWords,
  nextWords,
  obstacleText,
  READINGS,
  reasonText,
  ruleText,
  ruleWords,
  SITUATION_NAMES,
  SOURCE_NAMES,
  sentence,
  soakawayWords,
  spotText,
  TASKS,
  todayWords,
  turnWords,
  upliftLine,
  verdictWords,
  WATER_NAMES,
  WHY_WORDS,
  yearWords,
} from './text/index.js';
export * from './units/index.js';
export * from './uplift/index.js';
export type * from './works/index.js';
