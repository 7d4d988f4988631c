import { expect, test } from 'vitest';
import { duringMonths } from '../../lib/text/index.js';

test.each([
  [[5], 'in May'],
  [[6, 7, 8, 9], 'from June to September'],
  [[10, 11, 12, 1, 2], 'from October to February'],
  [[3, 5], 'in March and May'],
  [[3, 5, 8], 'in March, May and August'],
  [[5, 7, 8, 9], 'in May and from July to September'],
  [[1, 2, 5, 6, 9], 'from January to February, from May to June and in September'],
  [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 'all year'],
])('months %j are said as %s', (months, said) => {
  expect(duringMonths(months)).toBe(said);
});
