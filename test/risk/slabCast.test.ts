import { describe, expect, test } from 'vitest';
import { assess, judge } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { castStep } from '../../lib/text/slabWords.js';
import { edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Water at the ground in winter, and so deep in August, m; a slab of the full pond would hold. */
function survey(august: number, mains: string) {
  const rows = Array.from({ length: 12 }, (_, m) => `site,${m + 1},${m === 7 ? august : 0},0.03,six winters`);
  const files = edited(
    ['mains_power', 'discharge_allowed'].reduce<Record<string, string>>(
      (all, item) => withItem(all, 'site.csv', item, mains),
      baseSurvey({ level: -0.05, drawdown: 0 }),
    ),
    'heads.csv',
    () => `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
  );
  return withItem(withItem(files, 'pond.csv', 'emptied_in', 'never'), 'pond.csv', 'highest_raise', '0', 'm');
}

describe('a slab', () => {
  test.each([
    [0.3, 'no', false],
    [0.3, 'yes', true],
    [1.6, 'no', true],
  ])('water in August %s m down, mains %s: it may be had at the wish is %s', (august, mains, had) => {
    const { decision, curves } = judge(siteModel(surveyOf(survey(august, mains)), { samples: 64 }));
    const slab = curves.find(({ option }) => option === 'ballast')!;
    const at = slab.depth_m.findIndex((depth) => Math.abs(depth - 1) < 1e-9);
    expect(slab.governs[at] !== 'wet-dig').toBe(had);
    if (!had) expect(decision.measures.ballast > 0 && decision.depth === 1).toBe(false);
  });

  test('that is advised without mains power has a month to be cast in', () => {
    for (const august of [0, 0.3, 0.6, 0.9, 1.3]) {
      const report = reportOf(assess(siteModel(surveyOf(survey(august, 'no')), { samples: 64 })));
      expect(castStep(report), `${august} m`).not.toMatch(/kept pumped/);
    }
  });
});
