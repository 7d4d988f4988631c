import { describe, expect, test } from 'vitest';
import {
  jackknife,
  meanOfReplicates,
  replicateChance,
  replicateMean,
  sobolNormals,
  studentQuantile975,
  studentWithin,
} from '../../lib/sampling/index.js';
import { limitState, repeated, seriesSystem } from './limitStates.js';

describe("Student's t", () => {
  // Every printed table of t; to 12 digits by scipy.stats.t.ppf(0.975, …).
  test.each([
    [1, 12.706204736175],
    [2, 4.302652729749],
    [3, 3.182446305284],
    [7, 2.364624251593],
    [8, 2.306004135204],
    [15, 2.13144954556],
    [31, 2.039513446396],
  ])('95 %% within, %d degrees of freedom', (freedom, t) => {
    expect(studentQuantile975(freedom)).toBeCloseTo(t, 10);
  });

  test('one degree of freedom is the Cauchy distribution, many are the normal', () => {
    expect(studentWithin(2.5, 1)).toBeCloseTo((2 / Math.PI) * Math.atan(2.5), 14);
    expect(studentWithin(1.959963984540054, 100000)).toBeCloseTo(0.95, 5);
  });
});

describe('by hand', () => {
  test('means 1, 2, 6 have mean 3 and standard error √(7/3)', () => {
    const { value, standardError, halfWidth95 } = meanOfReplicates([1, 2, 6]);
    expect(value).toBeCloseTo(3, 14);
    expect(standardError).toBeCloseTo(Math.sqrt(7 / 3), 14);
    expect(halfWidth95).toBeCloseTo(4.302652729749 * Math.sqrt(7 / 3), 10);
  });

  test('replicates are taken one after the other', () => {
    expect(replicateMean([0, 2, 1, 3, 6, 6], 3)).toEqual(meanOfReplicates([1, 2, 6]));
    expect(() => replicateMean([1, 2], 1)).toThrow('invalid number of replicates 1');
  });

  test('the jackknife of a mean is its standard error', () => {
    const means = [1, 2, 6, 4];
    const but = (r: number) => means.filter((_, i) => i !== r);
    const ours = jackknife(4, (r) => but(r).reduce((a, b) => a + b, 0) / but(r).length);
    const plain = meanOfReplicates(means);
    expect(ours.value).toBeCloseTo(plain.value, 14);
    expect(ours.standardError).toBeCloseTo(plain.standardError, 14);
  });

  test('no failure among 100 leaves a chance of up to 3 %', () => {
    const none = replicateChance(new Float64Array(100), 4);
    expect(none.value).toBe(0);
    expect((1 - none.halfWidth95) ** 100).toBeCloseTo(0.05, 12);
    expect(replicateChance(new Float64Array(100).fill(1), 4)).toEqual({ ...none, value: 1 });
    expect(replicateChance([0, 1, 1, 1], 2)).toEqual(replicateMean([0, 1, 1, 1], 2));
  });
});

describe('closed forms, 200 seeds', () => {
  const state = limitState([1, 1, 1, 1, 1], 0.1);
  const estimate =
    (n: number, of: (z: Float64Array, s: number) => number, columns: number) => (seed: number) => {
      const z = sobolNormals(n, columns, seed, 8);
      return replicateChance(
        Float64Array.from({ length: n }, (_, s) => of(z, s)),
        8,
      );
    };

  test('normal limit state of 5 inputs: error at most 0.65 of plain sampling, of the share less, the band honest', () => {
    const plain = Math.sqrt((0.1 * 0.9) / 1024);
    const counted = repeated(200, state.chance, estimate(1024, state.fails, 5));
    const shared = repeated(200, state.meanShare, estimate(1024, state.share, 5));
    expect(counted.error / plain).toBeLessThanOrEqual(0.65);
    expect(shared.error / plain).toBeLessThanOrEqual(0.3);
    // 95 % of 200 give or take 3 standard deviations of 1.5 %.
    for (const { coverage } of [counted, shared])
      expect(Math.abs(coverage - 0.95)).toBeLessThanOrEqual(0.046);
  });

  test('series system of three limit states', () => {
    const system = seriesSystem([0.05, 0.03, 0.01]);
    expect(system.chance).toBeCloseTo(0.087715, 12);
    const { error, coverage } = repeated(200, system.chance, estimate(1024, system.fails, 3));
    expect(error / Math.sqrt((system.chance * (1 - system.chance)) / 1024)).toBeLessThanOrEqual(0.65);
    expect(Math.abs(coverage - 0.95)).toBeLessThanOrEqual(0.046);
  });
});
