export { CONSEQUENCE_WORDS, CONSEQUENCES, type Consequence, consequenceOf } from './consequence.js';
export { SURVEY_FILES, type SurveyFile } from './folder.js';
export { MOST_BYTES } from './limits.js';
export { formatProblem, formatWarning, type Problem, placeText, SurveyError } from './problem.js';
export { parseSurvey } from './read.js';
export * from './survey.js';
