import { expect, test } from 'vitest';
import { suggest } from '../../lib/survey/suggest.js';

test.each([
  ['lenght', 'length'],
  ['Depth', 'depth'],
  ['botom_m', 'bottom_m'],
  ['wdith', 'width'],
  ['colour', undefined],
  ['', undefined],
])('%s -> %s', (written, meant) => {
  expect(suggest(written, ['length', 'width', 'depth', 'bottom_m'])).toBe(meant);
});

test('the nearest wins, the first of equals', () => {
  expect(suggest('silty clay', ['clay', 'silt', 'silty clay loam', 'silty clay'])).toBe('silty clay');
  expect(suggest('P3', ['P1', 'P2'])).toBe('P1');
});
