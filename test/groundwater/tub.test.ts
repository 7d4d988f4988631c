import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  EXCHANGE_LENGTH,
  relievedHead,
  runTub,
  type TubDrain,
  type TubGeometry,
  tubVolume,
  unflappedHead,
} from '../../lib/groundwater/index.js';

const RING: TubGeometry = {
  floor: -0.9,
  spill: 0,
  ringArea: 2.8,
  ringPorosity: 0.12,
  ringHold: 0.02,
  perimeter: 14,
  bedArea: 0,
  bedThickness: 0,
  bedPorosity: 0,
};
const BEDDED: TubGeometry = {
  ...RING,
  ringPorosity: 0.25,
  bedArea: 12,
  bedThickness: 0.1,
  bedPorosity: 0.35,
};

function levels(
  g: TubGeometry,
  inflow: number[],
  clay: number | number[],
  permeability: number,
  drain?: TubDrain,
) {
  const level = new Float64Array(inflow.length);
  const h = typeof clay === 'number' ? new Array(inflow.length).fill(clay) : clay;
  const forcing = { inflow: Float64Array.from(inflow), clay: Float64Array.from(h), permeability };
  return { ...runTub(g, forcing, level, drain), level };
}

test('in ground that passes nothing it fills to the volume that came, bed first, and spills the rest', () => {
  // Bed: 12 m² × 0.1 m × 0.35 = 0.42 m³; ring: 2.8 m² × 0.25 = 0.7 m³ a metre.
  const { level } = levels(BEDDED, [0.21, 0.21, 0.35, 0, 5], -3, 1e-30);
  [-0.95, -0.9, -0.4, -0.4, 0].forEach((z, d) => {
    expect(level[d]).toBeCloseTo(z, 9);
  });
  expect(tubVolume(BEDDED, -1)).toBeCloseTo(0, 15);
  expect(tubVolume(BEDDED, 0)).toBeCloseTo(0.42 + 0.63, 12);
});

/** The same store as an ordinary differential equation, Runge–Kutta of fourth order in 400 steps a day. */
function solved(g: TubGeometry, start: number, inflow: number, h: number, K: number, days: number): number[] {
  const rate = (z: number) => {
    const area = g.ringArea + g.perimeter * (Math.min(Math.max(z, h), g.spill) - g.floor);
    return (
      (inflow - K * 86400 * area * Math.min((z - h) / EXCHANGE_LENGTH, 1)) / (g.ringArea * g.ringPorosity)
    );
  };
  const out: number[] = [];
  let z = start;
  const dt = 1 / 400;
  for (let i = 1; i <= days * 400; i++) {
    const k1 = rate(z);
    const k2 = rate(z + (dt / 2) * k1);
    const k3 = rate(z + (dt / 2) * k2);
    const k4 = rate(z + dt * k3);
    z = Math.min(Math.max(z + (dt / 6) * (k1 + 2 * k2 + 2 * k3 + k4), g.floor), g.spill);
    if (i % 400 === 0) out.push(z);
  }
  return out;
}

describe('against the differential equation', () => {
  test.each([
    ['draining to deep clay water', 1e-8, -2, 0.3, 0],
    ['rain against seepage', 1e-8, -2, 0, 0.006],
    ['falling to the level in the clay', 1e-8, -0.5, 0.3, 0],
    ['filling from the clay', 1e-8, -0.3, 0, 0],
    ['in tight clay', 1e-9, -1.5, 0.2, 0.0002],
  ])('%s', (_, K, h, first, daily) => {
    // The first day's water is poured in where nothing seeps, so both start from the same level.
    const inflow = [first, ...new Array(60).fill(daily)];
    const { level } = levels(RING, inflow, h, K);
    const reference = solved(RING, level[0], daily, h, K, 60);
    reference.forEach((z, d) => {
      // A step of a day takes the wetted wall as it was in the morning.
      expect(Math.abs(level[d + 1] - z)).toBeLessThan(0.015);
    });
    expect(Math.abs(reference[59] - reference[0])).toBeGreaterThan(0.02);
  });
});

const amount = (max: number) => fc.double({ min: 0, max, noNaN: true });
const day = fc.record({
  inflow: fc.oneof(fc.constant(0), amount(4)),
  clay: fc.double({ min: -3, max: 0.2, noNaN: true }),
});
const geometry = fc.constantFrom(RING, BEDDED, {
  ...RING,
  ringArea: 0.14,
  ringPorosity: 1,
  bedArea: 12,
  bedThickness: 0.05,
  bedPorosity: 0.25,
});
const exponent = fc.double({ min: -10, max: -5, noNaN: true });

describe('whatever comes', () => {
  test('it closes, never holds less than nothing nor more than its brim', () => {
    fc.assert(
      fc.property(
        fc.array(day, { minLength: 1, maxLength: 200 }),
        geometry,
        exponent,
        fc.boolean(),
        (days, g, e, drained) => {
          const drain = drained ? { level: g.floor - g.bedThickness, conductance: 0.01 } : undefined;
          const { level, closure } = levels(
            g,
            days.map((d) => d.inflow),
            days.map((d) => d.clay),
            10 ** e,
            drain,
          );
          expect(Math.abs(closure)).toBeLessThan(1e-9);
          for (const z of level) {
            expect(z).toBeGreaterThanOrEqual(g.floor - g.bedThickness - 1e-12);
            expect(z).toBeLessThanOrEqual(g.spill + 1e-9);
          }
        },
      ),
      { seed: 1, numRuns: 150 },
    );
  });

  test('a drain a million times as open as the clay holds the level at its outlet within 5 cm', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ inflow: amount(2), clay: fc.double({ min: -3, max: 0, noNaN: true }) }), {
          minLength: 1,
          maxLength: 100,
        }),
        fc.constantFrom(RING, BEDDED),
        fc.double({ min: -9, max: -7, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (days, g, e, above) => {
          const K = 10 ** e;
          const wall = g.ringArea + g.bedArea + g.perimeter * (g.spill - g.floor);
          const drain = { level: g.floor + above, conductance: (1e6 * K * wall) / EXCHANGE_LENGTH };
          const { level } = levels(
            g,
            days.map((d) => d.inflow),
            days.map((d) => d.clay),
            K,
            drain,
          );
          expect(Math.max(...level)).toBeLessThan(drain.level + 0.05);
        },
      ),
      { seed: 1, numRuns: 150 },
    );
  });

  test('from dry, seepage alone lifts it no higher than the clay', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.8, max: -0.05, noNaN: true }), exponent, geometry, (h, e, g) => {
        const { level } = levels(g, new Array(200).fill(0), h, 10 ** e);
        for (let d = 1; d < 200; d++) {
          expect(level[d]).toBeLessThanOrEqual(h + 1e-9);
          expect(level[d]).toBeGreaterThanOrEqual(level[d - 1] - 1e-9);
        }
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});

describe('a drain into a ditch', () => {
  const days = 120;
  const inflow = Array.from({ length: days }, (_, d) => (d % 9 === 0 ? 0.4 : 0));
  const outlet = { level: -0.8, conductance: 0.01 };
  /** The ditch is in flood from day 40 to day 60. */
  const ditch = Float64Array.from({ length: days }, (_, d) => (d >= 40 && d < 60 ? -0.3 : -1));

  test.each([1e-9, 1e-8, 1e-7])('in clay of %d m/s it is what the closed forms say, day by day', (K) => {
    const bare = levels(RING, inflow, -1.5, K).level;
    for (const flap of [true, false]) {
      const { level } = levels(RING, inflow, -1.5, K, { ...outlet, receiver: ditch, flap });
      const form = flap ? relievedHead : unflappedHead;
      // What came in a day stands over the outlet until it has run out: at most 5 cm with a clear drain.
      level.forEach((z, d) => {
        // Flood water that came in leaves by the outlet, and the last of it through the clay.
        if (!flap && d >= 60 && d < 70) return;
        const closed = form.compute(bare[d], outlet.level, ditch[d], 0.05);
        expect(z).toBeLessThanOrEqual(Math.max(closed, RING.floor) + 1e-9);
        if (!flap && d >= 41 && d < 60) expect(Math.abs(z - ditch[d])).toBeLessThan(0.05);
      });
      expect(level[39]).toBeLessThan(outlet.level + 0.05);
      expect(level[days - 1]).toBeLessThan(outlet.level + 0.05);
    }
    // With a flap the flood holds back only what comes from above.
    const dry = new Array(days).fill(0);
    const shut = levels(RING, dry, -1.5, K, { ...outlet, receiver: ditch, flap: true }).level;
    expect(Math.max(...shut)).toBeLessThanOrEqual(RING.floor + 1e-9);
    const open = levels(RING, dry, -1.5, K, { ...outlet, receiver: ditch }).level;
    expect(Math.max(...open)).toBeCloseTo(-0.3, 2);
  });
});

test('one storm on an uphill lawn fills a gravel ring, and clay of 1e-9 m/s holds it for weeks', () => {
  const gravel = { ...RING, ringPorosity: 0.35 };
  // 50 mm on 20 m².
  const { level } = levels(gravel, [1, ...nothing(28)], -2, 1e-9);
  expect(level[0]).toBeGreaterThan(-0.01);
  expect(level[28]).toBeGreaterThan(-0.1);
});

function nothing(days: number): number[] {
  return new Array(days).fill(0);
}

test('water that is no number is an error', () => {
  expect(() => levels(RING, [Number.NaN], -1, 1e-8)).toThrow(/does not close/);
});
