/** A slip of the survey is told in the head of the page, not at its end alone. */
import { expect, test } from 'vitest';
import { doubtedWords } from '../../lib/text/doubtedSurvey.js';
import { briefDemo, edited } from '../folder.js';
import { printed } from '../steps/printed.js';

const head = (files: Record<string, string>) => {
  const page = printed(files, 16).text('metric');
  return page.slice(0, page.indexOf('How often it fails'));
};

test('a survey without slips is not to be checked, one with a depth of four metres is', () => {
  const files = briefDemo('clay-slope');
  expect(head(files)).not.toContain('Check the survey first');
  const deep = edited(files, 'pond.csv', (t) => t.replace(/^depth,[\d.]+/m, 'depth,4'));
  expect(head(deep)).toMatch(
    /Check the survey first: pond\.csv line \d+.* look like slips, and the answer rests on them;/,
  );
});

test('one is one, and of many three are named', () => {
  const slip = (line: number) => ({ file: 'pits.csv', line, code: 'unit-doubt', message: 'doubtful' });
  expect(doubtedWords({ warnings: [slip(2), slip(2)] })).toBe(
    'Check the survey first: pits.csv line 2 looks like a slip, and the answer rests on it; why, is under “Warnings”.',
  );
  expect(doubtedWords({ warnings: [2, 3, 4, 5, 6].map(slip) })).toBe(
    'Check the survey first: pits.csv line 2, pits.csv line 3, pits.csv line 4 and 2 more look like slips, and the answer rests on them; why, is under “Warnings”.',
  );
  expect(
    doubtedWords({ warnings: [{ file: 'water.csv', line: 3, code: 'out-of-order', message: 'sorted' }] }),
  ).toBe('');
});

test('a header in another unit than its numbers', () => {
  const files = edited(briefDemo('clay-slope'), 'pits.csv', (t) =>
    t.replace('top_m,bottom_m', 'top_cm,bottom_cm'),
  );
  expect(head(files)).toContain('Check the survey first: ');
});
