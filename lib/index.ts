/** underpond: what groundwater will do to a lined pond, and what to do about it. The part that runs anywhere. */
export * from './climate/index.js';
export * from './drain/index.js';
export * from './figures/index.js';
export * from './formula/index.js';
export * from './groundwater/index.js';
export * from './page/index.js';
export * from './risk/index.js';
export { type Percentiles, percentiles } from './sampling/index.js';
export * from './seepage/index.js';
export * from './site/index.js';
export * from './soil/index.js';
export { parseSurvey, type Survey, SurveyError } from './survey/index.js';
export * from './units/index.js';
export * from './uplift/index.js';
