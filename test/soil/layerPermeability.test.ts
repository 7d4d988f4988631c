import { describe, expect, test } from 'vitest';
import { normalCdf } from '../../lib/sampling/index.js';
import {
  HOLE_TO_HOLE,
  type LogEstimate,
  measuredPermeability,
  type NamedTest,
  type PermeabilityTest,
  permeabilityFromTexture,
  pooledScatter,
  posteriorPermeability,
} from '../../lib/soil/index.js';

const prior: LogEstimate = permeabilityFromTexture({ texture: 'clay', structure: 'blocky' });
const value = (permeability: number, spread = 0.5): PermeabilityTest => ({
  method: 'a test',
  permeability,
  reading: 0.1,
  spread,
  says: 'value',
  bias: [],
});
const named = (...tests: PermeabilityTest[]): NamedTest[] =>
  tests.map((test, i) => ({ name: `test ${i + 1}`, test }));

describe('texture, then tests', () => {
  test('no test leaves the table', () => {
    expect(posteriorPermeability(prior, [])).toEqual({ ...prior, outliers: [] });
  });

  test('two tests: mean and spread as Bayes says', () => {
    const [a, b] = [2e-8, 5e-8];
    const { median, spread } = posteriorPermeability(prior, named(value(a), value(b, 0.8)));
    const before = prior.spread ** 2 - HOLE_TO_HOLE ** 2;
    const precision = 1 / before + 1 / 0.25 + 1 / 0.64;
    const mean = (Math.log(prior.median) / before + Math.log(a) / 0.25 + Math.log(b) / 0.64) / precision;
    expect(Math.log(median)).toBeCloseTo(mean, 12);
    expect(spread).toBeCloseTo(Math.sqrt(1 / precision + HOLE_TO_HOLE ** 2), 12);
    expect(spread).toBeLessThan(0.4 * prior.spread);
  });

  test('one at a time or both at once is the same, in any order', () => {
    const tests = named(value(2e-8), value(5e-8, 0.8));
    const both = posteriorPermeability(prior, tests);
    const swapped = posteriorPermeability(prior, [...tests].reverse());
    expect(swapped.median / both.median).toBeCloseTo(1, 12);
    const first = posteriorPermeability(prior, [tests[0]]);
    const second = posteriorPermeability(first, [tests[1]]);
    expect(second.median / both.median).toBeCloseTo(1, 12);
    expect(second.spread).toBeCloseTo(both.spread, 12);
  });

  test('with nothing known before, the tests alone', () => {
    const values = [2e-8, 5e-8, 9e-8];
    const flat = posteriorPermeability({ ...prior, spread: 1e6 }, named(...values.map(measuredPermeability)));
    // The geometric mean; the reading error of three tests, and the difference from hole to hole.
    expect(flat.median / Math.cbrt(2e-8 * 5e-8 * 9e-8)).toBeCloseTo(1, 9);
    expect(flat.spread).toBeCloseTo(Math.hypot(0.7 / Math.sqrt(3), 0.4), 9);
  });

  test('however many tests, the difference from hole to hole stays', () => {
    const many = posteriorPermeability(prior, named(...Array(500).fill(value(3e-8))));
    expect(many.spread).toBeGreaterThan(HOLE_TO_HOLE);
    expect(many.spread).toBeLessThan(HOLE_TO_HOLE + 0.001);
  });
});

/** Mean and variance of the prior cut by bounds, by summing over a fine grid. */
function cutByGrid(tests: PermeabilityTest[]): { median: number; spread: number } {
  const m0 = Math.log(prior.median);
  const v0 = prior.spread ** 2 - HOLE_TO_HOLE ** 2;
  let [w, x1, x2] = [0, 0, 0];
  for (let i = -60000; i <= 60000; i++) {
    const x = m0 + (i / 60000) * 14 * Math.sqrt(v0);
    let p = Math.exp(-((x - m0) ** 2) / 2 / v0);
    for (const t of tests)
      p *= normalCdf(((t.says === 'slower than' ? 1 : -1) * (Math.log(t.permeability) - x)) / t.spread);
    w += p;
    x1 += p * x;
    x2 += p * x * x;
  }
  const mean = x1 / w;
  return { median: Math.exp(mean), spread: Math.sqrt(x2 / w - mean * mean + HOLE_TO_HOLE ** 2) };
}

describe('a test that only bounds', () => {
  test.each([
    ['slower than', 1e-9],
    ['slower than', 1e-7],
    ['slower than', 1e-5],
    ['faster than', 1e-8],
    ['faster than', 1e-5],
  ] as const)('%s %d m/s: moments of the cut prior, summed on a grid', (says, permeability) => {
    const bound = { ...value(permeability), says };
    const found = posteriorPermeability(prior, named(bound));
    const grid = cutByGrid([bound]);
    expect(found.median / grid.median).toBeCloseTo(1, 6);
    expect(found.spread).toBeCloseTo(grid.spread, 6);
  });

  test('a bound hundreds of spreads away stays finite', () => {
    const found = posteriorPermeability(
      { ...prior, spread: 0.5 },
      named({ ...value(1e-30, 0.01), says: 'slower than' }),
    );
    expect(found.median).toBeGreaterThan(0);
    expect(found.median).toBeLessThan(1e-25);
    expect(found.spread).toBeGreaterThan(0);
  });

  test('is said to the user', () => {
    const { evidence } = posteriorPermeability(prior, named({ ...value(1e-9), says: 'slower than' }));
    expect(evidence[0]).toBe('test 1: slower than 1e-9 m/s: the test cannot resolve it (a test)');
    expect(evidence).toContain('before the tests: table for clay');
  });
});

describe('tests that disagree', () => {
  test('the odd one of four is named and kept', () => {
    const tests = named(value(1e-8, 0.3), value(1.3e-8, 0.3), value(8e-9, 0.3), value(1e-6, 0.3));
    const { outliers, evidence, median } = posteriorPermeability(prior, tests);
    expect(outliers).toEqual(['test 4']);
    expect(evidence).toContain('test 4 does not fit the others; kept');
    expect(median).toBeGreaterThan(2e-8);
  });

  test('of two, none is the odd one', () => {
    expect(posteriorPermeability(prior, named(value(1e-9, 0.2), value(1e-5, 0.2))).outliers).toEqual([]);
  });

  test('scatter beyond what the tests allow is pooled over the layers and widens the answer', () => {
    const layers = [
      [value(1e-8, 0.2), value(9e-8, 0.2)],
      [value(1e-6, 0.2), value(1.1e-6, 0.2), value(2e-6, 0.2)],
      [value(1e-4)],
    ];
    // By hand: squares about each mean, less their expectation, over 1 + 2 degrees of freedom.
    const squares = (values: number[]) => {
      const logs = values.map(Math.log);
      const mean = logs.reduce((a, b) => a + b, 0) / logs.length;
      return logs.reduce((s, v) => s + (v - mean) ** 2, 0);
    };
    const expected = (squares([1e-8, 9e-8]) + squares([1e-6, 1.1e-6, 2e-6]) - 3 * 0.04) / 3;
    expect(pooledScatter(layers)).toBeCloseTo(expected, 12);
    expect(pooledScatter([[value(1e-8, 2), value(2e-8, 2)]])).toBe(0);
    expect(pooledScatter([[value(1e-8)]])).toBe(0);
    const tight = posteriorPermeability(prior, named(...layers[0]));
    expect(posteriorPermeability(prior, named(...layers[0]), expected).spread).toBeGreaterThan(tight.spread);
  });
});

const clayMetresPerDay = (structure: 'blocky' | 'massive' | 'cracked', score: number) => {
  const { median, spread } = permeabilityFromTexture({ texture: 'clay', structure });
  return 86400 * median * Math.exp(score * spread);
};

// FAO Irrigation and Drainage Paper 62, Annex 1, Table A1.1 (seen): heavy clay, finely blocky 0.01–0.1 m/d, massive
// 0.01–0.05 m/d, with permanent wide cracks above 10 m/d.
test('the table for structured clay meets the FAO ranges', () => {
  expect(clayMetresPerDay('blocky', 0)).toBeGreaterThan(0.01);
  expect(clayMetresPerDay('blocky', 0)).toBeLessThan(0.1);
  // Deep clay that roots and worms never opened is tighter than the field soils of the table.
  expect(clayMetresPerDay('massive', 0)).toBeLessThan(0.05);
  expect(clayMetresPerDay('massive', 1.2816)).toBeGreaterThan(0.01);
  // Cracks seen in a pit are seldom both wide and permanent: that is the outer edge, not the middle.
  expect(clayMetresPerDay('cracked', 2.6)).toBeGreaterThan(10);
});

// Well-permeameter study on a cracking clay in Sicily (abstract, seen): 11.4 to 22.1 mm/h.
test.each([11.4, 22.1])(
  'a cracking clay measured at %d mm/h lies in the middle four fifths for cracked clay',
  (mmPerHour) => {
    expect(mmPerHour * 0.024).toBeGreaterThan(clayMetresPerDay('cracked', -1.2816));
    expect(mmPerHour * 0.024).toBeLessThan(clayMetresPerDay('cracked', 1.2816));
  },
);
