import { expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';

test('what is read and not used is told, with its place', () => {
  const files = withItem(baseSurvey(), 'site.csv', 'wet_plants', 'yes');
  const told = siteModel(surveyOf(files), { samples: 20 }).warnings.filter((w) => w.code === 'not-used');
  expect(told.map((w) => [w.file, w.line])).toEqual([
    ['site.csv', files['site.csv'].trim().split('\n').length],
  ]);
});

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
