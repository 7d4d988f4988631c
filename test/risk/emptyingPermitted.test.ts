import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { monthlyLimits, tooBrief, verdictAt } from '../../lib/reliability/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { headlineOf } from '../../lib/text/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const judged = (files: Files, samples = 64) => judge(siteModel(surveyOf(files), { samples }));
const set = (files: Files, items: Record<string, string>) =>
  Object.entries(items).reduce((all, [item, cell]) => {
    const [value, unit = ''] = cell.split(' ');
    return withItem(all, 'pond.csv', item, value!, unit);
  }, files);
const heads = (rows: string[]) => ({
  'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
});
const MONTHS = Array.from({ length: 12 }, (_, at) => at + 1);

describe('a pond for which no month of emptying was named', () => {
  // High in winter, below the floor from July to September.
  const levels = [0.5, 0.5, 0.5, 0.6, 0.8, 1, 1.4, 1.6, 1.4, 0.8, 0.6, 0.5];
  const base: Files = {
    ...baseSurvey({ level: 0 }),
    ...heads(levels.map((z, m) => `site,${m + 1},${z},0.05,pipe`)),
  };
  const named = (month: number) => set(base, { emptied_in: `${month}`, days_empty: '3 d' });
  const open = {
    ...base,
    'pond.csv': base['pond.csv']!.replace(/^emptied_in.*\n/m, ''),
  };
  const report = reportOf(judged(set(open, { days_empty: '3 d' })));
  const rows = report.result.situations.filter(
    ({ of, situation }) => of === 'recommended' && situation === 'emptied',
  );
  const allowed = rows.filter((row) => row.allowed);

  test.each([7, 8])('fails emptied in month %i as often as one that names that month only', (month) => {
    const row = allowed.find((each) => each.month === month)!;
    const alone = verdictAt(judged(named(month)).basis, NOTHING, 1).chance.perYear;
    expect(row.chance!.middle).toBeCloseTo(alone, 9);
    expect(alone).toBeLessThanOrEqual(0.02);
  });

  test('is told by the chance of the months that are allowed, not of those that are not', () => {
    expect(allowed.length).toBeGreaterThan(0);
    expect(allowed.length).toBeLessThan(12);
    const { answer, chance } = headlineOf(report);
    expect(answer).toMatch(/^Yes, .*emptied only/);
    expect(chance).not.toMatch(/nearly every|most years/);
  });
});

describe('a floor over a seam', () => {
  const DRY = baseSurvey({ depth: 2.2, level: 0 });
  const over = (head: number, spread: number): Files => ({
    ...set(DRY, { emptied_in: '9', days_empty: '2 d' }),
    'pits.csv':
      'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa\n' +
      'P1,0,0.3,clay loam,rooted,,firm,,\nP1,0.3,1.6,clay,massive,,stiff,1e-9,60\nP1,1.6,2,sand,,,,,\n',
    'heads.csv': `${DRY['heads.csv']}below:P1,high,${head},${spread},pipe\n`,
  });

  test.each([0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.9].flatMap((head) => [0.01, 0.1].map((s) => [head, s])))(
    'may be bared just where it is counted to heave no more often than is accepted: seam to %f m ± %f',
    (head, spread) => {
      const { basis } = judged(over(head!, spread!));
      const free = monthlyLimits(basis, NOTHING, 1).lowestSafeLevel[8] === null;
      const { chance } = verdictAt(basis, NOTHING, 1);
      expect(free).toBe((chance.modes['floor-heave'] ?? 0) <= 0.02);
    },
  );

  test('keeps the water that one bad chance in fifty asks for, of head and weight together', () => {
    const { basis } = judged(over(0.3, 0.1), 1024);
    const [level] = monthlyLimits(basis, NOTHING, 1).lowestSafeLevel;
    // 0.6 m of clay, 18.5 ± 0.7 kN/m³, against 1.25 times 1.3 ± 0.1 m: the water lacking scatters normally.
    const lacks = 1.25 * 1.3 - (18.5 * 0.6) / 9.81;
    const scatter = Math.hypot(1.25 * 0.1, (0.7 * 0.6) / 9.81);
    expect(level! + 1).toBeGreaterThan(lacks + 1.8 * scatter);
    expect(level! + 1).toBeLessThan(lacks + 2.3 * scatter);
  });
});

describe('an emptying too brief for a clean-out', () => {
  const wet = (ksat: string, days: string): Files => {
    const base = set(baseSurvey({ level: 0, depth: 0.3 }), { emptied_in: '8', days_empty: days });
    return { ...base, 'pits.csv': base['pits.csv']!.replace('1e-7', ksat) };
  };

  test('is none: at 1e-5 m/s water is there within hours, at 1e-10 it takes weeks', () => {
    expect(tooBrief(judged(wet('1e-5', '3 d')).basis, NOTHING, 1)).toBe('lift');
    expect(tooBrief(judged(wet('1e-10', '3 d')).basis, NOTHING, 1)).toBeUndefined();
  });

  test('is not counted as safe where its chance alone would be accepted', () => {
    const met = ['3e-8', '1e-7', '2e-7', '4e-7', '8e-7'].flatMap((ksat) => {
      const site = siteModel(surveyOf(wet(ksat, '1 d')), { samples: 64 });
      const { basis } = judge(site, { acceptedRisk: 0.9 });
      const verdict = verdictAt(basis, NOTHING, 1);
      const within = verdict.chance.perYear <= 0.9;
      const hours = monthlyLimits(basis, NOTHING, 1).empty[7]!.seconds / 3600;
      if (within) expect(verdict.dry).toBe(hours >= 12);
      return within && hours < 12 ? [verdict] : [];
    });
    expect(met.length).toBeGreaterThan(0);
    for (const verdict of met) expect(verdict).toMatchObject({ safe: false, governs: 'lift-emptied' });
  });

  test('is offered in no month, and told once where less time is left than wished', () => {
    const rows = MONTHS.map((month) => `site,${month},0.5,0.03,pipe`);
    for (const [ksat, days] of [
      ['1e-9', '60 d'],
      ['1e-8', '30 d'],
      ['1e-8', '1 d'],
      ['1e-7', '1 d'],
    ] as const) {
      const report = reportOf(judged({ ...wet(ksat, days), ...heads(rows) }));
      for (const row of report.result.situations)
        if (row.situation === 'emptied' && row.why === 'briefly')
          expect(row.hours).toBeGreaterThanOrEqual(12);
      const { answer } = headlineOf(report);
      expect(answer.match(/at most/g)?.length ?? 0).toBeLessThanOrEqual(1);
    }
  });
});
