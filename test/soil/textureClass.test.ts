import { describe, expect, test } from 'vitest';
import { uniforms } from '../../lib/sampling/index.js';
import { textureClass, USDA_CLASSES, type UsdaClass } from '../../lib/soil/index.js';
import { InputError } from '../../lib/units/index.js';

/**
 * Benham, Ahrens & Nettleton 2009, Clarification of Soil Texture Class Boundaries (USDA-NRCS): one rule a class, in
 * no order, as read in its abstract and public ports. Sand, silt and clay in tenths of a percent, whole numbers.
 */
const RULES: Record<UsdaClass, (sand: number, silt: number, clay: number) => boolean> = {
  sand: (_, z, c) => 2 * z + 3 * c < 300,
  'loamy sand': (_, z, c) => 2 * z + 3 * c >= 300 && z + 2 * c < 300,
  'sandy loam': (s, z, c) =>
    z + 2 * c >= 300 && ((c >= 70 && c < 200 && s > 520) || (c < 70 && z < 500 && 2 * z + 3 * c >= 300)),
  loam: (s, z, c) => c >= 70 && c < 270 && z >= 280 && z < 500 && s <= 520,
  'silt loam': (_, z, c) => (z >= 500 && c >= 120 && c < 270) || (z >= 500 && z < 800 && c < 120),
  silt: (_, z, c) => z >= 800 && c < 120,
  'sandy clay loam': (s, z, c) => c >= 200 && c < 350 && z < 280 && s > 450,
  'clay loam': (s, _, c) => c >= 270 && c < 400 && s > 200 && s <= 450,
  'silty clay loam': (s, _, c) => c >= 270 && c < 400 && s <= 200,
  'sandy clay': (s, _, c) => c >= 350 && s > 450,
  'silty clay': (_, z, c) => c >= 400 && z >= 400,
  clay: (s, z, c) => c >= 400 && s <= 450 && z < 400,
};

function expectOneClass(sand: number, clay: number): void {
  const fitting = USDA_CLASSES.filter((name) => RULES[name](sand, 1000 - sand - clay, clay));
  if (fitting.length !== 1 || textureClass(sand / 1000, clay / 1000) !== fitting[0])
    expect.fail(
      `sand ${sand} ‰, clay ${clay} ‰: rules ${fitting}, ours ${textureClass(sand / 1000, clay / 1000)}`,
    );
}

describe('USDA texture class', () => {
  // Example vector of the help page of soil_class in a public R package, after Moeys' soiltexture 2016.
  test.each<[number, number, UsdaClass]>([
    [90, 5, 'sand'],
    [32, 60, 'clay'],
    [70, 15, 'sandy loam'],
    [70, 5, 'sandy loam'],
    [20, 25, 'silt loam'],
    [10, 5, 'silt'],
    [10, 25, 'silt loam'],
    [10, 45, 'silty clay'],
    [20, 65, 'clay'],
  ])('published: sand %d %%, clay %d %% is %s', (sand, clay, name) => {
    expect(textureClass(sand / 100, clay / 100)).toBe(name);
  });

  // Points on the limits, as the 2009 wording reads them.
  test.each<[number, number, UsdaClass]>([
    [45, 40, 'clay'],
    [45.1, 40, 'sandy clay'],
    [20, 40, 'silty clay'],
    [20.1, 40, 'clay'],
    [20, 39.9, 'silty clay loam'],
    [20, 27, 'silty clay loam'],
    [20.1, 27, 'clay loam'],
    [45, 27, 'clay loam'],
    [45.1, 27, 'sandy clay loam'],
    [45, 26.9, 'loam'],
    [52, 20, 'loam'],
    [52.1, 20, 'sandy clay loam'],
    [52.1, 19.9, 'sandy loam'],
    [52, 12, 'loam'],
    [43.2, 6.9, 'sandy loam'],
    [43.1, 6.9, 'silt loam'],
    [8, 12, 'silt loam'],
    [8.1, 11.9, 'silt'],
    [8.2, 11.9, 'silt loam'],
    [23, 27, 'clay loam'],
    [23.1, 26.9, 'silt loam'],
    [35, 15.1, 'loam'],
    [85, 0, 'loamy sand'],
  ])('on a limit: sand %d %%, clay %d %% is %s', (sand, clay, name) => {
    expect(textureClass(sand / 100, clay / 100)).toBe(name);
  });

  test('every whole percent has exactly one class, and it is ours', () => {
    let points = 0;
    for (let sand = 0; sand <= 100; sand++)
      for (let clay = 0; sand + clay <= 100; clay++, points++) expectOneClass(10 * sand, 10 * clay);
    expect(points).toBe(5151);
  });

  test('and so has every tenth of a percent drawn at random', () => {
    const next = uniforms(7);
    for (let i = 0; i < 20000; i++) {
      const sand = Math.floor(next() * 1001);
      expectOneClass(sand, Math.floor(next() * (1001 - sand)));
    }
  });

  test.each([
    [-0.01, 0.2],
    [0.2, -0.01],
    [0.6, 0.41],
    [Number.NaN, 0.2],
    [0.2, Number.NaN],
    [60, 20],
  ])('sand %d and clay %d are refused', (sand, clay) => {
    expect(() => textureClass(sand, clay)).toThrow(InputError);
    expect(() => textureClass(sand, clay)).toThrow(/0 to 1 and at most 1 together/);
  });
});
