import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { standingHeight, taylorNumber, wetCrackedCut } from '../../lib/uplift/index.js';

describe("Taylor's stability number", () => {
  // Taylor 1937, φ = 0, as reproduced in handbooks; from memory.
  test.each([
    [90, 0.261],
    [75, 0.219],
    [60, 0.191],
    [53, 0.181],
  ])('at %d° is %d', (angle, number) => {
    expect(taylorNumber(angle)).toBeCloseTo(number, 12);
  });

  test('does not jump and does not fall with the angle; below 53° it no longer depends on it', () => {
    for (let angle = 1; angle < 90; angle += 0.25) {
      const step = taylorNumber(angle + 0.25) - taylorNumber(angle);
      expect(step).toBeGreaterThanOrEqual(0);
      expect(step).toBeLessThan(0.001);
    }
    expect(taylorNumber(10)).toBe(taylorNumber(53));
  });

  test.each([0, -5, 90.1, Number.NaN])('an angle of %d° is refused', (angle) => {
    expect(() => taylorNumber(angle)).toThrow(/invalid slope angle/);
  });
});

describe('height a side stands', () => {
  const strength = fc.double({ min: 5000, max: 200000, noNaN: true });
  const weight = fc.double({ min: 16000, max: 21000, noNaN: true });
  const slope = fc.double({ min: 0, max: 3, noNaN: true });
  const load = fc.double({ min: 0, max: 20000, noNaN: true });
  const more = fc.double({ min: 0, max: 2, noNaN: true });

  test('upright and unloaded it is the cut with a water-filled crack', () => {
    expect(standingHeight(20000, 18000, 0, 0)).toBeCloseTo(wetCrackedCut.compute(20000, 18000), 12);
  });

  test('a flatter side never stands lower, a loaded one never higher, a stronger one never lower', () => {
    fc.assert(
      fc.property(strength, weight, slope, load, more, (c, g, s, q, d) => {
        const height = standingHeight(c, g, s, q);
        expect(standingHeight(c, g, s + d, q)).toBeGreaterThanOrEqual(height - 1e-9);
        expect(standingHeight(c, g, s, q + 5000 * d)).toBeLessThanOrEqual(height + 1e-9);
        expect(standingHeight(c * (1 + d), g, s, q)).toBeGreaterThanOrEqual(height - 1e-9);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  test('an edging load costs its weight in clay', () => {
    expect(standingHeight(20000, 18000, 0.5, 0) - standingHeight(20000, 18000, 0.5, 3600)).toBeCloseTo(
      0.2,
      12,
    );
  });
});
