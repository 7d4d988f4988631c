import { describe, expect, test } from 'vitest';
import { Assumptions, heldAtWorst, pondOf, siteModel } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

function pond(rows: string[], datum = 0) {
  const assume = new Assumptions();
  const survey = read({
    'pond.csv': `item,value,unit,note\n${rows.map((row) => `${row},`).join('\n')}\n`,
    'levels.csv': `point,role,level_m\nr,rim,${datum}\n`,
  });
  return { ...pondOf(survey, datum, assume), assumed: assume.list };
}

const BARE = ['shape,box,', 'length,4,m', 'width,3,m', 'depth,1,m'];

test('what a survey does not say is assumed, and every assumption has its reason', () => {
  const { assumed, ...p } = pond(BARE);
  const items = assumed.map((a) => a.item);
  expect(items).toEqual(
    expect.arrayContaining([
      'side_slope',
      'water_above_rim_ground',
      'bedding',
      'kept_within',
      'highest_raise',
      'ring_width',
      'ring_fill',
      'ring_cap',
      'edging_load',
      'days_empty',
      'margin',
      'accepted_risk',
    ]),
  );
  expect(items).not.toContain('shape');
  for (const a of assumed) expect(a.reason.length).toBeGreaterThan(5);
  expect(p).toMatchObject({
    fullLevel: 0,
    margin: 0.1,
    acceptedRisk: 0.02,
    emptiedIn: 'any',
    existing: false,
  });
  // What is listed is what is used.
  const value = (item: string) => assumed.find((a) => a.item === item)!.value;
  expect(p.shape.sideSlope).toBe(value('side_slope'));
  expect(p.kept).toMatchObject({ within: value('kept_within') });
  expect(p.overflow).toBe('ring');
  expect(p.ring.width).toBe(value('ring_width'));
});

test('what it says is taken and not listed', () => {
  const { assumed, ...p } = pond([
    ...BARE,
    'side_slope,0.5,',
    'water_above_rim_ground,-0.05,m',
    'bedding,gravel,',
    'bedding_thickness,0.1,m',
    'usual_drawdown,0.2,m',
    'highest_raise,0,m',
    'ring_width,0,m',
    'ring_fill,clay,',
    'ring_cap,yes,',
    'edging_load,2,kPa',
    'emptied_in,3;9,',
    'days_empty,5,',
    'margin,0.05,m',
    'accepted_risk,0.01,',
  ]);
  expect(assumed).toEqual([]);
  expect(p).toMatchObject({
    shape: { shape: 'box', length: 4, width: 3, sideSlope: 0.5 },
    fullLevel: -0.05,
    kept: { held: 0.2 },
    highestRaise: 0,
    ring: { width: 0, fill: 'clay', capped: true },
    bedding: { kind: 'gravel', thickness: 0.1 },
    edgingLoad: 2000,
    emptiedIn: [3, 9],
    daysEmpty: 5,
    margin: 0.05,
    acceptedRisk: 0.01,
  });
});

describe('sizes', () => {
  test('a full level on the mark of levels.csv comes to the datum', () => {
    expect(pond([...BARE, 'full_level,10.12,m'], 10).fullLevel).toBeCloseTo(0.12, 12);
  });

  test.each([
    ['round', 'area,12,m2', 12],
    ['box', 'area,12,m2', 12],
    ['oval', 'area,12,m2', 12],
  ])('a %s pond known by %s has that area', (shape, row, area) => {
    const { shape: s } = pond([`shape,${shape},`, row, 'depth,1,m']);
    expect((shape === 'box' ? 1 : Math.PI / 4) * s.length * s.width).toBeCloseTo(area, 12);
  });

  test('length and area give the width; a length alone is both', () => {
    expect(pond(['shape,box,', 'length,6,m', 'area,12,m2', 'depth,1,m']).shape.width).toBeCloseTo(2, 12);
    expect(pond(['shape,round,', 'length,3,m', 'depth,1,m']).shape.width).toBe(3);
  });
});

test('a pond that is never emptied stands empty for no day, and none is assumed', () => {
  const { emptiedIn, daysEmpty, assumed } = pond([...BARE, 'emptied_in,never,']);
  expect(emptiedIn).toEqual([]);
  expect(daysEmpty).toBe(0);
  expect(assumed.map((a) => a.item)).not.toContain('days_empty');
});

test('ballast holds down what it weighs under water: 0.15 m of concrete at 24 kN/m³ 0.217 m of head', () => {
  const { floorBallast } = pond([...BARE, 'ballast,slab,', 'ballast_thickness,0.15,m']);
  expect(floorBallast).toBeCloseTo((0.15 * (24 - 9.81)) / 9.81, 2);
  expect(pond([...BARE, 'ballast,none,']).floorBallast).toBe(0);
});

test.each([
  [['area,12,m2', 'width,2,m'], 6, 2],
  [['area,12,m2', 'length,4,m'], 4, 3],
  [['area,16,m2'], 4, 4],
  [['shape,oval,', `area,${Math.PI * 3},m2`, 'width,2,m'], 6, 2],
])('what an area and one side leave unsaid is the other: %j', (said, length, width) => {
  const { shape } = pond([...said, 'depth,1,m']);
  expect(shape.length).toBeCloseTo(length, 12);
  expect(shape.width).toBeCloseTo(width, 12);
});

test('how its level is kept: topped up, never, or held; without weather as low all year as it may fall', () => {
  const kept = (...items: string[]) => pond([...BARE, ...items]).kept;
  expect(kept('kept_within,5,cm')).toEqual({ within: 0.05, spread: 0 });
  expect(kept('kept_within,never,')).toEqual({ within: Number.POSITIVE_INFINITY, spread: 0 });
  expect(kept('usual_drawdown,0.2,m')).toEqual({ held: 0.2 });
  const assume = new Assumptions();
  const never = { within: Number.POSITIVE_INFINITY, spread: 0 };
  expect(heldAtWorst({ within: 0.05, spread: 0 }, 1, { latitude: 52 }, assume)).toEqual({ held: 0.05 });
  expect(assume.list).toEqual([]);
  expect(heldAtWorst(never, 0.3, { latitude: 52 }, assume)).toEqual({ held: 0.3 });
  expect(heldAtWorst(never, 1.2, { latitude: 52 }, assume)).toEqual({ held: 0.5 });
  // Nearer the equator a summer may dry it out.
  expect(heldAtWorst(never, 1.2, { latitude: -38 }, assume)).toEqual({ held: 1.2 });
  // Five months of 0.2 m without rain, filled up again after them: 1.05 × 1.15 × 1 m of a dry year, whatever month is the first.
  for (const first of [1, 9]) {
    const dry = Array.from({ length: 12 }, (_, i) => (i + first) % 12 < 5);
    const ordinary = { demand: dry.map((d) => (d ? 0.2 : 0.02)), liquid: dry.map((d) => (d ? 0 : 0.3)) };
    const { held } = heldAtWorst(never, 3, { latitude: 52, ordinary }, assume) as { held: number };
    expect(held).toBeCloseTo(1.05 * 1.15, 9);
  }
  expect(assume.list[0].reason).toContain('never topped up');
});

test.each([
  ['at its floor', 'water_above_rim_ground,-1,m,'],
  ['below where its sides meet', 'side_slope,2,,\nwater_above_rim_ground,-0.8,m,'],
])('a pond that is full %s is refused', (_, facts) => {
  const pond = `item,value,unit,note\nlength,4,m,\nwidth,3,m,\ndepth,1,m,\n${facts}\n`;
  expect(() => siteModel(read({ 'pond.csv': pond }), { samples: 8 })).toThrow(
    /pond\.csv:\d+ value: invalid water_above_rim_ground - full it would stand/,
  );
});
