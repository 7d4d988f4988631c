import { describe, expect, test } from 'vitest';
import { deepestFloor, outline, type PondShape, planArea, pondVolume } from '../../lib/uplift/index.js';

const POND: Record<PondShape['shape'], PondShape> = {
  box: { shape: 'box', length: 4, width: 3, sideSlope: 0.5 },
  round: { shape: 'round', length: 4, width: 4, sideSlope: 0.5 },
  oval: { shape: 'oval', length: 5, width: 3, sideSlope: 0.5 },
};

/** Volume as the sum of 20 000 slices. */
function summed(p: PondShape, depth: number): number {
  const n = 20000;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += planArea(p, ((i + 0.5) * depth) / n);
  return (sum * depth) / n;
}

describe.each(Object.values(POND))('$shape', (pond) => {
  test.each([0, 0.3, 0.9, 1.4])('volume to %d m is the area summed over the depth', (depth) => {
    expect(Math.abs(pondVolume(pond, depth) - summed(pond, depth))).toBeLessThan(1e-7);
  });

  test('upright it is area times depth, and no depth is too deep', () => {
    const upright = { ...pond, sideSlope: 0 };
    expect(pondVolume(upright, 0.9)).toBeCloseTo(0.9 * planArea(upright, 0), 12);
    expect(deepestFloor(upright)).toBe(Number.POSITIVE_INFINITY);
  });

  test('the floor is gone where the sides meet, and a hair above it is not', () => {
    const deepest = deepestFloor(pond);
    expect(planArea(pond, deepest)).toBeCloseTo(0, 12);
    expect(planArea(pond, deepest - 0.01)).toBeGreaterThan(0);
    expect(planArea(pond, deepest + 1)).toBe(0);
  });
});

test('a round pond is the frustum of a cone: π h (R² + R r + r²)/3', () => {
  const [R, r, h] = [2, 1.55, 0.9];
  expect(pondVolume(POND.round, h)).toBeCloseTo((Math.PI * h * (R * R + R * r + r * r)) / 3, 12);
});

test('a square pond is the frustum of a pyramid: h (A + a + √(A a))/3', () => {
  const [A, a, h] = [9, 2.1 * 2.1, 0.9];
  const square: PondShape = { shape: 'box', length: 3, width: 3, sideSlope: 0.5 };
  expect(pondVolume(square, h)).toBeCloseTo((h * (A + a + Math.sqrt(A * a))) / 3, 12);
});

describe('outline', () => {
  test('of a box and of a circle', () => {
    expect(outline(POND.box)).toBe(14);
    expect(outline(POND.box, 1)).toBe(10);
    expect(outline(POND.round)).toBeCloseTo(4 * Math.PI, 12);
    expect(outline(POND.round, 1)).toBeCloseTo(3 * Math.PI, 12);
  });

  test.each([
    [5, 3],
    [6, 2],
    [4, 3.9],
  ])('of an ellipse %d by %d m against the arc summed over 100 000 chords', (length, width) => {
    const n = 100000;
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const t = ((i + 0.5) / n) * 2 * Math.PI;
      sum += Math.hypot((length / 2) * Math.sin(t), (width / 2) * Math.cos(t)) * ((2 * Math.PI) / n);
    }
    expect(Math.abs(outline({ shape: 'oval', length, width, sideSlope: 0 }) / sum - 1)).toBeLessThan(1e-4);
  });
});
