export { pageHtml } from './pageHtml.js';
export { type UpliftCheck, upliftCheck } from './upliftCheck.js';
export { advisedOption, type VerdictWords, verdictWords } from './verdict.js';
export { waterYearCsv } from './waterYearCsv.js';
