import { describe, expect, test } from 'vitest';
import { possibleOption, type Report } from '../../lib/contract/index.js';
import { assess, type Judged, judge, rulesOf } from '../../lib/decision/index.js';
import { explorer } from '../../lib/page/index.js';
import { recommend, reportOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { wishWords } from '../../lib/text/asked.js';
import { answerLines, headlineOf } from '../../lib/text/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';
import { flush } from './flush.js';

type Files = Record<string, string>;
const judged = (files: Files) => judge(siteModel(surveyOf(files), { samples: 32 }));
const ponds = (files: Files, items: Record<string, string>): Files =>
  Object.entries(items).reduce(
    (all, [item, value]) => withItem(all, 'pond.csv', item, value, UNITS[item] ?? ''),
    files,
  );
const UNITS: Record<string, string> = {
  depth: 'm',
  length: 'm',
  width: 'm',
  days_empty: 'd',
  highest_raise: 'm',
};
const rule = (told: ReturnType<typeof recommend>, code: string) =>
  told.rules.find((each) => each.code === code);

/** Permeable ground whose water stands 0.6 m higher in January and 0.6 m lower in July than in the mean. */
const leaky = (mean = 1): Files => {
  const base = baseSurvey({ level: -0.05 });
  const rows = Array.from(
    { length: 12 },
    (_, m) => `site,${m + 1},${(mean - 0.6 * Math.cos((m * Math.PI) / 6)).toFixed(3)},0.1,pipe`,
  );
  return {
    ...base,
    'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
    'pits.csv': base['pits.csv']!.replace('1e-7', '2e-4'),
  };
};

/** 1.6 m in wet clay: from 1.5 m on its sides are laid back 1.5 to 1, which leaves 8 − 4.8 by 6 − 4.8 m of floor. */
const deep = (items: Record<string, string> = {}) =>
  ponds(baseSurvey({ depth: 0.7, spread: 0.05, level: 0 }), {
    depth: '1.6',
    length: '8',
    width: '6',
    ...items,
  });

describe('the least change of the dig', () => {
  test('is another month, where the water of the one planned comes in faster than it is taken out', () => {
    const wish = judged(ponds(leaky(), { built_in: '1' }));
    const told = recommend(wish);
    expect(told).toMatchObject({ option: 'no-drain', depth_m: 1, change: { built_in: [7] } });
    expect(told.governs).toBe('wet-dig');
    expect(told.reason).toMatch(/As wished but dug in July instead it holds/);
    expect(rule(told, 'dig-in')).toMatchObject({ subject: 'instead', months: [7] });
    expect(rule(told, 'dig-in')!.text).toMatch(/Dig in July, not in January/);
    // As a survey that plans it so.
    const said = judged(ponds(leaky(), { built_in: '7' }));
    expect(recommend(said).change).toBeNull();
    expect(said.decision.verdict!.dig).toEqual(wish.decision.verdict!.dig);
    expect(said.decision.verdict!.chance.perYear).toBe(wish.decision.verdict!.chance.perYear);
  });

  test('is flatter sides, with what is left of the floor', () => {
    const wish = judged(deep());
    const told = recommend(wish);
    expect(told).toMatchObject({ option: 'no-drain', depth_m: 1.6, change: { side_slope: 1.5 } });
    expect(told.reason).toMatch(
      /1\.6.* m cannot be dug: .* As wished but dug with its sides at 1\.5 to 1 it holds/,
    );
    expect(rule(told, 'batter-sides')!.text).toMatch(
      /1\.5 to 1 instead of 1 to 1.*3\.2\d* m long and 1\.2\d* m wide/,
    );
    const said = judged(deep({ side_slope: '1.5' }));
    expect(recommend(said)).toMatchObject({ option: 'no-drain', change: null });
    expect(said.decision.verdict!.chance.perYear).toBe(wish.decision.verdict!.chance.perYear);
    // All amounts are of the pond so dug.
    expect(reportOf(wish).pond.side_slope).toBe(1.5);
    const work = ({ result }: Report) => possibleOption(result, 'no-drain')!.work;
    expect(work(reportOf(wish))).toEqual(work(reportOf(said)));
    expect(headlineOf(reportOf(wish)).answer).toMatch(/1\.60 m deep.*sides at 1\.5 to 1/);
    expect(wishWords(reportOf(wish), 'metric')).toMatch(
      /^As wished: no\. It is to be dug with its sides at 1\.5 to 1\. Dug like that, with nothing else done: yes/,
    );
    expect(answerLines(reportOf(wish).result, 'metric')[0]).toMatch(/sides at 1\.5 to 1/);
  });

  test('in another month for its sides leaves no rule of the month that was planned', () => {
    // Loose ground, wet in February to above half of the sides, dry in August.
    const depths = [0.3, 0.25, 0.35, 0.6, 0.9, 1.1, 1.25, 1.4, 1.35, 1.1, 0.7, 0.4];
    const base = baseSurvey({ level: 0.1 });
    const files = ponds(
      {
        ...base,
        'heads.csv': `place,month,depth_m,spread_m,source\n${depths.map((z, m) => `site,${m + 1},${z},0.05,pipe`).join('\n')}\n`,
        'pits.csv': base['pits.csv']!.replace('clay,blocky,,stiff,1e-7,60', 'sandy loam,,,,2e-5,'),
      },
      { depth: '1.1', length: '7', width: '5', built_in: '2;3' },
    );
    const told = recommend(judged(files));
    expect(told).toMatchObject({ depth_m: 1.1, governs: 'side-slump', change: { built_in: [8] } });
    expect(told.rules.map(({ code, subject }) => `${code}/${subject}`)).toContain('dig-in/instead');
    // As a survey that plans it so.
    const said = recommend(judged(ponds(files, { built_in: '8' })));
    const sides = ({ rules }: typeof told) => rules.filter(({ code }) => code === 'batter-sides');
    expect(sides(told)).toEqual(sides(said));
    expect(sides(told)).toEqual([]);
  });

  test('is told with what would do without a drain, which was judged for it alone', () => {
    const rows = Array.from(
      { length: 12 },
      (_, m) => `site,${m + 1},${[6, 7, 8].includes(m) ? 2.1 : 0.4},0.03,pipe`,
    );
    const site = withItem(
      deep({ emptied_in: '3', days_empty: '10', side_slope: '0.5', built_in: '8' }),
      'site.csv',
      'discharge_allowed',
      'yes',
    );
    const a = assess(
      siteModel(
        surveyOf({
          ...site,
          'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
          'levels.csv':
            'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\nout,outlet,12,7.6\nbeck,ditch,12,7.3\nmark,flood,12,7.5\n',
        }),
        { samples: 32 },
      ),
    );
    const slope = a.decision.change!.side_slope!;
    expect([a.decision.option, slope > 0.5]).toEqual(['drain-to-outlet', true]);
    expect(a.instead!.change).toEqual({ side_slope: slope, emptied_in: [7] });
    expect(workedSheet(a).flatMap(({ equals }) => equals.map(({ path }) => path))).toContain(
      'instead.per_year',
    );
    expect(headlineOf(reportOf(a)).otherwise).toMatch(
      new RegExp(`as wished but dug with its sides at ${slope} to 1, empty it in July instead of March, and`),
    );
  });

  test('runs pond and ring anew: a survey that says those sides has the same chance in daily weather', () => {
    const files = ponds(flush('kept_within', '0.05', { ring: '0.3', level: '0.15' }), {
      depth: '1.6',
      length: '8',
      width: '6',
      bedding: 'mat',
      built_in: '8',
    });
    const wish = judged(files);
    expect(wish.decision.change).toMatchObject({ side_slope: 1.5 });
    const { decision, site } = judged(ponds(files, { side_slope: '1.5' }));
    expect(decision).toMatchObject({ option: wish.decision.option, measures: wish.decision.measures });
    expect(decision.verdict!.chance.perYear).toBe(wish.decision.verdict!.chance.perYear);
    expect(wish.site.water.tub!.asIs.month).toEqual(site.water.tub!.asIs.month);
    expect(wish.site.water.pond!.drawdown).toEqual(site.water.pond!.drawdown);
  });

  test('is found again by a what-if, whatever was tried before it', () => {
    const survey = surveyOf(deep());
    const step = explorer(survey, { samples: 32 });
    const told = (judged: Judged) => ({
      change: recommend(judged).change,
      perYear: judged.decision.verdict!.chance.perYear,
      slope: judged.site.pond.shape.sideSlope,
    });
    for (const tried of [{}, { depth: 1.4 }, {}, { depth: 1.55 }, { full: -0.2 }, {}])
      expect(told(step(tried))).toEqual(told(explorer(survey, { samples: 32 })(tried)));
    expect(told(step({ depth: 1.4 }))).toMatchObject({ change: null, slope: 1 });
  });

  test('is none where no floor is left, where walls hold the sides, and in a pond that is there', () => {
    // 5 − 4.8 m.
    const narrow = recommend(judged(deep({ width: '5' })));
    expect(narrow).toMatchObject({ option: 'shallower', change: null });
    expect(narrow.depth_m).toBeLessThan(1.5);
    expect(recommend(judged(deep({ wall: 'concrete' }))).change).toBeNull();
    expect(recommend(judged(deep({ state: 'existing' }))).change).toBeNull();
  });

  test('is both, where neither is enough', () => {
    const both = ponds(leaky(1.4), {
      built_in: '1',
      depth: '1.55',
      length: '8',
      width: '6',
      side_slope: '0.5',
    });
    const told = recommend(judged(both));
    expect(told.change).toMatchObject({ built_in: [7] });
    expect(told.change!.side_slope).toBeGreaterThan(0.5);
    expect(told.depth_m).toBe(1.55);
  });

  test('stands beside another month of emptying, and is what a survey that wishes both is told', () => {
    const rows = Array.from(
      { length: 12 },
      (_, m) => `site,${m + 1},${[6, 7, 8].includes(m) ? 1.9 : 0.1},0.03,pipe`,
    );
    const files = {
      ...deep({ emptied_in: '3', days_empty: '3', side_slope: '0.75' }),
      'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
    };
    const wish = judged(files);
    const told = recommend(wish);
    expect(told).toMatchObject({ option: 'no-drain', depth_m: 1.6 });
    expect(told.change!.emptied_in).toHaveLength(1);
    // Dry clay with cracks: 1 to 1 at this depth.
    expect(told.change!.side_slope).toBe(1);
    const said = judged(
      ponds(files, { side_slope: `${told.change!.side_slope}`, emptied_in: `${told.change!.emptied_in}` }),
    );
    expect(recommend(said)).toMatchObject({ option: 'no-drain', change: null });
    expect(said.decision.verdict!.chance.perYear).toBe(wish.decision.verdict!.chance.perYear);
  });
});

describe('a raised rim', () => {
  /** Too narrow for flatter sides: from 1.5 m on they would have to be. */
  const narrow = (raise: string, items: Record<string, string> = {}) =>
    judged(withItem(deep({ width: '5', ...items }), 'pond.csv', 'highest_raise', raise, 'm'));

  test('buys the depth that may not be dug: 1.45 m of the 1.60 m', () => {
    const told = recommend(narrow('0.5'));
    expect(told).toMatchObject({ option: 'raise-pond', depth_m: 1.6, change: null });
    expect(told.raise_m).toBeCloseTo(0.15, 9);
    expect(told.reason).toMatch(/raised 0\.15 m only 1\.45 m is dug below the old ground/);
    expect(rule(told, 'batter-sides')!.text).toMatch(
      /to 1\.45 m below the old ground, not to 1\.60 m: dig no deeper \(the other 0\.15 m .* stands above it\)/,
    );
    // No more of it than is needed, and where all of it can be dug none for that.
    expect(recommend(narrow('0.5', { depth: '1.4' })).raise_m).toBe(0);
  });

  test('tells how deep the sides stand by what is dug, where less depth is had as well', () => {
    // Weak clay under a steep uphill side: the sides stand to some decimetres, the rest stands above the ground.
    const base = baseSurvey({ level: 0.1, depth: 0.6, spread: 0.05 });
    const raised = judged(
      ponds(
        {
          ...base,
          'pits.csv': base['pits.csv']!.replace('1e-7,60', '5e-9,15'),
          'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10.5\n',
        },
        { depth: '1.2', length: '5', width: '4', side_slope: '0.5', highest_raise: '0.6' },
      ),
    );
    const told = recommend(raised);
    expect(told).toMatchObject({ option: 'shallower', also: ['raise-pond'] });
    const dug = told.depth_m - told.raise_m;
    expect(dug).toBeLessThan(1.5);
    const { values } = rulesOf(raised).find(({ code }) => code === 'batter-sides')!;
    expect(values).toMatchObject({ stands_m: expect.closeTo(dug, 9), raised_m: told.raise_m });
    expect(wishWords(reportOf(raised), 'metric')).toContain(
      `only ${dug.toFixed(2)} m is dug below the old ground`,
    );
  });

  test('that may not be raised so high adds what it may', () => {
    // Dug to 1.45 m; the depths searched are 5 cm apart, so a rim raised by 5 cm makes it 1.50 m.
    const told = recommend(narrow('0.05'));
    expect(told).toMatchObject({ option: 'shallower', depth_m: 1.45, raise_m: 0 });
    expect(told.reason).toMatch(/rim raised 5 cm it may be 1\.50? m deep, of the 1\.60? m wished for/);
    expect(recommend(narrow('0')).reason).not.toMatch(/rim raised/);
  });

  test('comes after flatter sides, and is none where the sides meet', () => {
    const wide = judged(withItem(deep(), 'pond.csv', 'highest_raise', '0.5', 'm'));
    expect(recommend(wide)).toMatchObject({ change: { side_slope: 1.5 }, raise_m: 0 });
    expect(recommend(narrow('0.5', { width: '3' })).raise_m).toBe(0);
  });
});
