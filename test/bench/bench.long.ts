import { expect, test } from 'vitest';
import { BENCHES, ranBench } from './benches.mjs';

/** Samples that are enough to see that a bench runs: what is compared agrees, and no memory grows. */
const FEW: Record<string, string[]> = { whatIf: ['64'] };

test.each(BENCHES)('the bench %s runs to its end, and every claim of it is a ratio', (name) => {
  const { lacking, status, stderr, claims } = ranBench(name, ...(FEW[name] ?? []));
  if (lacking.length > 0) {
    console.log(`not run: needs ${lacking.join(', ')}`);
    return;
  }
  expect([stderr, status]).toEqual(['', 0]);
  expect(claims!.length).toBeGreaterThan(0);
  for (const { ours, other } of claims!) expect(ours / other).toBeGreaterThan(0);
});
