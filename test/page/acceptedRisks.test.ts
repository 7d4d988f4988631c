import { expect, it } from 'vitest';
import type { DepthCurve } from '../../lib/contract/index.js';
import { deepestSafe } from '../../lib/page/acceptedRisks.js';

const curve: DepthCurve = {
  option: 'drain-to-outlet',
  possible: true,
  depth_m: [0.2, 0.4, 0.6, 0.8, 1],
  per_year: [0.001, 0.008, 0.015, 0.03, 0.03],
  upkeep: [0, 0, 0, 0, 0],
  per_dig: [0, 0, 0, 0, 0],
  governs: ['none', 'none', 'none', 'lift-emptied', 'lift-emptied'],
  safe: [true, true, true, false, false],
};

it('goes deeper the more is accepted, and stops at the first unsafe depth', () => {
  expect(deepestSafe(curve, 0.01, 0.02)).toBe(0.4);
  expect(deepestSafe(curve, 0.02, 0.02)).toBe(0.6);
  expect(deepestSafe(curve, 0.05, 0.02)).toBe(1);
  expect(deepestSafe(curve, 0.0001, 0.02)).toBeUndefined();
});

it('does not go past a condition that fails, whatever is accepted', () => {
  const short = { ...curve, safe: [true, false, false, false, false] };
  expect(deepestSafe(short, 0.05, 0.02)).toBe(0.2);
});
