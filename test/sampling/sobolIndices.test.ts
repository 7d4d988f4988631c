import { describe, expect, test } from 'vitest';
import {
  type Estimate,
  firstOrderFromSample,
  pickFreezeIndices,
  sobolUniforms,
} from '../../lib/sampling/index.js';
import { sobolIndices } from './modelIndices.js';
import { gFunction, ishigami, sum, type TestFunction } from './testFunctions.js';

const FUNCTIONS: [string, TestFunction][] = [
  ['Ishigami', ishigami],
  ["Sobol' g", gFunction],
  ['sum of normals', sum],
];

/** Within `reach` of the closed form, and mostly within its own band. */
function agrees(ours: Estimate[], closed: number[], reach: number) {
  for (const [i, { value }] of ours.entries())
    expect(Math.abs(value - closed[i]), `input ${i + 1}: ${value} for ${closed[i]}`).toBeLessThan(reach);
}

test('the closed forms are those printed: Ishigami 0.314, 0.442, 0 and 0.558, 0.442, 0.244', () => {
  // Saltelli et al. 2008, Global sensitivity analysis: the primer, from memory.
  for (const [i, v] of [0.314, 0.442, 0].entries()) expect(ishigami.first[i]).toBeCloseTo(v, 3);
  for (const [i, v] of [0.558, 0.442, 0.244].entries()) expect(ishigami.total[i]).toBeCloseTo(v, 3);
});

describe.each(FUNCTIONS)('%s', (_, f) => {
  test('first order and total, pick-freeze of 4,096', () => {
    const { first, total } = sobolIndices(f.of, f.inputs, 4096, 1);
    agrees(first, f.first, 0.03);
    agrees(total, f.total, 0.03);
  });

  test('the bands hold the closed form, over 60 seeds', () => {
    let [held, asked] = [0, 0];
    const count = (ours: Estimate[], closed: number[]) => {
      for (const [i, { value, halfWidth95 }] of ours.entries()) {
        if (closed[i] < 0.01) continue;
        asked++;
        if (Math.abs(value - closed[i]) <= halfWidth95) held++;
      }
    };
    for (let seed = 1; seed <= 60; seed++) {
      const { first, total } = sobolIndices(f.of, f.inputs, 512, seed);
      count(first, f.first);
      count(total, f.total);
    }
    expect(held / asked).toBeGreaterThan(0.9);
    expect(held / asked).toBeLessThanOrEqual(0.99);
  });

  test('first order from one sample of 2,048, the model not run again', () => {
    const u = sobolUniforms(2048, f.inputs, 5, 8);
    const y = Float64Array.from({ length: 2048 }, (_, s) =>
      f.of(u.subarray(s * f.inputs, (s + 1) * f.inputs)),
    );
    const ours = firstOrderFromSample(u, f.inputs, y, 8);
    agrees(ours, f.first, 0.015);
    // Only the order of an input counts, not its scale.
    expect(
      firstOrderFromSample(
        u.map((v) => Math.exp(9 * v)),
        f.inputs,
        y,
        8,
      ),
    ).toEqual(ours);
  });
});

test('an added constant changes nothing', () => {
  const plain = sobolIndices(gFunction.of, 8, 256, 3);
  const raised = sobolIndices((u) => gFunction.of(u) + 1e6, 8, 256, 3);
  agrees(
    raised.first,
    plain.first.map((e) => e.value),
    1e-6,
  );
  agrees(
    raised.total,
    plain.total.map((e) => e.value),
    1e-6,
  );
});

test('nothing varies: every share is 0', () => {
  const { first, total } = sobolIndices(() => 3, 2, 64, 1);
  expect([...first, ...total].every((e) => e.value === 0 && e.standardError === 0)).toBe(true);
  expect(
    firstOrderFromSample(sobolUniforms(64, 2, 1, 4), 2, new Float64Array(64), 4).map((e) => e.value),
  ).toEqual([0, 0]);
});

test('by hand: A gives 0, 0, 2, 2 and the other column swapped makes 2, 0, 0, 2', () => {
  const outputs = { a: [0, 0, 2, 2], b: [2, 2, 0, 0], mixed: [[2, 0, 0, 2]] };
  // Mean 1, variance 1; first order mean of (±1)·(2, 0, −2, 0) = (2 + 0 + 2 + 0)/4; total half the mean of 4, 0, 4, 0.
  const { first, total } = pickFreezeIndices(outputs, 2);
  expect(first[0].value).toBeCloseTo(1, 14);
  expect(total[0].value).toBeCloseTo(1, 14);
});

describe('one sample', () => {
  test('an input of two values, tied: all of the variance it carries', () => {
    const n = 1600;
    const u = sobolUniforms(n, 2, 4, 8);
    const x = u.map((v, i) => (i % 2 === 0 ? (v < 0.3 ? 0 : 1) : v));
    const y = Float64Array.from({ length: n }, (_, s) => 2 * x[2 * s] + x[2 * s + 1]);
    // Variances 4 · 0.3 · 0.7 and 1/12.
    const [two, even] = [4 * 0.21, 1 / 12];
    const ours = firstOrderFromSample(x, 2, y, 8);
    agrees(ours, [two / (two + even), even / (two + even)], 0.01);
  });

  test('chance adds nothing: inputs that drive nothing come out at 0 on the average, in a plain sample too', () => {
    let mean = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const u = sobolUniforms(256, 1, seed, 256);
      const y = sobolUniforms(256, 1, seed + 1000, 256);
      mean += firstOrderFromSample(u, 1, y, 8)[0].value / 200;
    }
    // 8 bins of 256 uncorrected would give 7/256 = 0.027; the standard error of this mean is 0.001.
    expect(Math.abs(mean)).toBeLessThan(0.004);
  });

  test('refuses two replicates', () => {
    expect(() => firstOrderFromSample([1, 2, 3, 4], 1, [1, 2, 3, 4], 2)).toThrow(
      'invalid number of replicates 2',
    );
  });
});

test('no share is below none or above all, however few the samples', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const { first, total } = sobolIndices(gFunction.of, 8, 16, seed);
    for (const { value } of [...first, ...total]) {
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThanOrEqual(1);
    }
  }
});
