/** The formulas, stores and solvers by room, for those who want to calculate for themselves: numbers in, numbers out. */
export * as climate from './climate/index.js';
export * as drain from './drain/index.js';
export { catalogue, type Formula, FormulaError, formula, type Method, method } from './formula/index.js';
export * as groundwater from './groundwater/index.js';
export * as pond from './pond/index.js';
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
  dupuitWell,
  equivalentDepth,
  equivalentDepthMethod,
  ernstHead,
  flushIntakeShapeFactor,
  freeSurfaceMethod,
  gardnerConductivity,
  gloverDummSpacing,
  hooghoudtSeries,
  hooghoudtSpacing,
  intakeShapeFactor,
  interceptedFlow,
  kirkhamHead,
  kirkhamMethod,
  kirkhamTerm,
  loweringAt,
  saturatedSectionMethod,
  sichardtRadius,
  transientSectionMethod,
} from './seepage/index.js';
export { digWindow, letFall, strengthAt, tubInflow } from './site/index.js';
export * as soil from './soil/index.js';
export { InputError } from './units/index.js';
export * as uplift from './uplift/index.js';
