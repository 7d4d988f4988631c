import { expect, test } from 'vitest';
import { findingsTable, tableText } from '../../lib/figures/index.js';
import { SurveyError } from '../../lib/survey/index.js';
import { GOOD, problems, read } from '../survey/folder.js';

test('a refusal: every problem with place, cost, found, expected and what to do, the farthest-reaching first', () => {
  const all = problems({
    'pond.csv': `${GOOD['pond.csv']}lenght,4,m,\nmargin,9,m,\n`,
    'levels.csv': '',
  });
  const table = findingsTable(new SurveyError(all, []));
  expect(table.rows.map(([cost, place, code]) => [cost, place, code])).toEqual([
    ['a whole file is lost', 'levels.csv', 'empty-file'],
    ['a column, or a fact the answer needs, is lost', 'pond.csv:6 item', 'unknown-item'],
    ['a single cell is lost', 'pond.csv:7 value', 'outside-range'],
  ]);
  expect(table.rows[2]?.slice(3)).toEqual([
    '9',
    "outside '9' - 0 to 1 m is possible",
    '0 to 1 m',
    'Check the number and its unit.',
  ]);
  expect(tableText(table)).toContain("Did you mean 'length'?");
});

test('a survey that was read: what was noticed', () => {
  const survey = read({ 'levls.csv': 'x' });
  expect(findingsTable(survey).rows).toEqual([
    ['levls.csv', 'unknown-file', expect.stringContaining("did you mean 'levels.csv'?")],
  ]);
});
