import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../lib/climate/index.js';
import {
  Assumptions,
  monthlyAtSpill,
  monthlyFromDips,
  monthlyFromHeads,
  type PitDip,
  placesOf,
} from '../../lib/site/index.js';
import { seasonalHighFromColour } from '../../lib/soil/index.js';
import { read } from '../survey/folder.js';

const WINTER = [1, 2, 3, 4, 11, 12];

function heads(rows: string[], levels = '') {
  const survey = read({
    'heads.csv': `place,month,depth_m,spread_m,source\n${rows.join('\n')}\n`,
    'levels.csv': levels === '' ? undefined : `point,role,level_m\n${levels}`,
  });
  const assume = new Assumptions();
  return {
    water: monthlyFromHeads(survey, placesOf(survey), WINTER, undefined, assume),
    assumed: assume.list.map((a) => a.item),
  };
}
const rounded = (values: number[]) => values.map((v) => Number(v.toFixed(9)));

describe('from heads.csv', () => {
  test('wet months without a level are as the wettest told; the others lie straight between, at their wetter ends', () => {
    const { water, assumed } = heads(['site,3,0.2,0.05,', 'site,9,0.8,0.05,']);
    expect(rounded(water!.low)).toEqual([0.2, 0.2, 0.2, 0.2, 0.26, 0.38, 0.5, 0.62, 0.8, 0.35, 0.2, 0.2]);
    expect(water).toMatchObject({ spread: 0.05, fixed: false, source: 'heads' });
    expect(assumed).toEqual(['heads.csv months']);
  });

  test('one wet month alone between two that are told lies between them', () => {
    const told = [1, 3, 4, 11, 12].map((month) => `site,${month},${month === 1 ? 0.2 : 0.4},0.05,`);
    expect(heads([...told, 'site,8,1,,']).water!.low[1]).toBeCloseTo(0.25, 12);
  });

  test("a yearly 'high' alone is taken for every month; beside months it is every wet one not told", () => {
    expect(heads(['site,high,0.3,0.1,']).water!.low).toEqual(Array(12).fill(0.3));
    const { water } = heads(['site,8,1.3,,', 'site,9,1.2,,', 'site,10,0.9,,', 'site,high,0.05,,']);
    expect(rounded(water!.low)).toEqual([
      ...Array(4).fill(0.05),
      // Steps of 0.3125 from April to August, half a step wetter.
      0.20625,
      0.51875,
      0.83125,
      1.3,
      1.2,
      0.9,
      0.05,
      0.05,
    ]);
    // Where every wet month is told it is the wettest of them.
    const all = WINTER.map((month) => `site,${month},${month === 2 ? 0.3 : 0.4},,`);
    const low = heads([...all, 'site,high,0.1,,']).water!.low;
    expect([low[1], low[0]]).toEqual([0.1, 0.4]);
    // A high that is no higher changes nothing.
    expect(heads([...all, 'site,high,0.4,,']).water!.low[1]).toBe(0.3);
  });

  test('of a winter that nobody told the summer says nothing: it stands at the ground, and is to be looked up', () => {
    const { water } = heads(['site,7,1.4,,', 'site,9,1.2,,']);
    expect(WINTER.map((month) => water!.low[month - 1])).toEqual(Array(6).fill(0));
    expect(water!.source).toBe('spill level');
    expect(heads(['site,7,1.4,,', 'site,high,0.6,,']).water!.source).toBe('heads');
  });

  test('the site goes before a pit; of pits the one whose ground is nearest to the rim', () => {
    expect(heads(['site,high,0.3,,', 'P1,high,0.5,,']).water!.low[0]).toBe(0.3);
    const levels = 'r1,rim,10\nP1,pit,10.6\nP2,pit,10.1\n';
    expect(heads(['P1,high,0.5,,', 'P2,high,0.7,,'], levels).water!.low[0]).toBe(0.7);
  });

  test('three levelled holes on the plan give the water at the pond by their plane', () => {
    const survey = read({
      'heads.csv': `place,month,depth_m,spread_m,source\n${[
        // A table of slopes 0.02 and 0.01 that stands at 9.5 m in March and at 9.0 m in September at the origin.
        ...['A,3,0.50', 'B,3,0.40', 'C,3,0.55', 'A,9,1.00', 'B,9,0.90', 'C,9,1.05'].map(
          (row) => `${row},0.03,`,
        ),
      ].join('\n')}\n`,
      'levels.csv':
        'point,role,x_m,y_m,level_m\n' +
        'A,pit,0,0,10\nB,pit,20,0,10.3\nC,pit,0,10,10.15\n' +
        'r1,rim,9,4,10.1\nr2,rim,11,4,10.2\nr3,rim,11,6,10.2\nr4,rim,9,6,10.2\n',
    });
    const assume = new Assumptions();
    const water = monthlyFromHeads(survey, placesOf(survey), WINTER, undefined, assume)!;
    expect(assume.list.map(({ item }) => item)).toContain('heads at the pond');
    // 9.5 + 0.02 × 9 + 0.01 × 4 at r1, the low side; the datum is its ground, 10.1.
    expect(water.low[2]).toBeCloseTo(10.1 - 9.72, 9);
    expect(water.low[8]).toBeCloseTo(10.1 - 9.22, 9);
    expect(water.spread).toBeGreaterThan(0.03);
  });

  test('behind the uphill wall it counts from the ground there', () => {
    const { water } = heads(['site,high,0.3,,', 'uphill,high,0.2,,'], 'r1,rim,10\nr2,rim,10.5\n');
    expect(water!.low[0]).toBe(0.3);
    expect(water!.high![0]).toBeCloseTo(-0.3, 12);
    const only = heads(['uphill,high,0.2,,'], 'r1,rim,10\nr2,rim,10.5\n').water!;
    expect(only.high![0]).toBeCloseTo(-0.3, 12);
    expect(only.low[0]).toBeCloseTo(0.2, 12);
  });

  test('the largest spread counts; none is assumed and listed; reading error is one draw for all years', () => {
    expect(heads(['site,3,0.2,0.05,', 'site,9,0.8,0.2,']).water!.spread).toBe(0.2);
    const told = heads(['site,high,0.3,,']);
    expect(told.water).toMatchObject({ spread: 0.15, fixed: false });
    expect(told.assumed).toContain('heads.csv spread');
    expect(heads(['site,high,0.3,0.02,tape: Reading error']).water!.fixed).toBe(true);
  });

  test('a seam alone says nothing of the water at the pond', () => {
    expect(heads(['below:P1,high,0.3,,']).water).toBeUndefined();
  });
});

describe('from dips', () => {
  const dip = (month: number, depth: number, says: PitDip['says'] = 'level', year = 2023): PitDip => ({
    pit: 'P1',
    day: dayNumber(year, month, 15),
    depth,
    says,
    error: 0.01,
  });

  test('the highest of each month, dry as the floor, and no limit from below', () => {
    const water = monthlyFromDips(
      [dip(1, 0.4), dip(1, 0.3), dip(2, 0.1, 'above'), dip(3, 0.5), dip(8, 1.5, 'below')],
      WINTER,
      new Assumptions(),
    );
    expect(rounded(water.low.slice(0, 3))).toEqual([0.3, 0.35, 0.5]);
    expect(water.low[7]).toBe(1.5);
    // April is wet and not told, as January; June lies half way to August, half a step wetter.
    expect(rounded([water.low[5]])).toEqual([0.75]);
  });

  test('more winters make the spread from year to year smaller, and it is listed', () => {
    const winters = (n: number) => {
      const assume = new Assumptions();
      const dips = Array.from({ length: n }, (_, i) => dip(1, 0.3, 'level', 2010 + i));
      return {
        spread: monthlyFromDips(dips, WINTER, assume).spread,
        reason: assume.list[0].reason,
      };
    };
    expect([1, 2, 5].map((n) => winters(n).spread)).toEqual([0.3, 0.2, 0.1]);
    expect(winters(1).reason).toMatch(/one wet season/);
    expect(winters(5).reason).toMatch(/5 wet seasons/);
  });
});

describe('nothing known', () => {
  test('the water stands at the spill level in the wet months', () => {
    const { low } = monthlyAtSpill(0, [6, 7, 8], undefined, new Assumptions());
    expect(low.map((d) => d === 0)).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 0, 0].map(Boolean));
  });

  test('mottles deep down let it stand lower, but not far', () => {
    const assume = new Assumptions();
    const winter = (top: number) =>
      monthlyAtSpill(0, WINTER, seasonalHighFromColour([{ top, mottles: 'common' }]), assume).low[0];
    expect(winter(0.35)).toBeCloseTo(0.17, 12);
    expect(winter(1.5)).toBeCloseTo(0.3, 12);
    expect(winter(0.1)).toBe(0);
    expect(assume.list[0].reason).toMatch(/common mottles from 0\.35 m/);
  });
});
