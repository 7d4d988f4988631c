import { describe, expect, test } from 'vitest';
import { assess, judge, toppedUpSooner } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { verdictAt } from '../../lib/reliability/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';
import { flush } from './flush.js';

const judged = (files: Record<string, string>) => judge(siteModel(surveyOf(files), { samples: 32 }));

describe('the least change that makes it safe', () => {
  const scrape = judged(flush('usual_drawdown', '0.4'));

  test('is to keep it full, where what it lacks is what lifts it: no concrete, no other spot', () => {
    const told = recommend(scrape);
    expect(told).toMatchObject({
      option: 'no-drain',
      depth_m: 1,
      change: { kept_within_m: 0.05 },
    });
    expect(told.reason).toMatch(/As wished, .*lift the liner nearly every year\. As wished but topped up/);
    expect(told.rules.map(({ code }) => code)).toContain('full-before-rains');
    expect(scrape.decision.verdict!.chance.perYear).toBeLessThanOrEqual(0.02);
  });

  test('is safe by the chance of a survey that says so', () => {
    const said = judged(flush('kept_within', '0.05'));
    expect(recommend(said).change).toBeNull();
    const first = toppedUpSooner(scrape.basis)!;
    expect(verdictAt(first.basis, NOTHING, 1).chance.perYear).toBe(
      verdictAt(said.basis, NOTHING, 1).chance.perYear,
    );
  });

  test('is none where nothing is to be changed', () => {
    expect(recommend(judged(baseSurvey({ depth: 0.5, level: 0 }))).change).toBeNull();
  });

  test('is another month, where a ditch, a pump or a slab would be needed for the one wished', () => {
    const wet = judged(inMonths({ wet: 0.1, dry: 1.6 }, '3'));
    expect(wet.decision.verdict!.safe).toBe(true);
    const told = recommend(wet);
    expect(told).toMatchObject({ option: 'no-drain', depth_m: 1, change: { emptied_in: [8] } });
    expect(told.reason).toMatch(/As wished, .* As wished but emptied in August instead it holds/);
    const rule = told.rules.find(({ code }) => code === 'empty-only-in')!;
    expect(rule.months).toContain(8);
    expect(rule.months).not.toContain(3);
    // As a survey that wishes it so.
    const said = judged(inMonths({ wet: 0.1, dry: 1.6 }, '8'));
    expect(said.decision.verdict!.chance.perYear).toBe(wet.decision.verdict!.chance.perYear);
    expect(recommend(said).change).toBeNull();
  });

  test('is fewer days, where no month is dry and the clay gives little in a weekend', () => {
    const files = inMonths({ wet: 0.5, dry: 0.5 }, '8', '1e-9');
    const long = judged(withItem(files, 'pond.csv', 'days_empty', '60', 'd'));
    const told = recommend(long);
    expect(told).toMatchObject({ option: 'no-drain', change: { days_empty: 2 } });
    expect(told.rules.map(({ text }) => text).join()).toMatch(/for at most 2 days/);
    expect(recommend(judged(withItem(files, 'pond.csv', 'days_empty', '2', 'd'))).change).toBeNull();
  });

  test('is two things, where it fails as it is kept and as it is emptied', () => {
    const files = withItem(inMonths({ wet: 0.25, dry: 1.6 }, '3'), 'pond.csv', 'usual_drawdown', '0.5', 'm');
    const told = recommend(judged(files));
    expect(told.change).toEqual({ emptied_in: [8], kept_within_m: 0.05 });
    expect(told.reason).toMatch(/emptied in August instead and topped up whenever it has fallen by/);
  });

  test('is tried with less depth before another spot', () => {
    // Loose ground, wet in March and all through a metre: too much water to dig so deep, emptied in March it lifts.
    const rows = [0.3, 0.3, 0.35, 0.4, 0.5, 0.6, 0.68, 0.72, 0.7, 0.6, 0.45, 0.35];
    const base = inMonths({ wet: 0.3, dry: 0.7 }, '3', '5e-6');
    const at = (depth: string, month: string) => {
      const files = {
        ...base,
        'heads.csv': `place,month,depth_m,spread_m,source\n${rows.map((z, m) => `site,${m + 1},${z},0.04,pipe`).join('\n')}\n`,
      };
      const wished = withItem(
        withItem(files, 'pond.csv', 'depth', depth, 'm'),
        'pond.csv',
        'emptied_in',
        month,
      );
      return judged(withItem(wished, 'pond.csv', 'days_empty', '10', 'd'));
    };
    const wish = at('1', '3');
    const told = recommend(wish);
    expect(told).toMatchObject({ option: 'shallower', change: { emptied_in: [8] } });
    expect(told.depth_m).toBeLessThan(1);
    expect(told.reason).toMatch(/As wished but dug 0\.\d+ m deep and emptied in August instead it holds/);
    // A survey that wishes just that is safe, by the same chance.
    const said = at(`${told.depth_m}`, '8');
    expect(recommend(said)).toMatchObject({ option: 'no-drain', change: null });
    expect(said.decision.verdict!.chance.perYear).toBeCloseTo(wish.decision.verdict!.chance.perYear, 9);
  });

  test('is told beside a drain, which serves the wish as it is', () => {
    const drained = {
      ...withItem(inMonths({ wet: 0.1, dry: 1.6 }, '3'), 'site.csv', 'discharge_allowed', 'yes'),
      'levels.csv':
        'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\nout,outlet,9,8.4\nbeck,ditch,9,8.1\nmark,flood,9,8.35\n',
    };
    const a = assess(siteModel(surveyOf(drained), { samples: 32 }));
    expect(a.decision).toMatchObject({ option: 'drain-to-outlet' });
    expect(a.instead).toMatchObject({ change: { emptied_in: [8] }, option: 'no-drain' });
    expect(resultOf(a).instead).toEqual(a.instead);
    // Nothing is told beside what needs no drain.
    expect(assess(scrape.site).instead).toBeNull();
  });
});

/** Water known month by month, high in all months but July to September; emptied in a month for a weekend. */
function inMonths({ wet, dry }: { wet: number; dry: number }, emptied: string, ksat = '1e-7') {
  const rows = Array.from(
    { length: 12 },
    (_, m) => `site,${m + 1},${[6, 7, 8].includes(m) ? dry - 0.1 * Math.abs(m - 7.4) : wet},0.03,pipe`,
  );
  const base = baseSurvey({ level: 0 });
  const files = {
    ...base,
    'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
    'pits.csv': base['pits.csv']!.replace('1e-7', ksat),
  };
  return withItem(withItem(files, 'pond.csv', 'emptied_in', emptied), 'pond.csv', 'days_empty', '3', 'd');
}
