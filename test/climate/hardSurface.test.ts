import { describe, expect, test } from 'vitest';
import { HARD_SURFACE_FILM, runHardSurface } from '../../lib/climate/index.js';
import { realWeather } from '../weather.js';

const run = (rain: number[], demand: number[], film = 0.001) => {
  const runoff = new Float64Array(rain.length);
  const result = runHardSurface(Float64Array.from(rain), Float64Array.from(demand), film, runoff);
  return { ...result, runoff: [...runoff] };
};

describe('hard surface', () => {
  test('the first millimetre of a dry day stays; the next day finds the surface wet', () => {
    const { runoff, left } = run([0.003, 0.002], [0, 0]);
    expect(runoff[0]).toBeCloseTo(0.002, 15);
    expect(runoff[1]).toBeCloseTo(0.002, 15);
    expect(left).toBeCloseTo(0.001, 15);
  });

  test('drying makes room again, no more than there is', () => {
    const { runoff, evaporated } = run([0.001, 0, 0.001], [0, 0.0004, 0.005]);
    expect(runoff[0]).toBe(0);
    expect(runoff[2]).toBeCloseTo(0.0006, 15);
    expect(evaporated).toBeCloseTo(0.0014, 15);
  });

  test('without a film all rain runs off', () => {
    const rain = [0.003, 0, 0.0001];
    expect(run(rain, [0.002, 0.002, 0.002], 0).runoff).toEqual(rain);
  });

  test('the film is the initial abstraction of curve number 98 to the tenth of a millimetre', () => {
    expect(Math.abs(HARD_SURFACE_FILM - (0.2 * (25400 / 98 - 254)) / 1000)).toBeLessThan(5e-5);
  });

  test('of real rain a roof sheds most, and the balance closes', () => {
    const { rain, demand } = realWeather('Seattle');
    const runoff = new Float64Array(rain.length);
    const { closure, evaporated, left } = runHardSurface(rain, demand, HARD_SURFACE_FILM, runoff);
    const [fell, shed] = [rain, runoff].map((s) => s.reduce((a, b) => a + b, 0));
    expect(Math.abs(closure)).toBeLessThan(1e-12);
    expect(Math.abs(fell - shed - evaporated - left)).toBeLessThan(1e-12);
    expect(shed / fell).toBeGreaterThan(0.75);
    expect(shed / fell).toBeLessThan(0.95);
  });
});
