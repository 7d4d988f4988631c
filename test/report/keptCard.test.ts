/** What is judged safe as the pond is kept, the card allows; and never lower than the water. */
import { describe, expect, test } from 'vitest';
import { loweringYear } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { flush } from '../risk/flush.js';

const reported = (files: Record<string, string>) =>
  reportOf(judge(siteModel(surveyOf(files), { samples: 64 })));

/** Full at the ground, its own water all that holds the liner down, held some way below full. */
const held = (below: number, water: number) => {
  const files = withItem(
    baseSurvey({ depth: water, spread: 0.02, level: 0 }),
    'pond.csv',
    'highest_raise',
    '0.2',
    'm',
  );
  const { 'pond.csv': pond = '', ...others } = files;
  const kept = { ...others, 'pond.csv': pond.replace(/usual_drawdown,.*\n/, '') };
  return withItem(kept, 'pond.csv', 'kept_within', `${below}`, 'm');
};

const SITES: [string, Record<string, string>][] = [
  ...[0.05, 0.1, 0.15].flatMap((below) =>
    [0.08, 0.14, 0.2, 0.3].map((water): [string, Record<string, string>] => [
      `kept within ${below} m, water ${water} m down`,
      held(below, water),
    ]),
  ),
  ['topped up in daily weather', flush('kept_within', '0.05', { ring: '0.3', level: '0.15' })],
];

/** Months that the card was held against, and rules. */
const seen = { months: 0, brim: 0 };

describe.each(SITES)('%s', (_, files) => {
  const report = reported(files);
  const { situations, recommendation } = report.result;
  const rows = situations.filter(({ of }) => of === 'recommended');
  const full = report.pond.full_level_m + recommendation.raise_m;
  const year = rows.find(({ situation, month }) => situation === 'drawn-down' && month === null);

  test('the card lets it be as low as it is kept, and no lower than the water', () => {
    for (const { month, below } of loweringYear(report).works) {
      const empty = rows.find((row) => row.situation === 'emptied' && row.month === month)!;
      const kept = rows.find((row) => row.situation === 'drawn-down' && row.month === month)!;
      if (empty.lowest_level_m === null) continue;
      // The card is told to the centimetre, down.
      if (year!.allowed && kept.margin_m! >= 0) seen.months++;
      if (year!.allowed && kept.margin_m! >= 0)
        expect(below!).toBeGreaterThan(full - kept.level_m - 0.01 - 1e-9);
      expect(full - below!).toBeGreaterThanOrEqual(Math.min(kept.water!.level_m, full) - 1e-6);
    }
  });

  test('nor does a rule ask for the brim where it is kept below it', () => {
    const rule = recommendation.rules.find(({ code }) => code === 'keep-above-level');
    if (rule?.code !== 'keep-above-level' || rule.subject !== 'brim' || !year!.allowed) return;
    for (const month of rule.values.brim) {
      const kept = rows.find((row) => row.situation === 'drawn-down' && row.month === month)!;
      if (kept.margin_m! >= 0) expect(full - kept.level_m).toBeLessThan(0.01);
      seen.brim++;
    }
  });
});

test('months were held against it', () => {
  expect(seen.months).toBeGreaterThan(20);
});
