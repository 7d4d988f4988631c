/** A point beside the pond is as far from it as from the line of its rim, however few points of that were levelled. */
import { describe, expect, test } from 'vitest';
import { uniforms } from '../../lib/sampling/index.js';
import { distanceToLine } from '../../lib/site/boundary.js';
import { reachBeyond, rimLine } from '../../lib/site/rimLine.js';

const CORNERS = [
  { x: -3, y: -1.5 },
  { x: 3, y: -1.5 },
  { x: 3, y: 1.5 },
  { x: -3, y: 1.5 },
];
const MIDDLES = [
  { x: 0, y: -1.5 },
  { x: 3, y: 0 },
  { x: 0, y: 1.5 },
  { x: -3, y: 0 },
];
const turned = (points: typeof CORNERS, by: number) =>
  points.map(({ x, y }) => ({
    x: x * Math.cos(by) - y * Math.sin(by),
    y: x * Math.sin(by) + y * Math.cos(by),
  }));

describe.each([0, 0.4, 1.1, Math.PI / 2])('a box of 6 by 3 m turned by %f', (by) => {
  // Beside the middle of a side, near a corner, off a corner.
  test.each([
    [{ x: 0, y: 2 }, 0.5],
    [{ x: 2.9, y: 2 }, 0.5],
    [{ x: -3.4, y: -1.4 }, 0.4],
    [{ x: 6, y: 5.5 }, 5],
  ])('%j is %f m from it', (at, expected) => {
    const [there] = turned([at], by);
    for (const points of [CORNERS, MIDDLES, [...CORNERS].reverse(), [...CORNERS, ...MIDDLES]])
      expect(distanceToLine(there!, rimLine(turned(points, by), 18))).toBeCloseTo(expected, 9);
  });
});

test('points at one place are that place', () => {
  const here = { x: 1, y: 2 };
  expect(distanceToLine({ x: 4, y: 6 }, rimLine([here, here, here, here], 18))).toBeCloseTo(5, 9);
  const flat = rimLine([here, { x: 2, y: 2 }, { x: 3, y: 2 }], 18);
  expect(distanceToLine({ x: 2, y: 5 }, flat)).toBeCloseTo(3, 9);
});

test('two points are a line, one is a point, points on one line are that line', () => {
  const [a, b] = CORNERS;
  expect(rimLine([a!, b!], 18)).toEqual([a, b]);
  expect(rimLine([a!], 18)).toEqual([a]);
  const flat = rimLine([a!, { x: 0, y: -1.5 }, b!], undefined);
  expect(distanceToLine({ x: 0, y: 0 }, flat)).toBeCloseTo(1.5, 9);
});

test('what is near is never counted farther than it may be, by whatever points of the rim', () => {
  const next = uniforms(4);
  for (let i = 0; i < 4000; i++) {
    const [length, width] = [1 + 9 * next(), 1 + 4 * next()].sort((a, b) => b - a) as [number, number];
    const box = [
      { x: 0, y: 0 },
      { x: length, y: 0 },
      { x: length, y: width },
      { x: 0, y: width },
    ];
    const side = Math.floor(4 * next());
    const [from, to] = [box[side]!, box[(side + 1) % 4]!];
    const along = (t: number) => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) });
    const other = box[Math.floor(4 * next())]!;
    for (const points of [
      [along(next())],
      [along(next()), other],
      [along(next()), along(next())],
      [along(0.1), along(0.5), along(0.9)],
      box,
    ]) {
      const line = rimLine(points, length * width);
      const there = { x: 40 * next() - 15, y: 40 * next() - 15 };
      const outside = Math.hypot(
        Math.max(-there.x, there.x - length, 0),
        Math.max(-there.y, there.y - width, 0),
      );
      if (outside === 0) continue;
      const counted = distanceToLine(there, line) - reachBeyond(line, length, width);
      expect(counted, JSON.stringify({ points, there, length, width })).toBeLessThanOrEqual(outside + 1e-9);
    }
  }
});
