/** Reports of the demos and of generated gardens, for the figures that are drawn by hand. */
import type { Report } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { sweep } from '../sweep.js';

const DEMOS = ['clay-hollow', 'clay-slope', 'loam-terrace'];
/** There already, above the ground, raised, in feet, deep, without ring, barred, with a seam: one of each at least. */
const SEEDS = [301, 304, 306, 310, 312, 313, 316, 320];

let made: [name: string, report: Report][] | undefined;

/** Every report by its name, made once. */
export function drawnGardens(): [name: string, report: Report][] {
  made ??= [
    ...DEMOS.map((name): [string, Report] => [name, reportFor(surveyOf(briefDemo(name)))]),
    ...sweep(SEEDS, 4).map((seed): [string, Report] => [
      `garden ${seed}`,
      reportFor(parseSurvey(generatedGarden(seed).files)),
    ]),
  ];
  return made;
}

function reportFor(survey: ReturnType<typeof surveyOf>): Report {
  return reportOf(judge(siteModel(survey, { seed: 1, samples: 64 })));
}
