import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spread } from '../../lib/figures/spread.js';

const places = fc.array(fc.double({ min: -50, max: 450, noNaN: true }), { minLength: 1, maxLength: 12 });

it('keeps labels apart, in order and inside', () => {
  fc.assert(
    fc.property(places, (wanted) => {
      const placed = spread(wanted, 20, 0, 400);
      const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]! - wanted[b]! || a - b);
      order.slice(1).forEach((at, i) => {
        expect(placed[at]! - placed[order[i]!]!).toBeGreaterThan(20 - 1e-6);
      });
      for (const at of placed) expect(at >= -1e-6 && at <= 400 + 1e-6).toBe(true);
    }),
    { seed: 1, numRuns: 200 },
  );
});

it('leaves alone what is apart already, and spaces evenly what does not fit', () => {
  expect(spread([100, 10, 50], 20, 0, 400)).toEqual([100, 10, 50]);
  expect(spread([5, 5, 5], 20, 0, 20)).toEqual([0, 10, 20]);
});
