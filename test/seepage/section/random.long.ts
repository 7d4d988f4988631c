import fc from 'fast-check';
import { test } from 'vitest';
import { holds, symmetric } from './holds.js';
import { pondGround } from './randomGround.js';

test('2,000 random layered sections settle, and hold what must hold', () => {
  fc.assert(fc.property(pondGround, holds), { seed: 2, numRuns: 2000, endOnFailure: true });
});

test('300 that are alike on both sides', () => {
  fc.assert(fc.property(pondGround, symmetric), { seed: 3, numRuns: 300, endOnFailure: true });
});
