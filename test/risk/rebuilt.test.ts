/** A pond that is there is rebuilt only when it can be emptied for that, and whoever reads the answer is told when. */
import { describe, expect, test } from 'vitest';
import { judge, rulesOf } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { verdictAt } from '../../lib/reliability/index.js';
import { recommend, reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { answerLines, headlineOf } from '../../lib/text/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const judged = (files: Files) => judge(siteModel(surveyOf(files), { samples: 64 }));

const SUMMER = [7, 8, 9];
const monthly = (place: string, winter: number, summer: number) =>
  Array.from(
    { length: 12 },
    (_, m) => `${place},${m + 1},${SUMMER.includes(m + 1) ? summer : winter},0.03,sealed pipe`,
  );

/** 1 m deep, kept up to 15 cm below the ground, in clay whose water stands 5 cm below it in winter. */
function there({ summer = 0.05, seam, clay = 'stiff', outlet, raise = 0, ksat = '1e-7' }: There): Files {
  const base = baseSurvey({ level: 0, drawdown: 0.15 });
  const kpa = clay === 'stiff' ? 60 : 9;
  const top = seam ? 1.3 : 2.6;
  const files: Files = {
    ...base,
    'pits.csv': `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa
P1,0,0.25,clay loam,rooted,none,firm,,
P1,0.25,${top},clay,blocky,,${clay},${ksat},${kpa}
${seam ? 'P1,1.3,2.2,sand,,,,,\nP1,2.2,3,clay,massive,,stiff,,\n' : ''}`,
    'heads.csv': `place,month,depth_m,spread_m,source\n${[
      ...monthly('site', 0.05, summer),
      ...(seam ? monthly('below:P1', ...seam) : []),
    ].join('\n')}\n`,
    'levels.csv': `${base['levels.csv']}${outlet ? 'out,outlet,18,8.3\nd,ditch,18.5,8.1\nf,flood,18.5,8.2\n' : ''}`,
  };
  const raised = withItem(
    withItem(files, 'pond.csv', 'state', 'existing'),
    'pond.csv',
    'highest_raise',
    `${raise}`,
    'm',
  );
  return withItem(raised, 'site.csv', 'discharge_allowed', outlet ? 'yes' : 'no');
}

interface There {
  /** depth of the water from July to September, m */
  summer?: number;
  /** depth of the water of a seam, in winter and then, m */
  seam?: [winter: number, summer: number];
  clay?: 'stiff' | 'soft';
  ksat?: string;
  outlet?: boolean;
  raise?: number;
}

const SITES: [string, There, subject: string, months: number[] | undefined][] = [
  // Clay that is wet all year lifts an empty liner in every month; with the liner out it is a hole in stiff clay.
  ['a slab in wet clay', {}, 'pumped', undefined],
  ['a raised rim in wet clay', { raise: 0.5 }, 'opened', undefined],
  ['a drain in wet clay', { outlet: true }, 'opened', undefined],
  ['a slab where summers are dry', { summer: 1.3 }, 'emptied', SUMMER],
  ['a drain where summers are dry', { summer: 1.3, outlet: true }, 'emptied', SUMMER],
  // 18.5 × 0.3 ÷ 9.81 ÷ 1.25 = 0.45 m of water over the seam is what its clay holds, and 1.1 m stand there.
  ['a slab over a seam', { summer: 1.3, seam: [0.2, 0.2] }, 'barred', undefined],
  ['a slab over a seam that sinks, in wet clay', { seam: [0.3, 1.25] }, 'pumped', SUMMER],
  ['a slab between soft sides', { summer: 1.3, clay: 'soft' }, 'barred', undefined],
  ['a drain between soft sides', { summer: 1.3, clay: 'soft', outlet: true }, 'barred', undefined],
];

describe.each(SITES)('%s', (_, site, subject, months) => {
  const files = there(site);
  const answer = judged(files);
  const rules = rulesOf(answer).filter(({ code }) => code === 'rebuild');
  const report = reportOf(answer);
  const head = headlineOf(report, 'metric').answer;
  const [first = ''] = answerLines(report.result, 'metric');

  test('is rebuilt when it can be emptied for that', () => {
    expect(rules.map((rule) => rule.subject)).toEqual([subject]);
    const [rule] = rules;
    if (months) expect(rule!.values).toMatchObject({ months });
  });

  test('is told so at once', () => {
    expect(head).toMatch(/^Rebuild it/);
    if (subject === 'emptied') {
      expect(head).toContain('To build, empty it only from July to September.');
      expect(first).toContain('emptied for that only from July to September');
    } else if (subject === 'opened') {
      expect(head).toContain('pumped out as well');
      expect(first).toContain('pumped out');
    } else {
      expect(head).toMatch(/An engineer plans how: .* Keep it full until then\.$/);
      expect(first).toContain('if an engineer finds how');
      expect(recommend(answer).rules.find(({ code }) => code === 'rebuild')!.text).toMatch(
        /ask a licensed engineer/,
      );
    }
  });

  test('as a pond would hold that was to be emptied for a week then', () => {
    for (const month of [2, 8]) {
      const then = withItem(files, 'pond.csv', 'emptied_in', `${month}`);
      const week = withItem(then, 'pond.csv', 'days_empty', '7', 'd');
      const { basis } = judged(week);
      const { modes } = verdictAt(basis, NOTHING, 1).chance;
      const [lift = 0, slump = 0, heave = 0] = [
        modes['lift-emptied'],
        modes['side-slump'],
        modes['floor-heave'],
      ];
      const holds = Math.max(lift, slump, heave) <= basis.site.pond.acceptedRisk;
      const told = subject === 'emptied' && SUMMER.includes(month);
      if (told) expect(holds).toBe(true);
      // What bars it is there to be counted, or the water rises too slowly to lift it in a week.
      if (subject === 'barred') expect(Math.max(slump, heave)).toBeGreaterThan(0.02);
    }
  });
});

test('one that is to be less deep is rebuilt for that, and not left as it is', () => {
  const answer = judged(there({ summer: 0.3, seam: [0, 0] }));
  const told = recommend(answer);
  expect(told.depth_m).toBeLessThan(1);
  expect(told.rules.filter(({ code }) => code === 'rebuild')).toHaveLength(1);
  expect(headlineOf(reportOf(answer), 'metric').answer).toMatch(/^Rebuild it only 0\.\d+ m deep/);
});

test('the clay’s water is named before a seam that does less', () => {
  const both = judged(there({ seam: [0.15, 0.15] }));
  const { chance } = verdictAt(both.basis, NOTHING, 1);
  expect(chance.modes['floor-heave']).toBeGreaterThan(0.5);
  expect(chance.lifted).toBeGreaterThanOrEqual(chance.modes['floor-heave']!);
  expect(both.decision.governs).toBe('lift-drawn-down');
});
