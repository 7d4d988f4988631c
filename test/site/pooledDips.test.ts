import { describe, expect, test } from 'vitest';
import { type PitDip, placesOf, pooledDips, spotHeads } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

const dip = (pit: string, depth: number): PitDip => ({ pit, depth, day: 100, says: 'level', error: 0.01 });
function pooled(levels: string, dips: PitDip[]) {
  const survey = read({ 'levels.csv': `point,role,x_m,y_m,level_m\n${levels}` });
  return pooledDips(dips, survey, placesOf(survey), spotHeads(survey, dips));
}

describe('readings of holes on other ground', () => {
  test('follow it by 0.85 of the difference, with the doubt of that', () => {
    const [low, high, unlevelled] = pooled('r,rim,0,0,10\nP1,pit,2,0,10\nP2,pit,30,0,11\n', [
      dip('P1', 0.5),
      dip('P2', 0.6),
      dip('P3', 0.7),
    ]);
    expect(low).toEqual({ ...dip('P1', 0.5), aboveGround: false });
    // Head 10.4 at P2; 0.85 of the metre of ground lower at the rim: 9.55, 0.45 m below it.
    expect(high.depth).toBeCloseTo(0.45, 12);
    expect(high.error).toBeCloseTo(Math.hypot(0.01, 0.15), 12);
    expect(unlevelled).toEqual(dip('P3', 0.7));
  });

  test('follow the plane of three levelled holes where there is one', () => {
    // Head 9.5 + 0.02 x + 0.01 y; 9.6 at the rim (5, 0), whose ground is 10.
    const levels = 'r,rim,5,0,10\nP1,pit,0,0,10.1\nP2,pit,20,0,10.5\nP3,pit,0,20,10.3\n';
    const dips = pooled(levels, [dip('P1', 0.6), dip('P2', 0.6), dip('P3', 0.6)]);
    for (const d of dips) expect(d.depth).toBeCloseTo(0.4, 9);
    expect(dips[0].error).toBe(0.01);
  });
});
