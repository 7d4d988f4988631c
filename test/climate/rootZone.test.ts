import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runRootZone } from '../../lib/climate/index.js';

/** A root zone of 100 mm without cracks. */
const ROOTS = { capacity: 0.1, depletion: 0.4, demandFactor: 1, crackShare: 0 };

const series = (n: number) => ({ recharge: new Float64Array(n), unmet: new Float64Array(n) });

test('closes and stays within its capacity whatever the weather', () => {
  const day = fc.record({
    rain: fc.double({ min: 0, max: 0.1, noNaN: true }),
    et: fc.double({ min: 0, max: 0.012, noNaN: true }),
  });
  fc.assert(
    fc.property(
      fc.array(day, { minLength: 1, maxLength: 300 }),
      fc.double({ min: 0.02, max: 0.3, noNaN: true }),
      fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.record({
        demandFactor: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
        crackShare: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      (days, capacity, depletion, wetness, rest) => {
        const out = series(days.length);
        const start = wetness * capacity;
        const rain = Float64Array.from(days, (d) => d.rain);
        const et = Float64Array.from(days, (d) => d.et);
        const { deficit } = runRootZone(rain, et, { capacity, depletion, ...rest }, start, out);
        const sum = (a: Float64Array) => a.reduce((x, y) => x + y, 0);
        // Independent of the closure the run reports: rain + start of store = recharge + drawn + end of store.
        const drawn = sum(et) * rest.demandFactor - sum(out.unmet);
        expect(Math.abs(sum(rain) - sum(out.recharge) - drawn - (start - deficit))).toBeLessThan(1e-10);
        expect(deficit).toBeGreaterThanOrEqual(0);
        expect(deficit).toBeLessThanOrEqual(capacity * (1 + 1e-12));
        for (let d = 0; d < days.length; d++) {
          expect(out.recharge[d]).toBeGreaterThanOrEqual(0);
          expect(out.unmet[d]).toBeGreaterThanOrEqual(-1e-15);
          expect(out.unmet[d]).toBeLessThanOrEqual(et[d] * rest.demandFactor + 1e-15);
        }
      },
    ),
    { seed: 1, numRuns: 100 },
  );
});

test('without rain the deficit nears capacity as an exponential once stressed', () => {
  // Explicit day: dD = ET (C − D)/(C(1 − p)), so C − D shrinks by the factor 1 − ET/(C(1 − p)) a day.
  const [capacity, p, et, n] = [0.1, 0.4, 0.004, 50];
  const out = series(n);
  const { deficit } = runRootZone(
    new Float64Array(n),
    new Float64Array(n).fill(et),
    { ...ROOTS, capacity, depletion: p },
    p * capacity,
    out,
  );
  expect(capacity - deficit).toBeCloseTo(
    (capacity - p * capacity) * (1 - et / (capacity * (1 - p))) ** n,
    12,
  );
  expect(out.recharge.every((v) => v === 0)).toBe(true);
});

test('a full root zone passes the rain on, and meets demand in full', () => {
  const out = series(1);
  expect(runRootZone(Float64Array.of(0.02), Float64Array.of(0.003), ROOTS, 0, out).deficit).toBeCloseTo(
    0.003,
    15,
  );
  expect(out.recharge[0]).toBeCloseTo(0.02, 15);
  expect(out.unmet[0]).toBe(0);
});

test('cracks pass their share in proportion to the deficit: none when the clay is wet', () => {
  const through = (deficit: number) => {
    const out = series(1);
    runRootZone(Float64Array.of(0.02), Float64Array.of(0), { ...ROOTS, crackShare: 0.3 }, deficit, out);
    return out.recharge[0];
  };
  expect(through(0.1)).toBeCloseTo(0.3 * 0.02, 15);
  expect(through(0.05)).toBeCloseTo(0.15 * 0.02, 15);
  expect(through(0)).toBeCloseTo(0.02, 15);
});

test('a demand that is no number is not balanced away', () => {
  expect(() => runRootZone(Float64Array.of(0.01), Float64Array.of(Number.NaN), ROOTS, 0, series(1))).toThrow(
    /does not close/,
  );
});
