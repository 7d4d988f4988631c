import { CONSEQUENCE_WORDS, consequenceOf, placeText, SurveyError, type Warning } from '../survey/index.js';
import type { Table } from './table.js';

/**
 * What is wrong or odd in a survey, a row each, the farthest-reaching first.
 * @param told a survey refused, or anything that carries warnings: a survey, a site, a result
 * @returns place, what it costs, what was found, what was expected and what to do
 */
export function findingsTable(told: SurveyError | { warnings: readonly Warning[] }): Table {
  const problems = told instanceof SurveyError ? told.problems : [];
  return {
    name: problems.length > 0 ? 'Why the survey was refused' : 'What was noticed in the survey',
    columns: [
      { key: 'place', label: 'where' },
      { key: 'cost', label: 'what it costs' },
      { key: 'code', label: 'code' },
      { key: 'found', label: 'found' },
      { key: 'message', label: 'what is wrong' },
      { key: 'expected', label: 'expected' },
      { key: 'remedy', label: 'what to do' },
    ],
    rows: [
      ...problems.map((problem) => [
        placeText(problem),
        CONSEQUENCE_WORDS[consequenceOf(problem)],
        problem.code,
        problem.found ?? null,
        problem.message,
        problem.expected ?? null,
        problem.remedy,
      ]),
      ...told.warnings.map((warning) => [
        placeText(warning),
        'read, but worth a look',
        warning.code,
        null,
        warning.message,
        null,
        null,
      ]),
    ],
  };
}
