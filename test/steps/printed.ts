import { assess } from '../../lib/decision/index.js';
import { pageHtml, pondCardHtml, yearlyHeadsCsv } from '../../lib/page/index.js';
import { reportOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import type { UnitSystem } from '../../lib/units/index.js';
import { surveyOf } from '../folder.js';
import type { Beside } from './parse.js';
import { textOf } from './textOf.js';

/** A page's text in a system of units, and what it is held against. */
export function printed(files: Record<string, string>, samples: number) {
  const assessment = assess(siteModel(surveyOf(files), { samples }));
  const worked = workedSheet(assessment);
  const text = (units?: UnitSystem) =>
    textOf(
      pageHtml(reportOf(assessment, units && { units }), {
        worked: workedSheet(assessment, units),
        version: '0',
      }),
    );
  const beside: Beside = { files, heads: yearlyHeadsCsv(worked, assessment.site.water) };
  const card = (units: UnitSystem) => textOf(pondCardHtml(reportOf(assessment, { units })));
  return { assessment, worked, text, card, beside };
}
