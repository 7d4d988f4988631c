import { describe, expect, test } from 'vitest';
import {
  HOLE_TO_HOLE,
  logPercentiles,
  measuredPermeability,
  permeabilityFromTexture,
  STRUCTURES,
  saxtonRawls,
  TYPICAL_COMPOSITION,
  textureClass,
  USDA_CLASSES,
} from '../../lib/soil/index.js';

describe('from the pit log', () => {
  const clay = (structure?: (typeof STRUCTURES)[number]) =>
    permeabilityFromTexture({ texture: 'clay', structure });

  test('structure orders massive below blocky below rooted below cracked', () => {
    const medians = (['massive', 'blocky', 'rooted', 'cracked'] as const).map((s) => clay(s).median);
    for (let i = 1; i < medians.length; i++) expect(medians[i]).toBeGreaterThan(medians[i - 1]);
    expect(clay('massive').evidence).toEqual(['table for clay', 'massive structure']);
    expect(clay().median).toBe(clay('blocky').median);
  });

  test('structure leaves a sand as it is', () => {
    for (const structure of STRUCTURES)
      expect(permeabilityFromTexture({ texture: 'sand', structure }).median).toBe(
        permeabilityFromTexture({ texture: 'sand' }).median,
      );
  });

  test('percentages go before the class, and are said to', () => {
    const measured = permeabilityFromTexture({ texture: 'clay', sand: 0.1, clay: 0.55, organicPercent: 2 });
    expect(measured.median).toBe(saxtonRawls(0.1, 0.55, 2).permeability);
    expect(measured.evidence).toEqual(['texture regression for the measured percentages']);
  });

  test('what lies outside the regression is held at its edge', () => {
    const stiff = permeabilityFromTexture({ texture: 'clay', sand: 0.05, clay: 0.8, organicPercent: 12 });
    expect(stiff.median).toBe(saxtonRawls(0.05, 0.6, 8).permeability);
  });

  test('gravel passes more than a hundred thousand times what rock does; peat and made ground have their own tables', () => {
    const k = (texture: 'gravel' | 'rock' | 'peat' | 'made ground') => permeabilityFromTexture({ texture });
    expect(k('gravel').median / k('rock').median).toBeGreaterThan(1e5);
    expect(k('peat').evidence).toEqual(['table for peat']);
    expect(k('made ground').spread).toBeGreaterThan(k('gravel').spread);
  });

  test('a table value is less sure than one test', () => {
    for (const texture of USDA_CLASSES)
      expect(permeabilityFromTexture({ texture }).spread).toBeGreaterThan(
        Math.hypot(measuredPermeability(1e-8).spread, HOLE_TO_HOLE),
      );
  });
});

test('the typical composition of each class lies in it', () => {
  for (const name of USDA_CLASSES) {
    const { sand, clay } = TYPICAL_COMPOSITION[name];
    expect(textureClass(sand, clay)).toBe(name);
  }
});

test('p10 and p90 hold four fifths of a log-normal: 1.2816 standard deviations to each side', () => {
  // Standard normal table: Φ(1.2816) = 0.9000.
  const { p10, p50, p90 } = logPercentiles({ median: 1e-8, spread: 2, evidence: [] });
  expect(p50).toBe(1e-8);
  expect(Math.log(p90 / p50)).toBeCloseTo(2 * 1.2816, 3);
  expect(p10 * p90).toBeCloseTo(1e-16, 28);
});

test('every composition of the triangle and its organic matter has a permeability', () => {
  for (let sand = 0; sand <= 100; sand += 2)
    for (let clay = 0; clay <= 100 - sand; clay += 2)
      for (const organicPercent of [0, 0.5, 2.5, 8, 60]) {
        const estimate = permeabilityFromTexture({
          texture: 'loam',
          sand: sand / 100,
          clay: clay / 100,
          organicPercent,
        });
        // From gravel to intact clay: Freeze & Cherry 1979, Table 2.2 (from memory).
        expect(estimate.median, `${sand} ${clay} ${organicPercent}`).toBeGreaterThan(1e-12);
        expect(estimate.median).toBeLessThan(1e-2);
      }
  // Percentages may miss 100 by a rounding.
  expect(permeabilityFromTexture({ texture: 'loam', sand: 0.48, clay: 0.53 }).median).toBeGreaterThan(1e-12);
});
