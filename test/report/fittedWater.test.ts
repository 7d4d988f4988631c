/** The parameters of the daily water balance, as the page tells them. */
import { expect, it } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { fittedTable } from '../../lib/figures/fittedTable.js';
import { pageHtml } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf } from '../folder.js';

const report = reportOf(assess(siteModel(surveyOf(briefDemo('clay-slope')), { samples: 64 })));

it('tells every parameter that the looks could move, and what they left of it', () => {
  const { fitted } = report;
  expect(fitted.map(({ name }) => name)).toEqual(expect.arrayContaining(['porosity', 'recession', 'missed']));
  for (const { before, after } of fitted)
    for (const { p10, p50, p90 } of [before, after]) {
      expect(p10).toBeGreaterThan(0);
      expect(p50).toBeGreaterThanOrEqual(p10);
      expect(p90).toBeGreaterThanOrEqual(p50);
    }
  // A water that was looked at is known better than one that was not.
  const narrower = fitted.filter(({ before, after }) => after.p90 / after.p10 < before.p90 / before.p10);
  expect(narrower.length).toBeGreaterThan(fitted.length / 2);
});

it('tells them in either system of units, and not without the looks', () => {
  const rows = (units: 'metric' | 'us') => fittedTable(report, units).rows.map((row) => row.join(' '));
  expect(rows('metric').some((row) => / m /.test(row))).toBe(true);
  expect(rows('us').some((row) => / (mm|cm|m)[ )]/.test(row))).toBe(false);
  const shown = (leftOut: ('looks' | 'photos')[]) =>
    pageHtml(report, { worked: [], version: '0', leftOut }).includes('What was fitted of the water');
  expect(shown([])).toBe(true);
  expect(shown(['looks'])).toBe(false);
});
