/** underpond: what groundwater will do to a lined pond, and what to do about it. The part that runs anywhere. */
export * from './formula/index.js';
export * from './risk/index.js';
export * from './site/index.js';
export { parseSurvey, SurveyError, type Survey } from './survey/index.js';
export * from './units/index.js';
