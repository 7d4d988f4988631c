import { CONSEQUENCE_WORDS, consequenceOf, placeText, SurveyError, type Warning } from '../survey/index.js';
import type { Table } from './table.js';

const PLACE = { key: 'place', label: 'where' };
const CODE = { key: 'code', label: 'code' };
const MESSAGE = { key: 'message', label: 'what is told' };

/**
 * What keeps a survey from being read, the farthest-reaching first, or what was noticed in one that was read.
 * @param told a survey refused, or anything that carries warnings: a survey, a site, a result
 * @returns a row each: of a refusal also what it costs, what was found and expected, and what to do
 */
export function findingsTable(told: SurveyError | { warnings: readonly Warning[] }): Table {
  if (!(told instanceof SurveyError))
    return {
      name: 'Noticed in the survey',
      columns: [PLACE, CODE, MESSAGE],
      rows: told.warnings.map((warning) => [placeText(warning), warning.code, warning.message]),
    };
  return {
    name: 'Why the survey is refused',
    columns: [
      { key: 'cost', label: 'what it costs' },
      PLACE,
      CODE,
      { key: 'found', label: 'found' },
      MESSAGE,
      { key: 'expected', label: 'expected' },
      { key: 'remedy', label: 'what to do' },
    ],
    rows: told.problems.map((problem) => [
      CONSEQUENCE_WORDS[consequenceOf(problem)],
      placeText(problem),
      problem.code,
      problem.found ?? null,
      problem.message,
      problem.expected ?? null,
      problem.remedy,
    ]),
  };
}
