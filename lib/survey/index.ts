export { SURVEY_FILES, type SurveyFile } from './folder.js';
export { formatProblem, type Problem, SurveyError } from './problem.js';
export { parseSurvey } from './read.js';
export * from './survey.js';
