/**
 * What a front hands out can be named: a cell of a notebook exports what it computes, and TypeScript refuses that where a type
 * on the way is kept to its file.
 */
import { expect, test } from 'vitest';
import { FRONTS, handedOut } from './handedOut.js';

test.each(FRONTS)('%s', (front) => {
  const types = handedOut(front);
  expect(types.size).toBeGreaterThan(5);
  expect([...types].filter(([, named]) => !named).map(([type]) => type)).toEqual([]);
});
