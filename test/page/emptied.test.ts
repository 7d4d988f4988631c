import { describe, expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { reportOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { answerLines } from '../../lib/text/answerLines.js';
import { headlineOf } from '../../lib/text/headline.js';
import { duringMonths } from '../../lib/text/index.js';
import { verdictWords } from '../../lib/text/verdictWords.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { sweep } from '../sweep.js';

/** Water that swings between two depths, m below the ground, deepest in August; emptied then. */
function swinging(wet: number, dry: number, depth: number): Record<string, string> {
  const rows = Array.from({ length: 12 }, (_, m) => {
    const share = (1 - Math.cos(((m - 1) * Math.PI) / 6)) / 2;
    return `site,${m + 1},${(wet + (dry - wet) * share).toFixed(3)},0.1,six winters in a sealed pipe`;
  });
  const files = {
    ...baseSurvey({ level: -0.05 }),
    'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
  };
  return withItem(withItem(files, 'pond.csv', 'depth', `${depth}`, 'm'), 'pond.csv', 'emptied_in', '8');
}

const reported = (files: Record<string, string>) =>
  reportOf(assess(siteModel(surveyOf(files), { samples: 64 })));

/** The sentence on the pond as recommended. */
const lastOf = (words: string) => words.split(/(?=With )/).at(-1)!;

describe('when the pond may be emptied', () => {
  test.each(
    sweep(
      [
        [0.6, 1.2, 1.4],
        [0.9, 2, 2],
      ],
      1,
    ),
  )('water between %f and %f m, %f m wished: told of the depth recommended', (wet, dry, wish) => {
    const deep = reported(swinging(wet, dry, wish));
    const { option, depth_m } = deep.result.recommendation;
    expect(option).toBe('shallower');
    const words = lastOf(verdictWords(deep).emptied);
    expect(words).toContain(`and dug ${depth_m.toFixed(2)} m deep`);

    // A survey that wishes no more is told the same.
    const wished = reported(swinging(wet, dry, depth_m));
    expect(wished.result.recommendation).toMatchObject({ option: 'no-drain', depth_m });
    const own = lastOf(verdictWords(wished).emptied);
    expect(words.replace(` and dug ${depth_m.toFixed(2)} m deep`, '')).toBe(own);
    expect(answerLines(deep.result, 'metric')[3]).toBe(answerLines(wished.result, 'metric')[3]);
  });

  test('headline, page, terminal and rules name the same months, for as long', () => {
    const said: string[] = [];
    for (const files of [
      swinging(0.6, 1.2, 1.5),
      swinging(0.6, 1.2, 1),
      swinging(0.1, 1.6, 1.5),
      swinging(0.7, 1.5, 1),
    ]) {
      const report = reported(files);
      const rule = report.result.recommendation.rules.find(({ code }) => code === 'empty-only-in')!;
      const [, only = ''] = /^Empty it (only .*?)(, and read the dip pipe first)?\.$/.exec(rule.text)!;
      expect(only).toContain(duringMonths(rule.months!.slice(0, 1)).slice(3));
      expect(answerLines(report.result, 'metric')[3]).toContain(only);
      expect(lastOf(verdictWords(report).emptied)).toContain(only);
      expect(headlineOf(report, 'metric').answer).toContain(only);
      said.push(`${rule.subject} ${only}`);
    }
    // Both a month that time alone keeps down, and months that are free but not for ever.
    expect(said.join('; ')).toMatch(/briefly only .* for at most/);
    expect(said.join('; ')).toMatch(/free only .* for at most/);
  });

  test('beside less depth that may be emptied stands the wish, never emptied, with its chance in steps', () => {
    const files = swinging(0.6, 1.2, 1.4);
    const a = assess(siteModel(surveyOf(files), { samples: 64 }));
    expect(a.instead).toMatchObject({ change: { emptied_in: [] }, option: 'no-drain' });
    expect(headlineOf(reportOf(a)).otherwise).toMatch(
      /^Or dig it 1\.40 m deep as wished, with no drain, and never empty it \(/,
    );
    // As a survey that never empties it.
    const never = assess(
      siteModel(surveyOf(withItem(files, 'pond.csv', 'emptied_in', 'never')), { samples: 64 }),
    );
    expect(never.decision).toMatchObject({ option: 'no-drain', depth: 1.4 });
    expect(a.instead!.per_year).toBeCloseTo(never.decision.verdict!.chance.perYear, 9);
    const told = workedSheet(a).flatMap(({ equals }) => equals.map(({ path }) => path));
    expect(told).toContain('instead.per_year');
  });
});
