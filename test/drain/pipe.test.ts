import fc from 'fast-check';
import { expect, test } from 'vitest';
import { choosePipe, manningFull, partFullArea, partFullFlow, pipeFlow } from '../../lib/drain/index.js';

const inflow = fc.double({ min: 0, max: 0.05, noNaN: true });
const fall = fc.double({ min: 0.0005, max: 0.2, noNaN: true });

test('a larger inflow or a flatter run never gets a smaller pipe', () => {
  fc.assert(
    fc.property(inflow, inflow, fall, fall, (a, b, s, t) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expect(choosePipe(more, s).diameter).toBeGreaterThanOrEqual(choosePipe(less, s).diameter);
      expect(choosePipe(a, Math.min(s, t)).diameter).toBeGreaterThanOrEqual(
        choosePipe(a, Math.max(s, t)).diameter,
      );
    }),
    { seed: 1, numRuns: 300 },
  );
});

/** What is chosen for a flood: the largest. */
const LARGEST = choosePipe(1, 0.01).diameter;

test('it carries twice the inflow, unless it is the largest there is; never below 100 mm', () => {
  fc.assert(
    fc.property(inflow, fall, (q, s) => {
      const { diameter, capacity } = choosePipe(q, s);
      expect(diameter).toBeGreaterThanOrEqual(0.1);
      expect(capacity >= 2 * q || diameter === LARGEST).toBe(true);
    }),
    { seed: 1, numRuns: 300 },
  );
});

test('what seeps from clay, litres a day, fills less than a thousandth of the smallest pipe at 1 %', () => {
  const clay = choosePipe(0.05 / 86400, 0.01);
  expect(clay.capacity).toBeGreaterThan((1000 * 0.05) / 86400);
  expect(clay.diameter).toBe(choosePipe(0, 0.01).diameter);
  expect(choosePipe(2e-3, 0.01).diameter).toBeGreaterThan(clay.diameter);
});

test('an inflow no pipe carries shows by its capacity', () => {
  const { diameter, capacity } = choosePipe(0.5, 0.01);
  expect(diameter).toBe(LARGEST);
  expect(capacity).toBeLessThan(0.5);
});

test('a flow stands at the depth at which Manning carries it, and beyond the fullest pipe fills it', () => {
  const [diameter, fall, roughness] = [0.1, 0.01, 0.012];
  const full = manningFull.compute(diameter, fall, roughness);
  for (const y of [0.05, 0.3, 0.5, 0.8, 0.93]) {
    const flow = full * partFullFlow(y);
    const { depth, velocity } = pipeFlow(flow, diameter, fall, roughness);
    expect(depth).toBeCloseTo(y, 9);
    expect(velocity).toBeCloseTo(flow / (partFullArea.compute(y) * diameter ** 2), 9);
  }
  // At 0.938 of its diameter a round pipe carries most, 1.076 times the full pipe.
  expect(pipeFlow(1.07 * full, diameter, fall, roughness).depth).toBeLessThan(0.938);
  const over = pipeFlow(1.08 * full, diameter, fall, roughness);
  expect(over.depth).toBe(1);
  expect(over.velocity).toBeCloseTo((1.08 * full * 4) / (Math.PI * diameter ** 2), 12);
});
