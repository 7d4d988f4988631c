import { describe, expect, test } from 'vitest';
import { drainageClass, seasonalHighFromColour } from '../../lib/soil/index.js';

describe('seasonal high water from the pit log', () => {
  test('from the shallowest layer with common or many mottles, 0.18 m nearer the ground', () => {
    const found = seasonalHighFromColour([
      { top: 0, mottles: 'none' },
      { top: 0.25, mottles: 'few' },
      { top: 0.5, mottles: 'common' },
      { top: 0.9, mottles: 'grey' },
    ])!;
    expect(found.from).toBe(0.5);
    expect(found.depth).toBeCloseTo(0.32, 12);
    expect(found.spread).toBe(0.2);
    expect(found.rule).toBe('common mottles from 0.5 m (Soil Survey Manual, redoximorphic features)');
    expect(found.bias).toContain('0.18 m nearer');
  });

  test('not above the ground, and nothing from soil without colours', () => {
    expect(seasonalHighFromColour([{ top: 0.1, mottles: 'grey' }])!.depth).toBe(0);
    expect(seasonalHighFromColour([{ top: 0.1, mottles: 'grey' }])!.rule).toMatch(/^grey colours from 0.1 m/);
    expect(seasonalHighFromColour([{ top: 0.1 }, { top: 0.3, mottles: 'few' }])).toBeUndefined();
  });
});

// A state's soil drainage class sheet (public copy): within 10, 20 and 40 inches.
test.each([
  [8, 'poorly drained'],
  [10, 'poorly drained'],
  [15, 'somewhat poorly drained'],
  [20, 'somewhat poorly drained'],
  [30, 'moderately well drained'],
  [50, 'well drained'],
])('first grey at %d inches: %s', (inches, expected) => {
  expect(drainageClass(inches * 0.0254)).toBe(expected);
});
