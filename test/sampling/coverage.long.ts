import { expect, test } from 'vitest';
import { measurementValue, replicateChance, sobolNormals } from '../../lib/sampling/index.js';
import { limitState, repeated, seriesSystem } from './limitStates.js';
import { sobolIndices } from './modelIndices.js';
import { gFunction, ishigami } from './testFunctions.js';
import { twoActions } from './twoActions.js';

const REPEATS = 500;
const REPLICATES = 8;

const estimate =
  (n: number, columns: number, of: (z: Float64Array, s: number) => number) => (seed: number) => {
    const z = sobolNormals(n, columns, seed, REPLICATES);
    return replicateChance(
      Float64Array.from({ length: n }, (_, s) => of(z, s)),
      REPLICATES,
    );
  };

/** Coverage of all, printed and held: 95 % of 500 is known to within 1 %. */
function report(what: string, ratio: number, coverage: number) {
  console.log(
    `${what}: error ${ratio.toFixed(2)} of plain sampling's, band holds in ${(100 * coverage).toFixed(1)} %`,
  );
  expect(coverage).toBeGreaterThanOrEqual(0.93);
  expect(coverage).toBeLessThanOrEqual(0.97);
}

test.each([
  [1024, 0.3],
  [1024, 0.1],
  [4096, 0.3],
  [4096, 0.1],
])('normal limit state of 5 inputs, %d samples, chance %d', (n, chance) => {
  const state = limitState([1, 1, 1, 1, 1], chance);
  const plain = Math.sqrt((chance * (1 - chance)) / n);
  const counted = repeated(REPEATS, chance, estimate(n, 5, state.fails));
  const shared = repeated(REPEATS, state.meanShare, estimate(n, 5, state.share));
  report(`yes or no, ${n}, ${chance}`, counted.error / plain, counted.coverage);
  report(`share of years, ${n}, ${chance}`, shared.error / plain, shared.coverage);
  expect(counted.error / plain).toBeLessThanOrEqual(0.65);
  expect(shared.error).toBeLessThan(0.5 * counted.error);
});

test.each([1024, 4096])('the share of failing years at the accepted 1 in 50, %d samples', (n) => {
  const state = limitState([1, 1, 1, 1, 1], 0.02);
  const plain = Math.sqrt((0.02 * 0.98) / n);
  const { error, coverage } = repeated(REPEATS, state.meanShare, estimate(n, 5, state.share));
  report(`share of years, ${n}, 0.02`, error / plain, coverage);
  expect(error / plain).toBeLessThanOrEqual(0.35);
});

test.each([1024, 4096])('series system of three limit states, %d samples', (n) => {
  const system = seriesSystem([0.05, 0.03, 0.01]);
  const plain = Math.sqrt((system.chance * (1 - system.chance)) / n);
  const { error, coverage } = repeated(REPEATS, system.chance, estimate(n, 3, system.fails));
  report(`series, ${n}`, error / plain, coverage);
  expect(error / plain).toBeLessThanOrEqual(0.65);
});

test.each([
  [-0.2, 0.5],
  [-1, 0.5],
  [-0.5, 1.5],
])('value of a reading, two actions: mean %d, error %d', (mean, error) => {
  const { value } = twoActions(2048, mean, error, 1, REPLICATES);
  const { coverage } = repeated(REPEATS, value, (seed) => {
    const { losses, reading } = twoActions(2048, mean, error, seed, REPLICATES);
    return measurementValue(losses, reading, REPLICATES).value;
  });
  console.log(`value of a reading, ${mean}, ${error}: band holds in ${(100 * coverage).toFixed(1)} %`);
  expect(coverage).toBeGreaterThanOrEqual(0.93);
  expect(coverage).toBeLessThanOrEqual(0.97);
});

test.each([
  ['Ishigami', ishigami],
  ["Sobol' g", gFunction],
])('indices, %s', (name, f) => {
  const held = { first: 0, total: 0 };
  for (let seed = 1; seed <= REPEATS; seed++) {
    const ours = sobolIndices(f.of, f.inputs, 1024, seed);
    for (const order of ['first', 'total'] as const) {
      const { value, halfWidth95 } = ours[order][1];
      if (Math.abs(value - f[order][1]) <= halfWidth95) held[order]++;
    }
  }
  for (const order of ['first', 'total'] as const) {
    const coverage = held[order] / REPEATS;
    console.log(`${name}, ${order}, input 2: band holds in ${(100 * coverage).toFixed(1)} %`);
    expect(coverage).toBeGreaterThanOrEqual(0.92);
    expect(coverage).toBeLessThanOrEqual(0.98);
  }
});
