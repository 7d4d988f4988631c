import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { recommend } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Water that swings through the year round `mean`, m below the ground, highest in January. */
const swinging = (mean: number, swing: number) => ({
  ...baseSurvey({ level: -0.05 }),
  'heads.csv': `place,month,depth_m,spread_m,source\n${Array.from(
    { length: 12 },
    (_, m) =>
      `site,${m + 1},${(mean - swing * Math.cos((m * Math.PI) / 6)).toFixed(3)},0.1,six winters in a sealed pipe`,
  ).join('\n')}\n`,
});

const judged = (files: Record<string, string>) => judge(siteModel(surveyOf(files), { samples: 64 }));

/** Months in which the hole may be dug as its own rule has it; undefined where the rule is silent. */
const told = (files: Record<string, string>) =>
  recommend(judged(files)).rules.find(({ code }) => code === 'dig-in');

/** A permeable clay: where it stands in water a pump cannot keep up. */
const leaky = (mean: number, swing: number): Record<string, string> => {
  const files: Record<string, string> = swinging(mean, swing);
  return { ...files, 'pits.csv': files['pits.csv']!.replace('1e-7', '2e-4') };
};

describe('the months to dig in', () => {
  test.each([
    ['water that comes fast in winter', leaky(1, 0.6)],
    ['water that comes fast, later in the year', leaky(1.25, 0.6)],
  ])('%s: they are those in which a survey that names one of them may be dug', (_, files) => {
    const rule = told(files)!;
    expect(rule.text).toMatch(/^Dig it (in|from) .*: in the other months more water may come in/);
    for (let month = 1; month <= 12; month++) {
      const { decision } = judged(withItem(files, 'pond.csv', 'built_in', `${month}`));
      const diggable = decision.depth === 1 && decision.verdict!.diggable && !decision.change;
      expect(diggable, `month ${month}`).toBe(rule.months!.includes(month));
    }
  });

  test('are not spoken of where every month will do; one that is named is told', () => {
    expect(told(swinging(1.8, 0.2))).toBeUndefined();
    expect(told(withItem(leaky(1, 0.6), 'pond.csv', 'built_in', '8'))).toMatchObject({
      subject: 'planned',
      months: [8],
    });
  });
});
