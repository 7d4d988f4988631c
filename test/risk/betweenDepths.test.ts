import { expect, test } from 'vitest';
import { possibleOption } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { verdictAt } from '../../lib/reliability/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { wishWords } from '../../lib/text/asked.js';
import { headlineOf } from '../../lib/text/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Depths are judged 5 cm apart; a wish may lie between two of them. */
const wishing = (depth: number, emptied: string) => {
  const base = baseSurvey({ depth: 0.5, spread: 0.05 });
  const files = withItem(
    withItem(base, 'pond.csv', 'depth', `${depth}`, 'm'),
    'pond.csv',
    'emptied_in',
    emptied,
  );
  return judge(siteModel(surveyOf(withItem(files, 'pond.csv', 'days_empty', '10', 'd')), { samples: 32 }));
};

test('of a wish between two depths it is told as of them that emptied as wished the liner lifts', () => {
  for (const depth of [0.75, 0.762, 0.7874, 0.8]) {
    const report = reportOf(wishing(depth, '3'));
    expect(report.result.recommendation).toMatchObject({ option: 'no-drain', depth_m: depth });
    const { margin } = headlineOf(report);
    expect(margin, `${depth}`).toMatch(
      /^Emptied as wished, the liner lifts .* (most years|every year)\. For that /,
    );
    expect(margin).not.toMatch(/Stop there/);
    expect(wishWords(report, 'metric')).toMatch(/Used as wished, with nothing done: no, only/);
  }
});

test('a wish between two depths is safe where it was judged safe, and no deeper than that is told', () => {
  // Ground that may not be dug from 1.5 m on as steep as drawn: 1.4732 m lies beyond the last depth that holds.
  const { curves } = wishing(1.4, 'never');
  const last = curves[0]!.depth_m[curves[0]!.safe.indexOf(false) - 1]!;
  let between = 0;
  for (const more of [0.0127, 0.0254, 0.0381]) {
    const depth = Number((last + more).toFixed(4));
    const judged = wishing(depth, 'never');
    const { safe } = verdictAt(judged.basis, NOTHING, depth);
    const report = reportOf(judged);
    const told = possibleOption(report.result, 'no-drain')!.safe_depth_m!;
    expect(told, `${depth}`).toBeCloseTo(safe ? depth : last, 5);
    if (!safe) continue;
    between++;
    expect(wishWords(report, 'metric')).toMatch(/^With nothing done: yes/);
    expect(headlineOf(report).margin).toMatch(/deeper/);
  }
  expect(between).toBeGreaterThan(0);
});
