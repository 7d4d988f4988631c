import { describe, expect, test } from 'vitest';
import { curveNumber, groupText, hydrologicGroup } from '../../lib/soil/index.js';

/** A profile with a tight layer at a depth (cm; beyond 150: none) and one permeability (µm/s) above it. */
function group(tight: number, water: number, permeability: number): string {
  const layers = [
    { top: 0, bottom: tight / 100, permeability: permeability * 1e-6 },
    ...(tight < 150 ? [{ top: tight / 100, bottom: 3, permeability: 1e-9 }] : []),
  ];
  return groupText(hydrologicGroup(layers, water / 100));
}

describe('NEH 630 Table 7-1', () => {
  test.each([
    [40, 200, 90, 'D'],
    [80, 80, 45, 'A'],
    [80, 80, 40, 'B'],
    [80, 80, 10, 'C'],
    [80, 80, 1, 'D'],
    [80, 30, 45, 'A/D'],
    [80, 30, 5, 'C/D'],
    [150, 30, 5, 'B/D'],
    [150, 30, 0.3, 'D'],
    [150, 80, 5, 'C'],
    [150, 150, 5, 'B'],
    [150, 150, 0.4, 'D'],
    [150, 150, 0.41, 'C'],
    [150, 60, 12, 'B'],
    // A public script stores the permeability as whole numbers and gives D and B here.
    [150, 150, 0.9, 'C'],
    [150, 150, 10.4, 'A'],
  ])('tight layer at %d cm, water at %d cm, %d µm/s: %s', (tight, water, permeability, expected) => {
    expect(group(tight, water, permeability)).toBe(expected);
  });

  test('the slowest layer in the depth that counts decides', () => {
    const layers = [
      { top: 0, bottom: 0.3, permeability: 2e-5 },
      { top: 0.3, bottom: 0.8, permeability: 5e-6 },
      { top: 0.8, bottom: 2, permeability: 3e-7 },
    ];
    expect(groupText(hydrologicGroup(layers, 1.5))).toBe('D');
    expect(groupText(hydrologicGroup(layers, 0.8))).toBe('C');
  });

  test('a pit not logged from the ground is refused', () => {
    expect(() => hydrologicGroup([{ top: 1.2, bottom: 2, permeability: 1e-6 }], 2)).toThrow(
      /missing layers in the top 1 m/,
    );
  });
});

test('a dual group counts as undrained', () => {
  expect(curveNumber('lawn', { drained: 'B', undrained: 'D' })).toBe(80);
  expect(curveNumber('lawn', { drained: 'B', undrained: 'B' })).toBe(61);
});
