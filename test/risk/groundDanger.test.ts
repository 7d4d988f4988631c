import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { assess, judge } from '../../lib/decision/index.js';
import { dugDepth } from '../../lib/digging/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { monthlyLimits, verdictAt } from '../../lib/reliability/index.js';
import { lowerToday, recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { OTHER_GROUND, STRUCTURES, USDA_CLASSES } from '../../lib/soil/index.js';
import { steepestByGround, wetShareAllowed } from '../../lib/uplift/index.js';
import { edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const HEADER = 'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa';
const pits = (...rows: string[]) => ({
  'pits.csv': `${[HEADER, 'P1,0,0.3,clay loam,rooted,,firm,,', ...rows].join('\n')}\n`,
});
const judged = (files: Files) => judge(siteModel(surveyOf(files), { samples: 64 }));
const told = (files: Files) => recommend(judged(files));
const codes = (files: Files) => told(files).rules.map((rule) => rule.code);
const set = (files: Files, items: Record<string, string>) =>
  Object.entries(items).reduce((all, [item, cell]) => {
    const [value, unit = ''] = cell.split(' ');
    return withItem(all, 'pond.csv', item, value!, unit);
  }, files);

/** Water 2.2 m down all year: nothing but the ground itself is a danger. */
const DRY = baseSurvey({ depth: 2.2, level: 0 });
const OVER_SAND = { ...DRY, ...pits('P1,0.3,1.6,clay,massive,,stiff,1e-9,60', 'P1,1.6,2,sand,,,,,') };
const withHead = (files: Files, depth: number, spread = 0.01) =>
  edited(files, 'heads.csv', (t) => `${t}below:P1,high,${depth},${spread},pipe\n`);

describe('a seam under the floor', () => {
  test('18.5 × 0.6 ÷ (9.81 × 1.5) = 0.75: not dug, nor, when it is there, emptied', () => {
    const basis = judged(withHead(OVER_SAND, 0.1)).basis;
    expect(verdictAt(basis, NOTHING, 1)).toMatchObject({
      safe: false,
      governs: 'floor-heave',
      dig: { heave: 1 },
    });
    const there = set(withHead(OVER_SAND, 0.1), { state: 'existing', emptied_in: '9', days_empty: '2 d' });
    const pond = judged(there);
    const verdict = verdictAt(pond.basis, NOTHING, 1);
    expect(verdict).toMatchObject({ safe: false, kept: true, governs: 'floor-heave' });
    expect(verdict.chance.modes['floor-heave']).toBe(1);
    const { lowestSafeLevel, empty } = monthlyLimits(pond.basis, NOTHING, 1);
    expect(empty.every(({ seconds, governs }) => seconds === 0 && governs === 'heave')).toBe(true);
    // Water that brings the factor: 1.25 × 1.5 − 18.5 × 0.6 ÷ 9.81 = 0.74 m over the floor, and a little for the doubt.
    for (const level of lowestSafeLevel) {
      expect(level! + 1).toBeGreaterThan(1.25 * 1.5 - (18.5 * 0.6) / 9.81);
      expect(level! + 1).toBeLessThan(0.9);
    }
    expect(recommend(pond).rules.map((rule) => rule.code)).toContain('do-not-lower');
  });

  test.each([0, 0.1, 0.4, 0.8, 1.2, 1.5])(
    'a dip pipe found dry under the liner frees no pond over a seam that rises to %f m',
    (head) => {
      const files = set(withHead(OVER_SAND, head), {
        state: 'existing',
        emptied_in: '9',
        days_empty: '2 d',
      });
      files['levels.csv'] += 'pipe,dip-pipe,0,10\n';
      files['water.csv'] = 'pit,date,time,reading,depth_m,hole_depth_m\ndip-pipe,2024-09-14,09:00,dry,,1.4\n';
      const pond = judged(files);
      const { lowest_m } = lowerToday(pond)!;
      // The floor lies 1 m down; water over it makes up what 0.6 m of clay lack of 1.25 times the pressure.
      const lacks = 1.25 * (1.6 - head) - (18.5 * 0.6) / 9.81;
      const { reason, rules } = recommend(pond);
      const words = [reason, ...rules.filter(({ code }) => code === 'do-not-lower').map(({ text }) => text)];
      if (lacks <= -0.1) expect(lowest_m).toBeNull();
      if (lacks <= 0) return;
      expect(lowest_m! + 1).toBeGreaterThan(lacks);
      expect(lowest_m! + 1).toBeLessThan(lacks + 0.2);
      expect(words.join(' ')).toMatch(/would heave the floor/);
      expect(words.join(' ')).not.toMatch(/without reading the dip pipe|only when the dip pipe shows/);
    },
  );

  test.each([0, 0.1, 0.4, 0.8, 1.5])(
    'no work empties a pond that is there over a seam that heaves it, risen to %f m',
    (head) => {
      const wet = {
        ...OVER_SAND,
        ...baseSurvey({ depth: 0.05, level: 0 }),
        'pits.csv': OVER_SAND['pits.csv']!,
      };
      const files = set(withHead(wet, head), {
        state: 'existing',
        emptied_in: '9',
        usual_drawdown: '0.15 m',
        highest_raise: '0.5 m',
      });
      const pond = judged(files);
      const work = recommend(pond).rules.filter(({ code }) => code === 'rebuild');
      expect(work).toHaveLength(1);
      const heaves = 1.25 * (1.6 - head) * 9.81 > 18.5 * 0.6;
      expect(/may not be emptied in any month/.test(work[0]!.text)).toBe(heaves);
      expect(/The pond is emptied for this/.test(work[0]!.text)).toBe(!heaves);
      if (heaves) expect(recommend(pond).reason).not.toContain('only in the months given');
    },
  );

  test('never emptied the pond there stays as it is; at rest it may be emptied', () => {
    const kept = set(withHead(OVER_SAND, 0.1), { state: 'existing', emptied_in: 'never' });
    expect(verdictAt(judged(kept).basis, NOTHING, 1).safe).toBe(true);
    const rest = set(withHead(OVER_SAND, 1.5), { state: 'existing', emptied_in: '9', days_empty: '2 d' });
    expect(verdictAt(judged(rest).basis, NOTHING, 1).safe).toBe(true);
  });

  test('unread it bounds the depth to what holds with water at the ground: 1.6 × (1 − 1.25 × 9.81 ÷ 18.5)', () => {
    const bound = 1.6 * (1 - (1.25 * 9.81) / 18.5);
    const r = told(OVER_SAND);
    expect(r).toMatchObject({ option: 'shallower', governs: 'floor-heave' });
    expect(r.depth_m).toBeLessThanOrEqual(bound);
    expect(r.depth_m).toBeGreaterThan(bound - 0.25);
    expect(r.rules.map((rule) => rule.code)).toContain('seam-unknown');
    expect(r.reason).toContain('not known');
    const deep = { ...OVER_SAND, ...pits('P1,0.3,1.2,clay,massive,,stiff,1e-9,60', 'P1,1.2,2,sand,,,,,') };
    expect(told(set(deep, { depth: '1.1 m' }))).toMatchObject({
      option: 'measure-first',
      governs: 'floor-heave',
    });
  });

  test('beyond its reach, or read at rest, it says nothing', () => {
    // 18.5 × 4 ÷ (9.81 × 5) = 1.51 with water at the ground.
    const deep = { ...DRY, ...pits('P1,0.3,5,clay,massive,,stiff,1e-9,60', 'P1,5,6,sand,,,,,') };
    expect(told(deep).option).toBe('no-drain');
    expect(codes(deep)).not.toContain('seam-unknown');
    expect(told(withHead(OVER_SAND, 1.5)).option).toBe('no-drain');
  });

  test('a higher pressure is never deeper, a deeper seam never shallower', () => {
    const depthOf = (files: Files) => {
      const basis = judged(files).basis;
      return [0.3, 0.5, 0.7, 0.9, 1, 1.1].filter((depth) => verdictAt(basis, NOTHING, depth).safe).length;
    };
    const byHead = [1.5, 1.1, 0.7, 0.3, 0, -0.4].map((depth) => depthOf(withHead(OVER_SAND, depth)));
    expect(byHead).toEqual([...byHead].sort((a, b) => b - a));
    expect(new Set(byHead).size).toBeGreaterThan(2);
    const byTop = [1.2, 1.6, 2, 2.6].map((top) =>
      depthOf(
        withHead(
          { ...DRY, ...pits(`P1,0.3,${top},clay,massive,,stiff,1e-9,60`, `P1,${top},3,sand,,,,,`) },
          0.2,
        ),
      ),
    );
    expect(byTop).toEqual([...byTop].sort((a, b) => a - b));
  });
});

describe('the pond with water in it over a seam', () => {
  /** Kept full to the ground over 0.4 m of clay on sand; the seam's water at some depth in winter, low in the month of digging. */
  const judgedAt = (winter: number, more: Record<string, string> = {}, top = 1.4) => {
    const rows = Array.from(
      { length: 12 },
      (_, m) => `below:P1,${m + 1},${m === 7 ? 1.3 : winter},0.02,sealed pipe`,
    );
    const files = {
      ...DRY,
      ...pits(`P1,0.3,${top},clay,massive,,stiff,1e-9,60`, `P1,${top},3,sand,,,,,`),
    };
    const base = set(files, {
      emptied_in: 'never',
      built_in: '8',
      water_above_rim_ground: '0',
      usual_drawdown: '0',
      ...more,
    });
    return told(edited(base, 'heads.csv', (t) => `${t.trimEnd()}\n${rows.join('\n')}\n`));
  };
  // At the top of the sand: 18.5 × 0.4 + 9.81 × 1.0 = 17.2 kPa; 1.25 times the pressure is that at 1.40 m of head.
  test.each([
    [0.2, true],
    [-0.1, false],
    [-0.5, false],
  ])('winter water of the sand at %s m: 1 m deep is %s', (winter, holds) => {
    const r = judgedAt(winter);
    if (holds) expect(r).toMatchObject({ option: 'no-drain', depth_m: 1 });
    else expect(r).toMatchObject({ governs: 'floor-heave' });
    if (!holds) expect(r.depth_m === 1 && r.option === 'no-drain').toBe(false);
    // Water that stays below what the floor keeps is no matter for an engineer.
    expect(r.rules.some(({ code, subject }) => code === 'ask-engineer' && subject === 'pressure')).toBe(
      !holds,
    );
  });

  test('let fall it holds less: 0.5 m lower is 4.9 kPa less', () => {
    expect(judgedAt(0.2, { usual_drawdown: '0.5 m' }).governs).toBe('floor-heave');
  });

  test('a floor cut into the sand is lifted where the sand stands higher than the pond', () => {
    expect(judgedAt(-0.1, { side_slope: '2', width: '6 m', length: '7 m' }, 0.9).governs).toBe('floor-heave');
    expect(judgedAt(0.7, { side_slope: '2', width: '6 m', length: '7 m' }, 0.9)).toMatchObject({
      option: 'no-drain',
      depth_m: 1,
    });
  });
});

describe('gas under a liner', () => {
  /** Peat from a depth down, as thick as said. */
  const peat = (top: number, bottom = 3) => ({
    ...DRY,
    ...pits(
      ...(top > 0.3 ? [`P1,0.3,${top},clay,massive,,stiff,1e-9,60`] : []),
      `P1,${Math.max(top, 0.3)},${bottom},peat,,none,very soft,,`,
      ...(bottom < 3 ? [`P1,${bottom},3,clay,massive,,soft,1e-9,20`] : []),
    ),
  });

  test.each([
    ['upright in peat', set(peat(0.3, 1), { side_slope: '0.2' })],
    ['peat below the floor', withHead(peat(1.2), 2.2)],
    ['dug less deep over a seam', withHead(peat(1.6), 0.6)],
    [
      'there, and emptied in no month',
      set(
        withHead(
          edited(peat(1.2), 'heads.csv', (t) => t.replaceAll(',2.2,', ',0.4,')),
          0.8,
        ),
        {
          state: 'existing',
          emptied_in: '2',
          days_empty: '30 d',
        },
      ),
    ],
    ['a smell alone', edited(set(DRY, { side_slope: '0' }), 'site.csv', (t) => `${t}organic_smell,yes,,\n`)],
  ])('%s: whatever is built, a vent goes with it', (_, files) => {
    const r = told(files);
    expect([r.option, ...r.also]).toContain('vent');
    expect(r.rules.map(({ code }) => code)).toContain('vent-high-point');
  });

  test('ground without peat wants none', () => {
    expect(codes(DRY)).not.toContain('vent-high-point');
    expect(codes(peat(2.5))).not.toContain('vent-high-point');
  });
});

describe('sides of every ground', () => {
  const TEXTURES = [...USDA_CLASSES, ...OTHER_GROUND];

  test.each(TEXTURES)(
    '%s has a rule, and upright in it is safe only by the strength of whole clay',
    (texture) => {
      for (const structure of [undefined, ...STRUCTURES]) {
        const dry = steepestByGround(texture, structure);
        const whole = texture.includes('clay') && (structure === undefined || structure === 'massive');
        expect(dry > 0).toBe(!whole);
        const slopes = [0, 0.2, 0.5, 1].map((wet) => steepestByGround(texture, structure, wet));
        expect(slopes).toEqual([...slopes].sort((a, b) => a - b));
        const shares = [0, 0.5, 1, 1.5, 2, 3, 5, 8].map((slope) =>
          wetShareAllowed(texture, structure, slope),
        );
        expect(shares).toEqual([...shares].sort((a, b) => a - b));
        expect(shares.at(-1)).toBe(1);
      }
      const ground = { ...DRY, ...pits(`P1,0.3,3,${texture},,,firm,,`) };
      const upright = set(ground, { side_slope: '0' });
      expect(codes(upright).some((code) => code === 'batter-sides' || code === 'working-slope')).toBe(true);
      if (texture.includes('clay')) return;
      const site = siteModel(surveyOf(upright), { samples: 16 });
      expect(site.pond.shape.sideSlope).toBeGreaterThanOrEqual(1);
      expect(site.assumptions.map(({ item }) => item)).toContain('side_slope');
      const there = set(upright, { state: 'existing', emptied_in: '9', days_empty: '2 d' });
      expect(verdictAt(judged(there).basis, NOTHING, 1)).toMatchObject({
        safe: false,
        governs: 'side-slump',
      });
    },
  );

  test.each(['sand', 'gravel', 'peat', 'made ground', 'silt'])(
    'nor does a dip pipe found dry free upright sides in %s',
    (texture) => {
      const files = set(
        { ...DRY, ...pits(`P1,0.3,3,${texture},,,firm,,`) },
        {
          side_slope: '0',
          state: 'existing',
          emptied_in: '9',
          days_empty: '2 d',
        },
      );
      files['levels.csv'] += 'pipe,dip-pipe,0,10\n';
      files['water.csv'] = 'pit,date,time,reading,depth_m,hole_depth_m\ndip-pipe,2024-09-14,09:00,dry,,1.4\n';
      const pond = judged(files);
      expect(lowerToday(pond)!.lowest_m).not.toBeNull();
      const { reason, rules } = recommend(pond);
      const words = [reason, ...rules.filter(({ code }) => code === 'do-not-lower').map(({ text }) => text)];
      expect(words.join(' ')).toMatch(/sides would slip even with no water behind them/);
      expect(words.join(' ')).not.toMatch(/without reading the dip pipe|only when the dip pipe shows/);
    },
  );

  test('seepage out of the face about halves what stands; 29 CFR 1926 never asks for flatter when dry', () => {
    for (const texture of ['sand', 'gravel', 'silt'] as const) {
      const [dry, wet] = [0, 1].map((share) => steepestByGround(texture, undefined, share));
      expect(wet! / dry!).toBeGreaterThan(1.5);
      expect(wet! / dry!).toBeLessThan(2.2);
    }
    for (const texture of ['sand', 'loamy sand', 'gravel'] as const)
      expect(steepestByGround(texture)).toBeGreaterThanOrEqual(1.5);
    for (const texture of ['silt', 'silt loam', 'sandy loam', 'loam'] as const)
      expect(steepestByGround(texture)).toBeGreaterThanOrEqual(1);
  });

  test('weaker clay is never advised deeper', () => {
    const advised = (strength: number, structure: string) =>
      told(
        set(
          { ...DRY, ...pits(`P1,0.3,3,clay,${structure},,,1e-9,${strength}`) },
          { side_slope: '0', depth: '1.4 m' },
        ),
      );
    const depthOf = ({ option, depth_m }: ReturnType<typeof told>) => (option === 'move' ? 0 : depth_m);
    for (const structure of ['massive', 'cracked']) {
      const depths = [80, 40, 24, 16, 12, 8].map((strength) => depthOf(advised(strength, structure)));
      expect(depths).toEqual([...depths].sort((a, b) => b - a));
    }
    for (const strength of [80, 24, 14])
      expect(depthOf(advised(strength, 'cracked'))).toBeLessThanOrEqual(
        depthOf(advised(strength, 'massive')),
      );
  });

  test('sand in a side counts from where the dig meets it, and water in it makes it slip', () => {
    const layered = { ...DRY, ...pits('P1,0.3,0.8,clay,massive,,stiff,,60', 'P1,0.8,3,sand,,,,,') };
    const basis = basisOf(
      siteModel(surveyOf(set(layered, { state: 'existing', emptied_in: '9', side_slope: '1' })), {
        samples: 16,
      }),
    );
    expect(verdictAt(basis, NOTHING, 0.8).chance.modes['side-slump']).toBe(0);
    expect(verdictAt(basis, NOTHING, 0.9).chance.modes['side-slump']).toBe(1);
    const wet = (depth: number) => {
      const files = { ...baseSurvey({ depth, level: 0 }), ...pits('P1,0.3,3,sand,,,,,') };
      return verdictAt(judged(set(files, { side_slope: '2.2' })).basis, NOTHING, 0.6).dig.slump;
    };
    expect(wet(1.5)).toBe(0);
    expect(wet(0.1)).toBeGreaterThan(0.5);
  });

  test('peat and made ground ask for an engineer, walls for one who designs them', () => {
    for (const texture of ['peat', 'made ground'])
      expect(codes({ ...DRY, ...pits(`P1,0.3,3,${texture},,,soft,,`) })).toContain('ask-engineer');
    const walled = set(DRY, { side_slope: '0', wall: 'block' });
    const { rules } = told(walled);
    expect(rules.map(({ code }) => code)).toEqual(expect.arrayContaining(['wall-load', 'ask-engineer']));
    // K0 = 1 − sin 24° on 8.69 kN/m³, and water: 0.593 × 8.69 ÷ 2 + 9.81 ÷ 2 = 7.5 kN on a metre.
    expect(rules.find(({ code }) => code === 'wall-load')!.text).toContain('7.5 kN');
    expect(judged(walled).site.pond.shape.sideSlope).toBe(0);
  });
});

describe('depth against slope', () => {
  test('from 5 ft the sides are no steeper than their class, or the answer is shallower and an engineer', () => {
    const stiff = { ...DRY, ...pits('P1,0.3,4.8,clay,massive,,stiff,1e-9,70') };
    const deep = set(stiff, { depth: '4 m', side_slope: '0.2', length: '9 m', width: '8 m' });
    const r = told(deep);
    expect(r).toMatchObject({ option: 'shallower', governs: 'side-slump' });
    expect(r.depth_m).toBeLessThan(1.524);
    expect(r.rules.map(({ code }) => code)).toContain('ask-engineer');
    const flat = judged(
      set(baseSurvey({ depth: 2.9, level: 0 }), {
        depth: '2 m',
        side_slope: '1',
        length: '9 m',
        width: '8 m',
      }),
    );
    expect(recommend(flat).depth_m).toBe(2);
  });

  test('one slope is told, that of the drawings and quantities', () => {
    for (const slope of ['0', '0.3', '0.8', '1'])
      for (const structure of ['massive', 'cracked'])
        for (const depth of ['0.9 m', '1.4 m']) {
          const a = judged(
            set(
              { ...DRY, ...pits(`P1,0.3,3,clay,${structure},,soft,1e-9,14`) },
              { side_slope: slope, depth },
            ),
          );
          const texts = recommend(a)
            .rules.filter(({ code }) => code === 'batter-sides')
            .map(({ text }) => text);
          const slopes = texts.flatMap((text) =>
            [...text.matchAll(/(\d+(?:\.\d+)?) to 1\b/g)].map(([, n]) => Number(n)),
          );
          // Dug with other sides than drawn, those drawn are named beside them.
          const drawn = a.decision.change?.side_slope === undefined ? [] : [Number(slope)];
          for (const told of slopes)
            expect([a.site.pond.shape.sideSlope, ...drawn], texts.join()).toContain(told);
        }
  });
});

describe('a house beside the dig', () => {
  const whole = { ...DRY, ...pits('P1,0.3,3,clay,massive,,stiff,1e-9,90') };
  const upright = set(whole, { side_slope: '0', depth: '1.4 m' });
  const beside = (files: Files, ...rows: string[]) =>
    edited(files, 'levels.csv', (t) => `${t}${rows.join('\n')}\n`);

  test('0.4 m away without a footing row: bounded to 0.3 + 0.4 m, and asked', () => {
    const r = told(beside(upright, 'nh,neighbour-house,0.4,10'));
    expect(r).toMatchObject({ option: 'shallower', governs: 'footing' });
    expect(r.depth_m).toBeLessThanOrEqual(0.7);
    expect(r.rules.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['footing-unknown', 'ask-engineer']),
    );
    expect(told(beside(upright, 'nh,house,0.05,10'))).toMatchObject({
      option: 'measure-first',
      governs: 'footing',
    });
  });

  test('a footing levelled there is what counts; far away nothing is said', () => {
    const deep = beside(upright, 'nh,neighbour-house,0.4,10', 'wall,footing,0.4,8.6');
    expect(told(deep).option).toBe('no-drain');
    expect(codes(deep)).not.toContain('footing-unknown');
    expect(codes(beside(upright, 'nh,neighbour-house,9,10'))).not.toContain('footing-unknown');
  });

  test('a house is never deeper, and the nearer the shallower', () => {
    const depths = [9, 1.5, 0.9, 0.6, 0.4].map(
      (away) => told(beside(upright, `nh,house,${away},10`)).depth_m,
    );
    expect(depths[0]).toBe(told(upright).depth_m);
    expect(depths).toEqual([...depths].sort((a, b) => b - a));
    expect(depths.at(-1)).toBeLessThan(depths[0]!);
  });

  test('drawn beside two rim points it is counted nearer, and the other corners are asked for', () => {
    const drawn = (...rims: string[]) => {
      const rows = ['point,role,distance_m,x_m,y_m,level_m', ...rims, 'nh,neighbour-house,,2,-3.4,10'];
      return assess(
        siteModel(surveyOf({ ...upright, 'levels.csv': `${rows.join('\n')}\n` }), { samples: 64 }),
      );
    };
    const [a, b, c] = ['A,rim,,0,0,10', 'B,rim,,4,0,10', 'C,rim,,4,3,10'];
    const two = drawn(a, b);
    expect(two.decision).toMatchObject({ governs: 'footing' });
    const corners = two.measureNext.find(({ what }) => what === 'rim-corners')!;
    expect(corners).toMatchObject({ where: null, waits: false, chance_to_change: 0.5 });
    expect(
      recommend(two)
        .measure_next.map(({ what }) => what)
        .join(),
    ).toContain('corner of the rim');
    const three = drawn(a, b, c);
    expect(three.decision.governs).not.toBe('footing');
    expect(three.measureNext.map(({ what }) => what)).not.toContain('rim-corners');
    // So far off that it stands against nothing on either side of them.
    const far = ['A,rim,,20,30,10', 'B,rim,,24,30,10'] as const;
    expect(drawn(...far).measureNext.map(({ what }) => what)).not.toContain('rim-corners');
  });

  test('a boundary nearer than the dig is deep is told', () => {
    expect(codes(beside(upright, 'b,boundary,0.8,10'))).toContain('notify-neighbour');
    expect(codes(beside(upright, 'b,boundary,3,10'))).not.toContain('notify-neighbour');
  });
});

test('a result of an emptied floor over a seam is written whole', () => {
  const a = assess(
    siteModel(surveyOf(set(OVER_SAND, { emptied_in: '3', days_empty: '3 d' })), { samples: 64 }),
  );
  const { recommendation, options } = resultOf(a);
  expect(recommendation.measure_next.map(({ what }) => what).join()).toContain('layer under the clay');
  expect(options[0]!.per_dig!.heave).toBe(1);
  expect(dugDepth(a.site, a.decision.measures, recommendation.depth_m)).toBeLessThan(0.6);
});
