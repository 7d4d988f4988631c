import { describe, expect, test } from 'vitest';
import { type PitDip, spotHeads } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

const LEVELS = [
  'A,spot,0,0,10.00',
  'B,spot,20,10,10.60',
  'P1,pit,0,2,10.05',
  'P2,pit,18,0,10.40',
  'P3,pit,6,14,10.30',
];
const site = (rows = LEVELS) => read({ 'levels.csv': `point,role,x_m,y_m,level_m\n${rows.join('\n')}\n` });
/** Depth at each pit for a table of slopes 0.02 and 0.01 that stands at `at` in the origin. */
const GROUND: Record<string, [number, number, number]> = {
  P1: [0, 2, 10.05],
  P2: [18, 0, 10.4],
  P3: [6, 14, 10.3],
};
const round = (day: number, at: number, pits = ['P1', 'P2', 'P3']): PitDip[] =>
  pits.map((pit, i) => {
    const [x, y, ground] = GROUND[pit];
    return {
      pit,
      day: day + 0.4 * i,
      depth: ground - (at + 0.02 * x + 0.01 * y),
      says: 'level',
      error: 0.01,
    };
  });

describe('three levelled holes', () => {
  const { plane, spots } = spotHeads(site(), round(100, 9.5));
  test('give the head at each spot, the first being the planned one', () => {
    expect(spots.map((s) => [s.name, s.planned, s.by])).toEqual([
      ['A', true, 'plane'],
      ['B', false, 'plane'],
    ]);
    expect(spots[0].head).toBeCloseTo(9.5, 9);
    expect(spots[1].head).toBeCloseTo(10, 9);
    expect(spots[1].rise).toBeCloseTo(0.5, 9);
    expect(spots[1].depth).toBeCloseTo(0.6, 9);
    expect(spots[0].holes).toEqual(['P1', 'P2', 'P3']);
  });

  test('and gradient and direction of the groundwater', () => {
    expect(plane!.gradient).toBeCloseTo(Math.hypot(0.02, 0.01), 9);
    // Down to the west and a little south.
    expect(plane!.azimuth).toBeCloseTo(180 + (Math.atan2(2, 1) * 180) / Math.PI, 6);
  });

  test('spread more at a spot outside them than between', () => {
    expect(spots[1].spread).toBeGreaterThan(spots[0].spread);
    expect(spots[0].spread).toBeGreaterThan(0.03);
  });
});

test('a later, higher round is the one shown; a round of two lends its slope', () => {
  const { spots } = spotHeads(site(), [
    ...round(100, 9.2),
    ...round(160, 9.6),
    ...round(200, 9.8, ['P1', 'P2']),
  ]);
  expect(Math.floor(spots[0].day!)).toBe(160);
  expect(spots[0].head).toBeCloseTo(9.6, 9);
});

describe('without a plane', () => {
  test('the nearest hole stands in, following the ground in part, with more spread', () => {
    const { plane, spots } = spotHeads(site(), round(100, 9.5, ['P1', 'P2']));
    expect(plane).toBeUndefined();
    expect(spots.map((s) => [s.by, s.holes])).toEqual([
      ['nearest hole', ['P1']],
      ['nearest hole', ['P2']],
    ]);
    // P1 has 10.05 m of ground and water at 9.52 m; the spot lies 0.05 m lower.
    expect(spots[0].head).toBeCloseTo(9.52 - 0.85 * 0.05, 9);
    expect(spots[0].spread).toBeGreaterThan(0.1);
    expect(spots[1].spread).toBeGreaterThan(spots[0].spread);
  });

  test('holes in a row are as good as one', () => {
    const row = ['A,spot,0,0,10', 'P1,pit,0,1,10', 'P2,pit,10,1.1,10.2', 'P3,pit,20,1,10.4'];
    const dips = ['P1', 'P2', 'P3'].map(
      (pit): PitDip => ({ pit, day: 5, depth: 0.5, says: 'level', error: 0.01 }),
    );
    expect(spotHeads(site(row), dips).spots[0]).toMatchObject({ by: 'nearest hole', holes: ['P1'] });
  });

  test('a hole without a place on the plan counts as 10 m away', () => {
    const survey = read({ 'levels.csv': 'point,role,level_m\nR1,rim,10.2\nR2,rim,10\nP1,pit,10.1\n' });
    const dips: PitDip[] = [{ pit: 'P1', day: 5, depth: 0.4, says: 'level', error: 0.01 }];
    const { spots } = spotHeads(survey, dips);
    expect(spots).toMatchObject([
      { name: 'planned pond', ground: 10, planned: true, by: 'nearest hole', rise: 0 },
    ]);
    expect(spots[0].head).toBeCloseTo(9.7 - 0.085, 9);
    expect(spots[0].spread).toBeCloseTo(Math.hypot(0.1, 0.1, 0.015), 9);
  });
});

describe('nothing is invented', () => {
  test('without a level, a levelled hole or a spot there is no head', () => {
    const bound = round(100, 9.5).map((d): PitDip => ({ ...d, says: 'below' }));
    expect(spotHeads(site(), bound).spots).toEqual([]);
    expect(spotHeads(site(['A,spot,0,0,10']), round(100, 9.5)).spots).toEqual([]);
    expect(() => site(LEVELS.slice(2))).toThrow("role 'rim'");
    expect(spotHeads(site(), []).spots).toEqual([]);
  });
});

describe('levelled holes that give no plane at the pond are told', () => {
  const moved = (x: number, y: number) => site([`A,spot,${x},${y},10.00`, ...LEVELS.slice(2)]);
  const looks = round(100, 9.5);
  test('because it lies far from them', () => {
    const far = spotHeads(moved(400, 400), looks);
    expect(far.plane).toBeUndefined();
    expect(far.noPlane).toMatch(/ten times as far/);
    expect(far.spots[0]!.by).toBe('nearest hole');
    expect(spotHeads(moved(0, 0), looks).noPlane).toBeUndefined();
  });

  test('because their water rises too steeply to be one', () => {
    const steep = looks.map((dip, i) => ({ ...dip, depth: dip.depth + 12 * i }));
    expect(spotHeads(site(), steep).noPlane).toMatch(/more than 1 in 2/);
  });

  test('and two holes are not asked for a plane', () => {
    expect(spotHeads(site(), round(100, 9.5, ['P1', 'P2'])).noPlane).toBeUndefined();
  });
});
