import { expect, test } from 'vitest';
import { CONSISTENCIES, strengthFromConsistency, strengthFromTests } from '../../lib/soil/index.js';

test('a firmer word is a stronger clay', () => {
  const medians = CONSISTENCIES.map((word) => strengthFromConsistency(word).median);
  for (let i = 1; i < medians.length; i++) expect(medians[i]).toBeGreaterThan(medians[i - 1]);
});

// Terzaghi & Peck classes, from memory: kPa.
test.each([
  ['soft', 12, 25],
  ['firm', 25, 50],
  ['stiff', 50, 100],
  ['very stiff', 100, 200],
] as const)('%s lies between %d and %d kPa', (word, least, most) => {
  const { median, evidence } = strengthFromConsistency(word);
  expect(median).toBeGreaterThan(least * 1000);
  expect(median).toBeLessThan(most * 1000);
  expect(evidence).toEqual([`thumb test: ${word}`]);
});

test('tests are pooled by their geometric mean, and more of them are surer', () => {
  expect(strengthFromTests([20000, 80000]).median).toBeCloseTo(40000, 6);
  expect(strengthFromTests([40000, 40000]).spread).toBeLessThan(strengthFromTests([40000]).spread);
  expect(strengthFromTests(Array(1000).fill(40000)).spread).toBeGreaterThan(0.15);
  expect(strengthFromTests([40000]).spread).toBeLessThan(strengthFromConsistency('firm').spread);
  expect(strengthFromTests([40000, 40000, 40000]).evidence).toEqual(['measured here 3 times']);
});
