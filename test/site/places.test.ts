import { describe, expect, test } from 'vitest';
import { placesOf } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

const places = (rows: string[]) =>
  placesOf(read({ 'levels.csv': `point,role,x_m,y_m,distance_m,level_m\n${rows.join('\n')}\n` }));

describe('levels', () => {
  test('count from the lowest ground at the rim', () => {
    const p = places([
      'r1,rim,,,,10.30',
      'r2,rim,,,,10.05',
      'P1,pit,,,,10.15',
      'sw,spill,,,,9.95',
      'sw2,spill,,,,9.98',
      'surface,pond,,,,10.00',
      'pipe,dip-pipe,,,,10.20',
    ]);
    expect(p.datum).toBeCloseTo(10.05, 12);
    expect(p.highRim).toBeCloseTo(0.25, 12);
    expect(p.pits.get('P1')).toBeCloseTo(0.1, 12);
    expect(p.spill).toBeCloseTo(-0.1, 12);
    expect(p.pondPoint).toBeCloseTo(-0.05, 12);
    expect(p.dipPipePoint).toBeCloseTo(0.15, 12);
  });

  test('from the first spot where no rim was levelled, and from nought where nothing was', () => {
    expect(places(['s1,spot,,,,5.2', 's2,spot,,,,4.9']).datum).toBeCloseTo(5.2, 12);
    expect(placesOf(read())).toMatchObject({ datum: 0, highRim: 0, outlets: [], footings: [], houses: [] });
  });
});

describe('distances', () => {
  test('are taped, or come from coordinates to the nearest rim point', () => {
    const p = places([
      'r1,rim,0,0,,10',
      'r2,rim,4,0,,10',
      'r3,rim,4,-3,,10',
      'r4,rim,0,-3,,10',
      'wall,footing,7,4,,9.5',
      'shed,footing,7,4,2.5,9.6',
      'home,house,-3,-7,,10.4',
      'next,neighbour-house,,,9,10.1',
      'b1,boundary,4,6,,10',
      'b2,boundary,10,0,,10',
    ]);
    expect(p.footings).toEqual([
      { name: 'wall', level: expect.closeTo(-0.5, 12), distance: 5 },
      { name: 'shed', level: expect.closeTo(-0.4, 12), distance: 2.5 },
    ]);
    expect(p.houses).toEqual([
      { name: 'home', level: expect.closeTo(0.4, 12), distance: 5, neighbour: false },
      { name: 'next', level: expect.closeTo(0.1, 12), distance: 9, neighbour: true },
    ]);
    // Nearest to the line from b1 to b2, not to either of them: from (4, 0), 6·6/√72.
    expect(p.boundary).toBeCloseTo(36 / Math.hypot(6, 6), 12);
  });
});

describe('the boundary', () => {
  const south = ['r1,rim,0,0,,10', 'r2,rim,0,-2,,10', 'end,outlet,0,-12,,8'];
  const outlet = (rows: string[]) => places([...south, ...rows]).outlets[0];

  test('between pond and outlet is seen wherever its points lie', () => {
    const across = ['w,boundary,-30,-7,,10', 'e,boundary,30,-7,,10'];
    expect(outlet(across)).toMatchObject({ beyondBoundary: true, toBoundary: 5 });
    // Farther from the pond than the outlet, but on the other side.
    const north = ['w,boundary,-30,7,,10', 'e,boundary,30,7,,10'];
    expect(outlet(north)).toMatchObject({ beyondBoundary: false, toBoundary: 19 });
    // Nearer than the outlet, and beside the way.
    expect(outlet(['a,boundary,4,-30,,10', 'b,boundary,4,30,,10'])).toMatchObject({
      beyondBoundary: false,
      toBoundary: 4,
    });
  });

  test('is joined in the order of the file, and a corner on the way is between', () => {
    expect(outlet(['a,boundary,-5,-5,,10', 'b,boundary,0,-7,,10', 'c,boundary,5,-5,,10'])).toMatchObject({
      beyondBoundary: true,
    });
    // A corner that only touches the way from one side.
    expect(outlet(['a,boundary,5,-4,,10', 'b,boundary,0,-7,,10', 'c,boundary,5,-9,,10'])).toMatchObject({
      beyondBoundary: false,
    });
  });

  test('along a ditch: an outlet on the line is not beyond it', () => {
    expect(outlet(['a,boundary,-9,-12,,10', 'b,boundary,9,-12,,10'])).toMatchObject({
      beyondBoundary: false,
      toBoundary: 0,
    });
  });

  test('by tape alone: farther than the outlet it is beyond it, at least so far; nearer it may lie on any side', () => {
    const taped = (distance: number) =>
      places([`r1,rim,,,0,10`, `end,outlet,,,12,8`, `b,boundary,,,${distance},10`]).outlets[0];
    expect(taped(9)).toMatchObject({ wayUnknown: true });
    expect(taped(9).beyondBoundary).toBeUndefined();
    expect(taped(15)).toMatchObject({ beyondBoundary: false, toBoundary: 3 });
    expect(places(['r1,rim,0,0,,10', 'end,outlet,0,-12,,8']).outlets[0].toBoundary).toBeUndefined();
  });
});

describe('outlets', () => {
  test('take the ditch and flood beside them, not one as far away on the other side', () => {
    const p = places([
      'r1,rim,0,0,,10',
      'east,outlet,20,0,,9.0',
      'ditch-west,ditch,-20,0,,8.0',
      'ditch-east,ditch,22,0,,8.8',
      'flood-west,flood,-20,1,,8.5',
      'flood-east,flood,22,1,,9.2',
    ]);
    expect(p.outlets).toEqual([
      {
        name: 'east',
        level: expect.closeTo(-1, 12),
        distance: 20,
        ditch: expect.closeTo(-1.2, 12),
        flood: expect.closeTo(-0.8, 12),
      },
    ]);
  });

  test('by tape only: the ones at the most similar distance', () => {
    const p = places([
      'r1,rim,,,0,10',
      'near,outlet,,,6,9.4',
      'far,outlet,,,30,8.6',
      'd1,ditch,,,7,9.2',
      'd2,ditch,,,31,8.3',
    ]);
    expect(p.outlets.map((o) => [o.name, o.ditch, o.flood])).toEqual([
      ['near', expect.closeTo(-0.8, 12), undefined],
      ['far', expect.closeTo(-1.7, 12), undefined],
    ]);
  });

  test('a lawful place for pumped water is kept apart', () => {
    expect(places(['r1,rim,,,,10', 'lawn,discharge,,,12,10.4']).discharges[0]).toEqual({
      name: 'lawn',
      level: expect.closeTo(0.4, 12),
      distance: 12,
    });
  });
});
