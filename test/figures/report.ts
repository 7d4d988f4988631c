/** Reports that the engine makes of invented gardens, for figures and page; a test may change what it is about. */

import type { Report } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, edited, surveyOf } from '../folder.js';
import { baseSurvey } from '../risk/base.js';

type Files = Record<string, string>;
const made = new Map<string, Report>();

/** The engine's report, made once however often it is asked for. */
function reportFor(name: string, files: () => Files): Report {
  const report = made.get(name) ?? reportOf(assess(siteModel(surveyOf(files()), { seed: 1, samples: 64 })));
  made.set(name, report);
  return structuredClone(report);
}

/** A clay slope where a drain to a ditch is the answer, a fence behind the ditch, a photo and a note of one hole. */
export function invented(change: (report: Report) => void = () => {}): Report {
  const report = reportFor('slope', () => {
    const demo = briefDemo('clay-slope');
    const fenced = edited(
      demo,
      'levels.csv',
      (t) => `${t}fence-a,boundary,-12,-23,8.2,\nfence-b,boundary,12,-23,8.2,\n`,
    );
    const seen = edited(fenced, 'water.csv', (t) => `${t}P1,2024-09-25,09:00,strike,1.6,1.7,10,3.2,0.9,\n`);
    return edited(seen, 'pits.csv', (t) =>
      t
        .split('\n')
        .map((row, at) =>
          at === 0 ? `${row},photo` : row === '' ? row : `${row},${at === 1 ? 'p1.jpg' : ''}`,
        )
        .join('\n'),
    );
  });
  change(report);
  return report;
}

/** Water by months of an ordinary year, as where there is no weather. */
export function inventedByMonth(): Report {
  return reportFor('months', () => baseSurvey());
}
