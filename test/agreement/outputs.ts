/** Every output of a survey, as it is handed over. */
import { judge } from '../../lib/decision/index.js';
import { pageHtml, pondCardHtml, shoppingCsv, waterYearCsv, workedCsv } from '../../lib/page/index.js';
import { reportOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { answerLines } from '../../lib/text/answerLines.js';
import { yearWords } from '../../lib/text/yearWords.js';

/** A notebook shows the tables and words of the page; what is read here is what the page, card and files hold. */
export interface Outputs {
  result: string;
  pages: { metric: string; us: string };
  cards: { metric: string; us: string };
  lines: { metric: string[]; us: string[] };
  years: { metric: string[]; us: string[] };
  waterYear: string;
  worked: string;
  shopping: string | null;
  /** of the survey, which tells how others are to be read: full level and wish, m; it is there already; it is never emptied, or in any month */
  pond: { full: number; depth: number; existing: boolean; never: boolean; any: boolean };
  days: number;
}

export type Report = ReturnType<typeof reportOf>;

export function outputsOf(
  files: Record<string, string | Uint8Array>,
  samples: number,
  changed: (report: Report) => Report = (report) => report,
): Outputs {
  const assessment = judge(siteModel(parseSurvey(files, { name: 'read' }), { seed: 1, samples }));
  const both = <T>(make: (units: 'metric' | 'us', report: Report) => T) => ({
    metric: make('metric', reports.metric),
    us: make('us', reports.us),
  });
  const reports = {
    metric: reportOf(assessment, { units: 'metric' }),
    us: changed(reportOf(assessment, { units: 'us' })),
  };
  const { pond, result } = reports.metric;
  return {
    result: JSON.stringify(reports.metric.result),
    pages: both((units, report) =>
      pageHtml(report, { worked: workedSheet(assessment, units), version: '0.0.0' }),
    ),
    cards: both((_, report) => pondCardHtml(report)),
    lines: both((units, report) => answerLines(report.result, units)),
    years: both((units, report) => yearWords(report, units)),
    waterYear: waterYearCsv(reports.metric),
    worked: workedCsv(workedSheet(assessment)),
    shopping: result.build ? shoppingCsv(result.build.quantities) : null,
    pond: {
      full: pond.full_level_m,
      depth: pond.depth_m,
      existing: pond.existing,
      never: pond.emptied_in !== 'any' && pond.emptied_in.length === 0,
      any: pond.emptied_in === 'any',
    },
    days: pond.days_empty,
  };
}
