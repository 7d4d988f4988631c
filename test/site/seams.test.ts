import { describe, expect, test } from 'vitest';
import { type Seam, siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';

const HEADER = 'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa';
const CLAY = ['P1,0,0.3,clay loam,rooted,,firm,,', 'P1,0.3,1.6,clay,massive,,stiff,,'];
const LOOKS = 'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm,pipe_bore_cm,open_from_m';

function seams(rows: string[], extra: Record<string, string> = {}): Seam[] {
  const { 'heads.csv': _, ...base } = baseSurvey();
  const files = { ...base, 'pits.csv': `${[HEADER, ...rows].join('\n')}\n`, ...extra };
  return siteModel(surveyOf(files), { samples: 8 }).ground.seams;
}
const looks = (...rows: string[]) => ({ 'water.csv': `${[LOOKS, ...rows].join('\n')}\n` });
const heads = (...rows: string[]) => ({
  'heads.csv': `${['place,month,depth_m,spread_m', 'site,high,0.5,0.1', ...rows].join('\n')}\n`,
});
const SAND = [...CLAY, 'P1,1.6,2,sand,,,,,'];

describe('where a seam begins', () => {
  test.each(['sand', 'loamy sand', 'sandy loam', 'gravel', 'silt', 'silt loam', 'loam', 'rock'])(
    '%s under massive clay, from where it was logged, last layer or not',
    (texture) => {
      const under = [...CLAY, `P1,1.6,1.9,${texture},,,,,`];
      expect(seams(under)).toMatchObject([{ pit: 'P1', top: 1.6, assumed: true }]);
      expect(seams([...under, 'P1,1.9,3,clay,massive,,stiff,,'])).toMatchObject([{ top: 1.6 }]);
      // 0.60 m of clay is left over the end of the log, 0.35 m over the layer.
      const told = seams([...CLAY, `P1,1.6,1.85,${texture},,,,,`], heads('below:P1,high,0.2,0.05'));
      expect(told).toMatchObject([{ top: 1.6, headDepth: 0.2, headSpread: 0.05, assumed: false }]);
    },
  );

  test('blocky clay under massive is no seam, nor what topsoil alone lies on, nor tighter ground', () => {
    expect(seams([...CLAY, 'P1,1.6,2.5,clay,blocky,,stiff,,'])).toEqual([]);
    expect(seams(['P1,0,0.3,clay loam,rooted,,,,', 'P1,0.3,3,gravel,,,,,'])).toEqual([]);
    expect(
      seams(['P1,0,0.3,sandy loam,rooted,,,,', 'P1,0.3,1,gravel,,,,,', 'P1,1,3,clay,massive,,,,']),
    ).toEqual([]);
    expect(seams([...CLAY, 'P1,1.6,2.5,sandy clay,,,,1e-5,'])).toMatchObject([{ top: 1.6 }]);
  });

  test('water struck below the log comes from a seam there; in the clay it is the table', () => {
    const struck = (depth: number) =>
      seams(CLAY, looks('P1,2024-02-10,10:00,opened,2.2,,10,,', `P1,2024-02-10,10:05,strike,${depth},,,,`));
    expect(struck(1.9)).toMatchObject([{ top: 1.9, known: 1.9, assumed: true }]);
    expect(struck(1.2)).toEqual([]);
    expect(seams(CLAY, heads('below:P1,high,0.2,0.05'))).toMatchObject([{ top: 1.6 }]);
  });

  test('the order of rows and the names of holes do not matter', () => {
    const rows = [
      ...SAND,
      'P2,0,0.3,clay loam,rooted,,firm,,',
      'P2,0.3,1.4,clay,massive,,stiff,,',
      'P2,1.4,2,gravel,,,,,',
    ];
    const found = (list: Seam[], pit: string) => list.find((seam) => seam.pit === pit)!;
    const told = heads('below:P2,high,0.1,0.05');
    const as = seams(rows, told);
    const turned = seams([...rows].reverse(), told);
    for (const pit of ['P1', 'P2'])
      expect({ ...found(turned, pit), from: [] }).toEqual({ ...found(as, pit), from: [] });
    const swapped = seams(
      rows.map((row) => row.replace(/^P./, (pit) => (pit === 'P1' ? 'P2' : 'P1'))),
      heads('below:P1,high,0.1,0.05'),
    );
    expect({ ...found(swapped, 'P2'), pit: 'P1' }).toEqual(found(as, 'P1'));
  });
});

describe('how high its water rises', () => {
  const RISE = [
    'P1,2024-08-10,10:00,opened,2,2,10,,',
    'P1,2024-08-10,10:05,strike,1.6,,,,',
    'P1,2024-08-11,09:00,level,0.1,,,,',
  ];

  test('strike and rise tell the month; the wet half-year stays open, at the ground or 0.3 m over what the dry months had', () => {
    const rises = (to: number, month = '08') =>
      seams(
        SAND,
        looks(
          ...RISE.slice(0, 2).map((row) => row.replace('-08-', `-${month}-`)),
          `P1,2024-${month}-11,09:00,level,${to},,,,`,
        ),
      )[0]!;
    expect(rises(0.5)).toMatchObject({ known: 0.5, assumed: true, headDepth: 0 });
    // One August tells little of others: 1.645 × 0.3 m over it, by the wells; no higher than in the wet half-year.
    expect(rises(0.8).heads[7]).toBeCloseTo(0.8 - 1.645 * 0.3, 9);
    expect(rises(0.1).heads[7]).toBeCloseTo(-0.2, 9);
    expect(rises(0.1).heads[1]).toBeCloseTo(-0.2, 9);
    expect(rises(-0.3).headDepth).toBeCloseTo(-0.6, 9);
    // Read in a wet month it is the highest that is known.
    expect(rises(-0.3, '01')).toMatchObject({ headDepth: -0.3, assumed: true });
  });

  test('three wet months in a hole open to it close it; in one that is not, nothing', () => {
    const winter = (open: string) =>
      looks(
        `P1,2023-09-10,10:00,opened,2,2,10,3,${open}`,
        ...['11', '12', '01', '02'].map(
          (m) => `P1,${m > '03' ? 2023 : 2024}-${m}-10,09:00,level,0.4,2,10,3,${open}`,
        ),
      );
    for (const open of ['', '1.7', '0.9'])
      expect(seams(SAND, winter(open))).toMatchObject([{ known: 0.4, headDepth: 0.4, assumed: false }]);
    // Between February at 0.4 m and November at 0.4 m nobody looked; read at 1.2 m in June the dry months lie between.
    const june = seams(SAND, {
      'water.csv': `${winter('')['water.csv']}P1,2024-06-10,09:00,level,1.2,2,10,3,\n`,
    })[0]!.heads;
    expect(june[5]).toBe(1.2);
    for (const month of [5, 7, 8, 9]) {
      expect(june[month - 1]).toBeGreaterThan(0.4);
      expect(june[month - 1]).toBeLessThan(1.2);
    }
    // Another winter may be wetter; what heads.csv says comes with its own spread.
    expect(seams(SAND, winter(''))[0]!.headSpread).toBeCloseTo(Math.hypot(0.1, 0.3), 9);
    const told = seams(SAND, { ...winter(''), ...heads('below:P1,high,0.1,0.05') });
    expect(told).toMatchObject([{ headDepth: 0.1 }]);
    expect(seams(SAND, heads('below:P1,high,0.1,0.05'))[0]!.headSpread).toBe(0.05);
    const deeper = [...SAND.slice(0, 2), 'P1,1.6,1.8,sand,,,,,', 'P1,1.8,3,clay,massive,,stiff,,'];
    const sealed = winter('1.85');
    expect(seams(deeper, sealed)).toMatchObject([{ known: undefined, headDepth: 0, assumed: true }]);
    const shallow = looks(
      'P1,2023-09-10,10:00,opened,1.5,1.5,10,,',
      'P1,2024-01-10,09:00,level,0.4,1.5,10,,',
    );
    expect(seams(SAND, shallow)).toMatchObject([{ known: undefined, assumed: true }]);
  });

  test('a look too soon is a lower limit; a dry hole keeps the water below its floor', () => {
    const soon = seams(SAND, looks(RISE[0]!, 'P1,2024-08-10,10:01,level,1.4,,,,'));
    expect(soon).toMatchObject([{ known: 1.4, headDepth: 0, assumed: true }]);
    expect(soon[0]!.heads[7]).toBe(0);
    const dry = looks(
      RISE[0]!,
      ...[1, 2, 3, 12].map((m) => `P1,2025-${String(m).padStart(2, '0')}-10,09:00,dry,,2,,,`),
    );
    expect(seams(SAND, dry)).toMatchObject([{ headDepth: 2, assumed: false }]);
  });

  test('what heads.csv and the looks say is put together: the higher counts', () => {
    const both = seams(SAND, { ...heads('below:P1,high,0.6,0.05'), ...looks(...RISE) });
    expect(both).toMatchObject([{ known: 0.1, assumed: false }]);
    expect(both[0]!.headDepth).toBe(0.1);
  });

  describe("the ground's own water in heads.csv is not that of a seam seen higher", () => {
    // 'P1' or 'site' in August at 1.3 m; the seam struck at 1.6 m rose to 0.5 m that month.
    const monthly = (place: string) => ({
      'heads.csv': `place,month,depth_m,spread_m\n${Array.from({ length: 12 }, (_, m) => `${place},${m + 1},1.3,0.1`).join('\n')}\n`,
    });
    const rise = (to: number) =>
      looks(
        'P1,2024-08-10,10:00,opened,2,2,10,,',
        'P1,2024-08-10,10:05,strike,1.6,,,,',
        `P1,2024-08-12,10:00,level,${to},,,,`,
        `P1,2024-08-13,10:00,level,${to},,,,`,
      );
    const deep = (extra: Record<string, string>, rows = SAND) => {
      const base = baseSurvey();
      const files = { ...base, 'pits.csv': `${[HEADER, ...rows].join('\n')}\n`, ...extra };
      const dug = withItem(
        withItem(files, 'pond.csv', 'depth', '1.8', 'm'),
        'pond.csv',
        'side_slope',
        '0.5',
        '',
      );
      return siteModel(surveyOf(dug), { samples: 8 }).ground.seams;
    };

    test.each(['site', 'P1'])('told of %s', (place) => {
      const [alike] = deep({ ...monthly(place), ...rise(1.25) });
      expect(alike).toMatchObject({ headDepth: 1.25, assumed: false });
      expect(alike!.heads[4]).toBe(1.3);
      const [apart] = deep({ ...monthly(place), ...rise(0.5) });
      expect(apart).toMatchObject({ known: 0.5, assumed: true });
      // Nobody looked into it in May.
      expect(apart!.heads[4]).toBe(0);
      expect(apart!.heads[7]).toBeCloseTo(0.5 - 1.645 * 0.3, 9);
    });

    test('nor of one that heads.csv tells by itself, in the months it leaves out', () => {
      const own = ['6', '7'].map((month) => `below:P1,${month},0.7,0.1`).join('\n');
      const both = { 'heads.csv': `${monthly('site')['heads.csv']}${own}\n` };
      const [seam] = deep(both);
      expect(seam).toMatchObject({ known: 0.7, assumed: true });
      expect(seam!.heads[0]).toBe(0);
      expect(seam!.heads[5]).toBe(0.7);
    });

    test('nor of the same layer in another hole', () => {
      const two = [...SAND, ...SAND.map((row) => row.replace('P1', 'P2'))];
      const levels = {
        'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nP1,pit,2,10\nP2,pit,3,10\n',
      };
      for (const seam of deep({ ...levels, ...monthly('site'), ...rise(0.5) }, two))
        expect(seam.heads[4]).toBe(0);
    });

    test('told of the site it counts from the ground at the rim, whatever the ground at the hole', () => {
      const levels = { 'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nP1,pit,2,10.1\n' };
      const [seam] = deep({ ...levels, ...monthly('site') });
      expect(seam!.headDepth).toBeCloseTo(1.3, 9);
    });
  });

  test('a hole that nobody looked into has the level of one that was, in level and not in depth', () => {
    const rows = [...SAND, ...SAND.map((row) => row.replace('P1', 'P2'))];
    const levels = {
      'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nP1,pit,2,10\nP2,pit,3,10.4\n',
    };
    const [one, two] = seams(rows, { ...levels, ...heads('below:P1,high,0.6,0.05') });
    expect(one).toMatchObject({ top: 1.6, headDepth: 0.6 });
    expect(two).toMatchObject({ headDepth: 0.6, assumed: false });
    expect(two!.top).toBeCloseTo(1.2, 12);
    expect(two!.headSpread).toBeGreaterThan(one!.headSpread);
  });

  test('peat above it weighs less', () => {
    const peat = [
      'P1,0,0.3,clay loam,rooted,,firm,,',
      'P1,0.3,0.9,peat,,,soft,,',
      ...CLAY.slice(1).map((r) => r.replace('0.3', '0.9')),
      'P1,1.6,2,sand,,,,,',
    ];
    expect(seams(peat)[0]!.coverWeight).toBeLessThan(seams(SAND)[0]!.coverWeight - 5000);
  });
});
