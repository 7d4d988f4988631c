import { describe, expect, test } from 'vitest';
import { measurementValue, sobolNormals } from '../../lib/sampling/index.js';
import { twoActions, unitNormalLoss } from './twoActions.js';

const REPLICATES = 8;

test('the unit normal loss integral: 0.3989 at 0, 0.08332 at 1, 0.008491 at 2', () => {
  // As tables of it print, from memory; exact at 0: 1/√(2π).
  expect(unitNormalLoss(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 14);
  expect(unitNormalLoss(1)).toBeCloseTo(0.08332, 5);
  expect(unitNormalLoss(2)).toBeCloseTo(0.008491, 6);
});

describe.each([
  [-0.2, 0.5],
  [-1, 0.5],
  [0.5, 1.5],
])('two actions, mean %d, error %d', (mean, error) => {
  test('value and chance of a change are those of the closed form', () => {
    const known = twoActions(4096, mean, error, 3, REPLICATES);
    const ours = measurementValue(known.losses, known.reading, REPLICATES);
    expect(ours.now).toBe(mean < 0 ? 0 : 1);
    expect(Math.abs(ours.value.value - known.value)).toBeLessThan(0.005);
    expect(Math.abs(ours.change.value - known.change)).toBeLessThan(0.03);
    expect(ours.after[ours.now]).toBeCloseTo(1 - ours.change.value, 10);
  });

  test('over 100 seeds without bias, and the band holds', () => {
    let [bias, held] = [0, 0];
    for (let seed = 1; seed <= 100; seed++) {
      const known = twoActions(1024, mean, error, seed, REPLICATES);
      const { value, halfWidth95 } = measurementValue(known.losses, known.reading, REPLICATES).value;
      bias += (value - known.value) / 100;
      if (Math.abs(value - known.value) <= halfWidth95) held++;
    }
    expect(Math.abs(bias)).toBeLessThan(0.0015);
    // 95 of 100 give or take 3 standard deviations of 2.2.
    expect(held).toBeGreaterThanOrEqual(88);
  });
});

test('knowing it perfectly is worth E|·|: the reading without error', () => {
  const known = twoActions(4096, -0.5, 0, 5, REPLICATES);
  const { value } = measurementValue(known.losses, known.reading, REPLICATES);
  expect(value.value).toBeCloseTo(unitNormalLoss(0.5), 2);
});

test('a reading that tells nothing is worth nothing, however many are tried: no gain from chance', () => {
  let mean = 0;
  for (let seed = 1; seed <= 100; seed++) {
    const z = sobolNormals(512, 2, seed, REPLICATES);
    const column = (j: number) => Float64Array.from({ length: 512 }, (_, s) => z[2 * s + j]);
    mean += measurementValue([new Float64Array(512), column(0)], column(1), REPLICATES).value.value / 100;
  }
  // Both decisions cost 0 on the average, so any rule is worth 0: to within 3 standard errors of 0.0022. Judged at the
  // samples it was drawn through, the rule would seem to gain 0.011.
  expect(Math.abs(mean)).toBeLessThan(0.0066);
});

test('one decision only, or one that always costs least: nothing to gain, nothing changes', () => {
  const { losses, reading } = twoActions(512, -0.3, 0.5, 2, REPLICATES);
  const dear = losses[1].map(() => 10);
  for (const set of [[losses[0]], [losses[0], dear]]) {
    const { now, value, change } = measurementValue(set, reading, REPLICATES);
    expect([now, value.value, value.standardError, change.value]).toEqual([0, 0, 0, 0]);
  }
});

test('yes or no readings, tied: each answer takes its own cheapest', () => {
  // Wet in 3 of 10: a failure costs 5 unless drained at 1. Without looking 1 < 1.5: drain; looking saves 0.7.
  const n = 800;
  const wet = Float64Array.from({ length: n }, (_, s) => (s % 10 < 3 ? 1 : 0));
  const { now, value, change, after } = measurementValue(
    [wet.map((w) => 5 * w), wet.map(() => 1)],
    wet,
    REPLICATES,
  );
  expect(now).toBe(1);
  expect(value.value).toBeCloseTo(0.7, 12);
  expect(change.value).toBeCloseTo(0.7, 12);
  expect(after[0]).toBeCloseTo(0.7, 12);
});

test('refuses no decision, and lengths that differ', () => {
  expect(() => measurementValue([], [1, 2], 2)).toThrow('missing losses');
  expect(() => measurementValue([[1, 2, 3]], [1, 2], 2)).toThrow(
    'invalid losses of decision 0: 3 for 2 readings',
  );
});
