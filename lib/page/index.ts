export { upliftLine } from './checkSection.js';
export { type PageOptions, pageHtml } from './pageHtml.js';
export { pondCardHtml } from './pondCard.js';
export type { Photos } from './record.js';
export { todayWords } from './today.js';
export { advisedOption, type VerdictWords, verdictWords } from './verdict.js';
export { waterYearCsv } from './waterYearCsv.js';
export { explorer, type WhatIf, whatIf } from './whatIf.js';
export { workedCsv } from './workedCsv.js';
