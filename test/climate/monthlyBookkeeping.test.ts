import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ordinaryYear, type RetentionRule, runBookkeeping } from '../../lib/climate/index.js';

const month = fc.double({ min: 0, max: 0.3, noNaN: true });
const year = fc.array(month, { minLength: 12, maxLength: 12 });
const WAYS: RetentionRule[] = ['straight', 'exponential'];
const sum = (v: number[]) => v.reduce((a, b) => a + b, 0);

describe.each(WAYS)('%s bookkeeping', (way) => {
  test('closes, never overfills, never draws more than is asked', () => {
    fc.assert(
      fc.property(year, year, fc.double({ min: 0.02, max: 0.4, noNaN: true }), (rain, demand, capacity) => {
        const b = runBookkeeping(rain, demand, capacity, capacity / 2, way);
        expect(Math.abs(b.closure)).toBeLessThanOrEqual(1e-12);
        for (let m = 0; m < 12; m++) {
          expect(b.storage[m]).toBeGreaterThanOrEqual(0);
          expect(b.storage[m]).toBeLessThanOrEqual(capacity);
          expect(b.surplus[m]).toBeGreaterThanOrEqual(-1e-15);
          expect(b.deficit[m]).toBeGreaterThanOrEqual(-1e-15);
        }
      }),
      { seed: 1 },
    );
  });

  test('an ordinary year ends where it began: what falls is drawn or left over', () => {
    fc.assert(
      fc.property(year, year, (rain, demand) => {
        const b = ordinaryYear(rain, demand, 0.1, way);
        expect(Math.abs(sum(rain) - sum(b.drawn) - sum(b.surplus))).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 1 },
    );
  });
});

test('a store that holds on leaves at least as much surplus as one that gives freely', () => {
  fc.assert(
    fc.property(year, year, (rain, demand) => {
      const [free, holding] = WAYS.map((way) => sum(ordinaryYear(rain, demand, 0.09, way).surplus));
      expect(holding).toBeGreaterThanOrEqual(free - 1e-8);
    }),
    { numRuns: 50, seed: 1 },
  );
});

test('no capacity and an overfull start are refused with the value', () => {
  expect(() => runBookkeeping([0.1], [0], 0, 0, 'straight')).toThrow('capacity 0 m is outside');
  expect(() => runBookkeeping([0.1], [0], 0.1, 0.2, 'straight')).toThrow(
    'storage 0.2 m is outside 0 to 0.1 m',
  );
});
