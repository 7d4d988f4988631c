import { expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';

test('a survey that is used in full has no such warning', () => {
  expect(siteModel(surveyOf(baseSurvey()), { samples: 20 }).warnings).toEqual([]);
});

test('a setback without a boundary to measure it from is told', () => {
  const told = siteModel(surveyOf(withItem(baseSurvey(), 'site.csv', 'outlet_setback', '2', 'm')), {
    samples: 20,
  }).warnings;
  expect(told.map((w) => [w.code, w.file, w.message])).toEqual([
    ['not-used', 'site.csv', expect.stringContaining('no boundary points')],
  ]);
});

test('a word on the way to an outlet is told where there is none', () => {
  const files = withItem(baseSurvey(), 'site.csv', 'outlet_within_boundary', 'yes');
  expect(siteModel(surveyOf(files), { samples: 20 }).warnings).toMatchObject([
    { code: 'not-used', file: 'site.csv', message: expect.stringContaining('no outlet') },
  ]);
});
