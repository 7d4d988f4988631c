import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  BEDS,
  type DrainInput,
  designDrain,
  HEAVY_CLAY,
  judgeBed,
  layoutOf,
  netUnderLiner,
  pipesForBallast,
  pipesInClay,
  quantitiesOf,
  strataOf,
} from '../../lib/drain/index.js';
import { WHOLE } from '../sweep.js';

const BASE: DrainInput = {
  floor: -1,
  floorArea: 12,
  floorLength: 4,
  floorWidth: 3,
  sideArea: 14,
  inflow: { clay: 1e-6, ring_storm: 0, roof: 0, uphill: 0, leak: 2e-5 },
  end: { kind: 'outlet', name: 'ditch', level: -1.5, distance: 15 },
};

/** Permeability times thickness of a bed, m²/s. */
const transmissivity = (bed: keyof typeof BEDS) =>
  strataOf(bed).reduce((sum, l) => sum + l.permeability * l.thickness, 0);

describe('layout', () => {
  const sand = (fromBelow: number, fromSides: number) =>
    layoutOf(4, 3, 'concrete sand', { fromBelow, fromSides }, 0.1);

  test('a little storm water: one pipe; much from the sides: a pipe round their foot; much from below: branches', () => {
    expect(sand(1e-6, 1e-7).kind).toBe('spine');
    expect(sand(1e-6, 1e-4)).toMatchObject({ kind: 'ring', length: 14, branches: 0, spacing: 3 });
    expect(sand(2e-5, 1e-4).kind).toBe('herringbone');
  });

  test('the head left by each stays within the limit', () => {
    for (const [below, sides] of [
      [1e-6, 1e-7],
      [1e-6, 1e-4],
      [2e-5, 1e-6],
    ]) {
      const l = sand(below, sides);
      // One layer: K (h² − h₀²) = q L², the pipe half full, 0.03 m of 0.15 m dry.
      const height = (spacing: number) => Math.sqrt(0.05 ** 2 + (l.evenly * (spacing / 2) ** 2) / 3e-4);
      expect(height(l.spacing), l.kind).toBeLessThanOrEqual(0.12 + 1e-12);
      expect(height(l.allowed)).toBeCloseTo(0.12, 12);
    }
  });

  test('from the sides all water goes half the width: twice the loss of the same water from below', () => {
    const side = sand(0, 1e-6);
    // Q/(2 L) through T over half the width.
    const loss = (1e-6 / (2 * 4)) * (1.5 / transmissivity('concrete sand'));
    expect((side.evenly * 1.5 ** 2) / (2 * transmissivity('concrete sand'))).toBeCloseTo(loss, 15);
  });
});

describe('net pressure on the emptied liner', () => {
  test('is the head above the pipe less its depth and the ballast', () => {
    const left = { middle: 0.1, between: 0.2, edge: 0.4, walls: 1 };
    const net = netUnderLiner(left, 0.1, 0.15);
    expect(net.middle).toBeCloseTo(-0.15, 12);
    expect(net.edge).toBeCloseTo(0.15, 12);
    expect(net.walls).toBeCloseTo(0.75, 12);
  });

  test('the bed relieves all of it; a lone pipe leaves the edge lifted and the walls with everything', () => {
    const { netHead } = designDrain({ ...BASE, outside: 0 });
    expect(Math.max(...Object.values(netHead.bed))).toBeLessThan(0);
    expect(netHead.lonePipe.edge).toBeGreaterThan(0);
    expect(netHead.lonePipe.walls).toBeCloseTo(1, 12);
  });

  test('pipes in plain clay: fewest whose floor is held, and ballast spares pipes', () => {
    const few = pipesForBallast(3, 0.5, 0.2)!;
    const more = pipesForBallast(3, 0.5, 0.05)!;
    expect(few).toBeLessThanOrEqual(more);
    const edge = (n: number) => netUnderLiner(pipesInClay(3, 0.5, n), 0.2).edge;
    expect(edge(few)).toBeLessThanOrEqual(0);
    if (few > 1) expect(edge(few - 1)).toBeGreaterThan(0);
    expect(pipesForBallast(3, 5, 0)).toBeUndefined();
  });
});

describe('a drainage mat', () => {
  const mat = designDrain({ ...BASE, bed: 'drainage mat', sideSlope: 1 });

  test('is judged by its transmissivity and the fabric on it', () => {
    expect(transmissivity('drainage mat')).toBeLessThan(transmissivity('pea gravel in fabric'));
    expect(transmissivity('drainage mat')).toBeGreaterThan(transmissivity('concrete sand'));
    expect(mat.envelope.retention).toBe(judgeBed('pea gravel in fabric', HEAVY_CLAY).retention);
    expect(mat.reserve.envelope).toBeGreaterThan(1);
    expect(Object.keys(BEDS)).toContain('drainage mat');
  });

  test('lies on floor and sides; stone only in the trench of the pipe', () => {
    const amounts = Object.fromEntries(mat.quantities.map((q) => [q.item, q.amount]));
    expect(amounts['drainage mat with fabric on both faces, floor and sides, 15 % laps']).toBeCloseTo(
      1.15 * 26,
      9,
    );
    expect(amounts['drainage fabric in the trench of the pipe, 15 % laps']).toBeCloseTo(1.15 * 4 * 0.6, 9);
    expect(amounts['pea gravel, washed, around the pipe, 10 % waste']).toBeCloseTo(1.1 * 4 * 0.3 * 0.15, 9);
    // Mat 20 mm on 12 m², trench of the pipe, and that of the run: 15 × 0.3 × 0.6.
    expect(mat.dug).toBeCloseTo(0.24 + 0.18 + 2.7, 9);
    expect(Object.keys(amounts).filter((item) => item.includes('sand'))).toEqual([]);
  });
});

test('a ring of pipe has four bends more, and its length is bought', () => {
  const ring = layoutOf(4, 3, 'concrete sand', { fromBelow: 1e-6, fromSides: 1e-4 }, 0.1);
  const list = quantitiesOf({ ...BASE, bed: 'concrete sand', layout: ring, pipe: '100 mm' });
  expect(list.find((q) => q.item.startsWith('perforated'))!.amount).toBeCloseTo(1.05 * 14, 12);
  // Riser bend, coupling, four corners, and the run of three sticks.
  expect(list.find((q) => q.item.startsWith('couplings'))!.amount).toBe(2 + 4 + 2);
});

describe('both directions of error', () => {
  const d = designDrain({ ...BASE, inflow: { ...BASE.inflow, uphill: 3e-4 } });

  test('the pipe at its rough and smooth end, the openings with most and none of them blocked', () => {
    expect(d.pipe.most / d.pipe.capacity).toBeCloseTo(0.022 / 0.015, 9);
    expect(d.entry.likely).toBeCloseTo(2 * d.entry.low, 12);
    expect(d.entry.high).toBeCloseTo(2 * d.entry.likely, 12);
    expect(d.reserve['pipe entry']).toBeCloseTo(d.entry.likely / d.totalInflow, 9);
  });

  test('the smallest pipe that carries it is named, and how many times over', () => {
    expect(d.smallest!.pipe.name).toBe('50 mm drain coil');
    expect(d.smallest!.times).toBeGreaterThan(1);
    expect(d.smallest!.diameter).toBeLessThan(d.pipeDiameter);
    expect(designDrain({ ...BASE, inflow: { ...BASE.inflow, roof: 0.1 } }).smallest).toBeUndefined();
  });

  test('a 1 % run keeps itself clean even of silt; by the tables 4 in corrugated needs 0.55 % for that', () => {
    const us = designDrain({ ...BASE, series: 'us' });
    expect(us.pipe.pipe.name).toBe('4 in corrugated pipe');
    // At n = 0.015 the table has 0.55 %; ours is the rough end, 0.022.
    expect(100 * us.cleansing.silty * (0.015 / 0.022) ** 2).toBeCloseTo(0.55, 1);
    expect(us.cleansing.filtered).toBeLessThan(0.002);
  });
});

test('under any inflow a reserve jumps only where the design itself changes: another pipe or layout', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(number(-1.6, -0.6), number(-2.4, -0.9), number(0, 3e-3), (floor, level, uphill) => {
      const at = (z: number) =>
        designDrain({
          ...BASE,
          floor: z,
          inflow: { ...BASE.inflow, uphill },
          end: { kind: 'outlet', name: 'ditch', level, distance: 15, flood: level + 0.3 },
        });
      const [a, b] = [at(floor), at(floor + 1e-4)];
      if (a.pipe.pipe.name !== b.pipe.pipe.name || a.layout.kind !== b.layout.kind) return;
      for (const link of Object.keys(a.reserve))
        expect(Math.abs(b.reserve[link] - a.reserve[link]), link).toBeLessThan(
          0.005 + 0.15 * Math.abs(a.reserve[link]),
        );
    }),
    { seed: 1, numRuns: WHOLE ? 300 : 100 },
  );
});
