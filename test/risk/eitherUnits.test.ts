/** One judgement told in either system of units: the same things, and no unit of the other system among them. */
import { describe, expect, test } from 'vitest';
import type { Result } from '../../lib/contract/index.js';
import { assess, type Judged, judge } from '../../lib/decision/index.js';
import { bodyHtml } from '../../lib/page/pageHtml.js';
import { reportOf, resultOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { sweep } from '../sweep.js';

const GARDENS = 16;

/** A number of the other system: with its unit after it, or a length spelled out. */
const FOREIGN = {
  metric: /[\d½¼¾] ?(?:ft|in|gal|lb|yd³)(?![\w/])(?! any| every| \d)|\bfoot\b|\binch/,
  us: /\d ?(?:mm|cm|m|km|L|kPa|N|kN|m²|m³)(?![\w²³])|metre/,
} as const;

/** Everything of a result that is put into words for it. */
function sentencesOf({ recommendation, options, spots }: Result): string[] {
  return [
    recommendation.reason,
    ...recommendation.rules.map(({ text }) => text),
    ...recommendation.measure_next.map(({ what }) => what),
    ...options.flatMap(({ why_not }) => why_not ?? []),
    ...spots.map(({ reason }) => reason),
  ];
}

const foreign = (a: Judged, units: 'metric' | 'us') =>
  sentencesOf(resultOf(a, { units })).filter((text) => FOREIGN[units].test(text));

test.each(
  sweep(
    Array.from({ length: GARDENS }, (_, seed) => seed),
    4,
  ),
)('garden %i', (seed) => {
  const { files } = generatedGarden(seed);
  const judged = judge(siteModel(parseSurvey(files, { name: 'told' }), { seed: 1, samples: 16 }));
  const [metric, us] = (['metric', 'us'] as const).map((units) => resultOf(judged, { units }));
  expect(foreign(judged, 'metric')).toEqual([]);
  expect(foreign(judged, 'us')).toEqual([]);
  // The words differ, and nothing else does.
  const bare = ({ recommendation: { rules } }: Result) =>
    rules.map(({ code, subject, values }) => ({ code, subject, values }));
  expect(bare(us!)).toEqual(bare(metric!));
});

describe.each(sweep(['clay-hollow', 'clay-slope', 'loam-terrace'], 1))('%s', (name) => {
  const assessment = assess(siteModel(surveyOf(briefDemo(name)), { seed: 1, samples: 32 }));

  test('whole, with its spots and what to look up', () => {
    expect(foreign(assessment, 'metric')).toEqual([]);
    expect(foreign(assessment, 'us')).toEqual([]);
  });

  test('rules of the page in feet and inches hold no metric length', () => {
    const { survey } = assessment.site;
    const data = { survey, seed: 1, samples: 32, version: '', leftOut: [] };
    const html = bodyHtml(
      {
        report: reportOf(assessment, { units: 'us' }),
        worked: workedSheet(assessment, 'us'),
        photos: {},
        survey,
      },
      data,
      'us',
    ).html;
    const rules = /id="do"[\s\S]*?<\/section>/.exec(html)![0].replace(/<[^>]+>/g, ' ');
    expect(rules.length).toBeGreaterThan(200);
    expect(FOREIGN.us.exec(rules)).toBeNull();
  });
});
