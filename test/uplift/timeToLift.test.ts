import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clayArrival, emptyTime, liftTimes, type PondShape, secondsToFill } from '../../lib/uplift/index.js';
import { between, RUNS } from './geometry.js';

const POND: PondShape = { shape: 'round', length: 4, width: 4, sideSlope: 0.5 };
const HOUR = 3600;

describe('time until the water that can arrive lifts the floor', () => {
  test('through tight clay it takes weeks, through loose clay hours, from a bed in a storm minutes', () => {
    const clay = (k: number) => clayArrival(POND, 1, 0.7, k);
    const time = (arrival: Partial<Parameters<typeof secondsToFill>[1]>) =>
      secondsToFill(7, { clay: 0, ring: 0, storm: 0, ...arrival });
    expect(time({ clay: clay(1e-9) }) / HOUR).toBeGreaterThan(24 * 7);
    expect(time({ clay: clay(1e-6) }) / HOUR).toBeLessThan(24);
    // 25 m² of roof and lawn in a cloudburst of 30 mm an hour.
    expect(time({ storm: (25 * 0.03) / HOUR }) / 60).toBeLessThan(15);
    expect(time({ ring: 0.15 })).toBe(0);
    expect(time({})).toBe(Number.POSITIVE_INFINITY);
  });

  test('10, 20 and 50 mm are in proportion, less what stands in the ring', () => {
    expect(liftTimes(5, { clay: 1e-6, ring: 0, storm: 0 }).map(({ seconds }) => Math.round(seconds))).toEqual(
      [50000, 100000, 250000],
    );
    expect(
      liftTimes(5, { clay: 1e-6, ring: 0.06, storm: 0 }).map(({ seconds }) => Math.round(seconds)),
    ).toEqual([0, 40000, 190000]);
  });

  test('more head, more conductive clay, more in the ring never give more time', () => {
    fc.assert(
      fc.property(
        between(0, 1),
        between(0, 0.3),
        between(-9, -6),
        between(0, 0.2),
        (rise, more, log, ring) => {
          const time = (h: number, k: number, r: number) =>
            secondsToFill(6, { clay: clayArrival(POND, 1, h, k), ring: r, storm: 0 });
          const base = time(rise, 10 ** log, ring);
          expect(time(rise + more, 10 ** log, ring)).toBeLessThanOrEqual(base);
          expect(time(rise, 10 ** (log + more), ring)).toBeLessThanOrEqual(base);
          expect(time(rise, 10 ** log, ring + more)).toBeLessThanOrEqual(base);
        },
      ),
      RUNS,
    );
  });

  test('the inflow fades to nothing as the head falls to the floor', () => {
    expect(clayArrival(POND, 1, 1e-9, 1e-7)).toBeLessThan(1e-15);
    expect(clayArrival(POND, 1, 0, 1e-7)).toBe(0);
    expect(clayArrival(POND, 1, -0.3, 1e-7)).toBe(0);
  });

  test('a bowl that comes to a point still has a patch to lift', () => {
    expect(secondsToFill(0, { clay: 1e-6, ring: 0, storm: 0 })).toBeCloseTo(1000, 9);
  });
});

test('an empty pond is safe for the shorter of the two times', () => {
  const never = Number.POSITIVE_INFINITY;
  expect(emptyTime(5 * HOUR, 9 * HOUR)).toEqual({ seconds: 5 * HOUR, governs: 'lift' });
  expect(emptyTime(never, 0)).toEqual({ seconds: 0, governs: 'sides' });
  expect(emptyTime(never, never)).toEqual({ seconds: never, governs: 'none' });
});
