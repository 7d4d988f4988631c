import { describe, expect, test } from 'vitest';
import { BED_THICKNESS, type DrainInput, designDrain, reliefLevel } from '../../lib/drain/index.js';

const CASE: DrainInput = {
  floor: -1.2,
  floorArea: 6,
  floorLength: 3,
  sideArea: 15,
  inflow: { clay: 1e-7, ring_storm: 1e-4, roof: 0, uphill: 2e-4, leak: 0 },
  end: { kind: 'outlet', name: 'ditch', level: -1.8, distance: 20, flood: -1.5 },
};
const amounts = (input: DrainInput) =>
  Object.fromEntries(designDrain(input).quantities.map((q) => [q.item, q.amount]));

describe('a drain to an outlet, by hand', () => {
  const drain = designDrain(CASE);

  test('fall: 1 % of 20 m is needed, and −1.2 − 0.15 − (−1.8) m is there', () => {
    expect(drain.fallNeeded).toBeCloseTo(0.2, 12);
    expect(drain.fallAvailable).toBeCloseTo(0.45, 12);
    expect(drain.reserve.fall).toBeCloseTo(2.25, 10);
  });

  test('pipe: its capacity at 2.25 % by Manning at n = 0.022, over 0.3001 l/s', () => {
    const D = drain.pipeDiameter;
    expect(drain.totalInflow).toBeCloseTo(3.001e-4, 12);
    expect(drain.pipeCapacity).toBeCloseTo((((Math.PI * D * D) / 4) * (D / 4) ** (2 / 3) * 0.15) / 0.022, 12);
    expect(drain.reserve.pipe).toBeCloseTo(drain.pipeCapacity / 3.001e-4, 8);
  });

  test('flood: 0.3 m below the floor is ten times what the bed keeps', () => {
    expect(drain.reserve['outlet in flood']).toBeCloseTo(10, 10);
  });

  test('the weakest link is the one with the least reserve', () => {
    const least = Math.min(...Object.values(drain.reserve));
    expect(drain.reserve[drain.weakestLink]).toBe(least);
  });

  test('quantities, with waste, laps and swell', () => {
    // Bed 6 × 0.15 = 0.9 m³, sides 15 × 0.10 = 1.5 m³, trench 20 × 0.3 × 0.6 = 3.6 m³; sand and gravel share the bed.
    const ours = amounts(CASE);
    const [sand, gravel, perforated] = ['concrete sand', 'pea gravel', 'perforated pipe'].map(
      (name) => ours[Object.keys(ours).find((item) => item.startsWith(name))!],
    );
    // The groove under the pipe around a floor of 3 × 2 m, 0.3 × 0.05 m, is filled with gravel.
    const groove = 10 * 0.3 * 0.05;
    expect(sand + gravel).toBeCloseTo(1.1 * (2.4 + groove), 10);
    expect(sand).toBeGreaterThan(1.1 * 1.5);
    expect(perforated).toBeCloseTo(1.05 * drain.layout.length, 10);
    expect(ours['solid pipe, 100 mm, 5 % waste']).toBeCloseTo(21, 10);
    expect(ours['filter fabric under the liner, 15 % laps']).toBeCloseTo(1.15 * 21, 10);
    expect(drain.dug).toBeCloseTo(6 + groove, 10);
    expect(ours).toMatchObject({ 'flap valve': 1, 'animal guard': 1 });
  });
});

describe('what governs', () => {
  const end = (change: object) => ({ ...CASE, end: { ...CASE.end, ...change } as DrainInput['end'] });

  test('on flat ground the fall', () => {
    const flat = designDrain(end({ level: -1.4 }));
    expect(flat.weakestLink).toBe('fall');
    expect(flat.reserve.fall).toBeCloseTo(0.25, 10);
    // An outlet above the bed: the fall is wanting, not merely short.
    expect(designDrain(end({ level: -1 })).reserve.fall).toBeLessThan(0);
  });

  test('with the ditch over the floor in flood the outlet, at no reserve', () => {
    const flooded = designDrain(end({ flood: -1.1 }));
    expect(flooded.weakestLink).toBe('outlet in flood');
    expect(flooded.reserve['outlet in flood']).toBe(0);
  });

  test('under more roof than any pipe carries the pipe or its way in, shown below 1', () => {
    const drowned = designDrain({ ...CASE, inflow: { ...CASE.inflow, roof: 0.05 } });
    expect(drowned.weakestLink).toMatch(/^pipe/);
    expect(drowned.reserve.pipe).toBeLessThan(1);
  });

  test('stone straight on the clay the envelope', () => {
    const bare = designDrain({ ...CASE, bed: '20 mm stone' });
    expect(bare.weakestLink).toBe('envelope');
    expect(bare.reserve.envelope).toBeLessThan(0.2);
    expect(designDrain(CASE).reserve.envelope).toBeGreaterThan(1);
  });
});

test('a sump needs no fall, and its list has two pumps and an alarm', () => {
  const input: DrainInput = { ...CASE, end: { kind: 'sump', name: 'lawn', level: 0.2, distance: 9 } };
  const drain = designDrain(input);
  expect(drain.fallNeeded).toBe(0);
  expect(drain.fallAvailable).toBeUndefined();
  expect(drain.reserve).not.toHaveProperty('fall');
  expect(drain.reserve).not.toHaveProperty('outlet in flood');
  const bought = Object.entries(amounts(input));
  for (const [words, pieces] of [
    [/^sump chamber with lid, 0\.6 m \(2 ft\) square, /, 1],
    [/^drainage pump, at least \d+ L \(\d+ gal\) a minute at /, 2],
    [/^high-water alarm with battery$/, 1],
  ] as const)
    expect(bought.filter(([item]) => words.test(item)).map(([, amount]) => amount)).toEqual([pieces]);
  expect(amounts(input)).not.toHaveProperty('flap valve');
});

describe('level a drain lets the water fall to', () => {
  test('is the bed where the outlet is low, and rises with the outlet from there without a jump', () => {
    expect(reliefLevel(-1.2, -3, 20)).toBeCloseTo(-1.2 - BED_THICKNESS, 12);
    expect(reliefLevel(-1.2, -1, 20)).toBeCloseTo(-0.8, 12);
    let before = reliefLevel(-1.2, -2, 20);
    for (let z = -2; z < 0; z += 0.01) {
      const now = reliefLevel(-1.2, z + 0.01, 20);
      expect(now - before).toBeGreaterThanOrEqual(-1e-12);
      expect(now - before).toBeLessThanOrEqual(0.01 + 1e-12);
      before = now;
    }
  });

  test('a longer run never lowers it', () => {
    for (let run = 0; run < 100; run += 5)
      expect(reliefLevel(-1.2, -1.5, run + 5)).toBeGreaterThanOrEqual(reliefLevel(-1.2, -1.5, run));
  });
});
