import { expect, test } from 'vitest';
import { drainablePorosity, OTHER_GROUND, USDA_CLASSES } from '../../lib/soil/index.js';

// Johnson 1967 (USGS WSP 1662-D), minimum, mean and maximum in percent, second-hand.
test.each([
  ['clay', 0, 5],
  ['silt', 3, 19],
  ['sandy clay', 3, 12],
  ['sand', 10, 35],
  ['gravel', 12, 35],
] as const)('of %s lies between %d and %d %%', (texture, least, most) => {
  const { median } = drainablePorosity(texture);
  expect(100 * median).toBeGreaterThan(least);
  expect(100 * median).toBeLessThan(most);
});

test('a metre of clay stores 20 to 50 mm', () => {
  for (const texture of ['clay', 'silty clay', 'silty clay loam', 'clay loam'] as const) {
    expect(drainablePorosity(texture).median).toBeGreaterThanOrEqual(0.02);
    expect(drainablePorosity(texture).median).toBeLessThanOrEqual(0.05);
  }
});

test('every texture has one, between rock and half the volume', () => {
  for (const texture of [...USDA_CLASSES, ...OTHER_GROUND]) {
    const { median, spread, evidence } = drainablePorosity(texture);
    expect(median).toBeGreaterThan(0);
    expect(median * Math.exp(1.2816 * spread)).toBeLessThan(0.5);
    expect(evidence).toEqual([`table for ${texture}`]);
  }
});
