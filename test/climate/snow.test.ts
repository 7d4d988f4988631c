import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MELT_FACTOR, runSnow } from '../../lib/climate/index.js';

function liquidWater(rain: Float64Array, tmean: Float64Array, meltFactor = MELT_FACTOR) {
  const liquid = new Float64Array(rain.length);
  return { ...runSnow(rain, tmean, meltFactor, liquid), liquid };
}

test('what fell is what reached the ground and what still lies there', () => {
  const day = fc.record({
    rain: fc.double({ min: 0, max: 0.08, noNaN: true }),
    t: fc.double({ min: -25, max: 30, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(day, { minLength: 1, maxLength: 400 }), (days) => {
      const rain = Float64Array.from(days, (d) => d.rain);
      const { liquid, snowLeft } = liquidWater(
        rain,
        Float64Array.from(days, (d) => d.t),
      );
      const fell = rain.reduce((a, b) => a + b, 0);
      const came = liquid.reduce((a, b) => a + b, 0);
      expect(Math.abs(fell - came - snowLeft)).toBeLessThan(1e-12);
      expect(snowLeft).toBeGreaterThanOrEqual(0);
      expect(Math.min(...liquid)).toBeGreaterThanOrEqual(0);
    }),
    { seed: 1, numRuns: 200 },
  );
});

test('10 mm of snow melt in two days of 2 °C, 3 mm a degree', () => {
  const { liquid, snowLeft } = liquidWater(
    Float64Array.of(0.01, 0.001, 0, 0.002),
    Float64Array.of(-3, 2, 2, 5),
  );
  expect([...liquid].map((v) => Number((1000 * v).toFixed(9)))).toEqual([0, 7, 4, 2]);
  expect(snowLeft).toBeCloseTo(0, 15);
});
