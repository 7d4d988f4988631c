import { describe, expect, test } from 'vitest';
import {
  BEDS,
  type Bed,
  fabricRule,
  filterBand,
  finerThan,
  GRADINGS,
  gradingFaults,
  judgeBed,
  largestD90,
  regraded,
  sieveCurve,
  sizeFiner,
  soilCurve,
} from '../../lib/drain/index.js';
import { bedWords } from '../../lib/text/index.js';

describe('FHWA HDS-6, section 6.11, problem 2, step by step (read in a copy)', () => {
  const base = { d85: 1.5e-3, d50: 0.5e-3, d15: 0.17e-3 };
  const riprap = { d85: 0.4, d50: 0.2, d15: 0.1 };
  const ratio = (f: number, b: number) => f / b;

  test('the rock does not filter the sand: ratios of about 600 and 67 where 40 and 5 may be', () => {
    expect(ratio(riprap.d15, base.d15)).toBeGreaterThan(40);
    expect(Math.round(ratio(riprap.d15, base.d15) / 100)).toBe(6);
    expect(Math.round(ratio(riprap.d15, base.d85))).toBe(67);
  });

  test('bounds of the filter on the sand: D50 below 20 mm, D15 from 0.85 to 6.8 mm', () => {
    expect(40 * base.d50).toBeCloseTo(20e-3, 12);
    expect(40 * base.d15).toBeCloseTo(6.8e-3, 12);
    expect(5 * base.d85).toBeCloseTo(7.5e-3, 12);
    expect(5 * base.d15).toBeCloseTo(0.85e-3, 12);
    for (const [d15, good] of [
      [0.8e-3, false],
      [3e-3, true],
      [7e-3, false],
    ] as const)
      expect(ratio(d15, base.d15) > 5 && ratio(d15, base.d15) < 40 && ratio(d15, base.d85) < 5).toBe(good);
  });

  test('bounds against the rock: D50 above 5 mm, D15 between 2.5 and 20 mm', () => {
    expect(riprap.d50 / 40).toBeCloseTo(5e-3, 12);
    expect(riprap.d15 / 5).toBeCloseTo(20e-3, 12);
    expect(riprap.d15 / 40).toBeCloseTo(2.5e-3, 12);
  });
});

describe('what a merchant sells, on a heavy clay', () => {
  const clay = { curve: soilCurve(0.16, 0.56) };
  const judged = (bed: Bed) => judgeBed(bed, clay);

  test('stone straight on it silts up, in words', () => {
    for (const bed of ['pea gravel', '20 mm stone'] as const) {
      expect(judged(bed).retention).toBeLessThan(0.2);
      expect(bedWords(judged(bed))).toContain('straight on this clay will silt up');
    }
  });

  test('sand, stone on sand and stone in fabric keep it out', () => {
    for (const bed of [
      'concrete sand',
      'pea gravel on concrete sand',
      'pea gravel in fabric',
      '20 mm stone in fabric',
    ] as const) {
      expect(judged(bed).retention, bed).toBeGreaterThan(1);
      expect(judged(bed).passage, bed).toBeGreaterThan(1);
      expect(bedWords(judged(bed))).not.toContain('silt up');
    }
  });

  test('a finer clay is too fine for concrete sand: fabric is left', () => {
    const fat = { curve: soilCurve(0.05, 0.6) };
    expect(judgeBed('concrete sand', fat).retention).toBeLessThan(1);
    expect(judgeBed('pea gravel in fabric', fat).retention).toBeGreaterThan(1);
  });

  test('coarse stone on sand lets the sand through', () => {
    const coarse =
      (4 * sizeFiner(GRADINGS['concrete sand'], 0.85)) / sizeFiner(GRADINGS['20 mm stone'], 0.15);
    const pea = (4 * sizeFiner(GRADINGS['concrete sand'], 0.85)) / sizeFiner(GRADINGS['pea gravel'], 0.15);
    expect(coarse).toBeLessThan(pea);
    expect(pea).toBeGreaterThan(1);
  });
});

test('the band: from 9 d85 but not below 0.2 mm, narrower than five, never empty', () => {
  for (let sand = 0.02; sand <= 0.6; sand += 0.02)
    for (let clay = 0.2; clay <= 1 - sand - 0.05; clay += 0.05) {
      const band = filterBand({ curve: soilCurve(sand, clay) });
      expect(band.largestD15).toBeGreaterThanOrEqual(2e-4);
      expect(band.leastD15).toBeLessThanOrEqual(band.largestD15);
      expect(band.largestD15 / band.leastD15).toBeLessThanOrEqual(5 + 1e-9);
      expect(filterBand({ curve: soilCurve(sand, clay), dispersive: true }).largestD15).toBeLessThanOrEqual(
        band.largestD15,
      );
    }
});

test('unwashed and gap-graded stone is refused, what is sold washed is not', () => {
  for (const curve of Object.values(GRADINGS)) expect(gradingFaults(curve)).toEqual([]);
  expect(
    gradingFaults(
      sieveCurve([
        [0.075, 9],
        [4.75, 40],
        [20, 100],
      ]),
    ).join(),
  ).toMatch(/fines.*many-sizes/);
  expect(
    gradingFaults(
      sieveCurve([
        [20, 0],
        [50, 50],
        [100, 100],
      ]),
    ).join(),
  ).toContain('stones');
});

test('fabric: finer soil, smaller openings', () => {
  expect([0.1, 0.3, 0.6].map((f) => fabricRule(f).opening)).toEqual([4.3e-4, 2.5e-4, 2.2e-4]);
  expect(Object.keys(BEDS)).toContain('20 mm stone in fabric');
});

describe('regrading and gap grading', () => {
  const stony = sieveCurve([
    [0.002, 24],
    [0.05, 50],
    [2, 58],
    [4.75, 60],
    [40, 100],
  ]);

  test('stones are left out of the soil that must be held back: its clay is not hidden by them', () => {
    const fine = regraded(stony);
    expect(fine[fine.length - 1]).toEqual([4.75e-3, 1]);
    expect(finerThan(fine, 5e-5)).toBeCloseTo(0.5 / 0.6, 12);
    expect(finerThan(fine, 7.5e-5)).toBeCloseTo(finerThan(stony, 7.5e-5) / 0.6, 12);
    // 0.50 finer than 0.05 mm as dug would be category 2 on the edge of a much coarser d85.
    const band = filterBand({ curve: stony });
    expect(band.d85).toBeLessThan(0.5e-3);
    expect(sizeFiner(stony, 0.85)).toBeGreaterThan(10e-3);
    // The rule for water to pass takes the soil as it lies.
    expect(band.d15).toBe(sizeFiner(stony, 0.15));
    const clay = soilCurve(0.16, 0.56);
    expect(regraded(clay)).toBe(clay);
  });

  test('coarse and fine part while tipped: D90 by D10', () => {
    expect([0.4e-3, 0.7e-3, 1.5e-3, 3e-3, 7e-3, 20e-3].map(largestD90)).toEqual([
      20e-3, 25e-3, 30e-3, 40e-3, 50e-3, 60e-3,
    ]);
    const gap = sieveCurve([
      [0.3, 2],
      [0.8, 60],
      [1.2, 85],
      [30, 88],
      [40, 100],
    ]);
    expect(gradingFaults(gap)).toContain('many-sizes');
  });
});

test('fabric straight on very fine clay keeps it out and is doubtful; on a sandy one it is not', () => {
  const fine = judgeBed('pea gravel in fabric', { curve: soilCurve(0.05, 0.6) });
  expect(fine.retention).toBeGreaterThan(1);
  expect(fine.doubtful).toBe(true);
  expect(bedWords(fine)).toContain('may clog');
  const sandy = judgeBed('pea gravel in fabric', { curve: soilCurve(0.45, 0.3) });
  expect(sandy.doubtful).toBe(false);
  expect(bedWords(sandy)).not.toContain('clog');
  for (const bed of Object.keys(BEDS) as Bed[])
    expect(bedWords(judgeBed(bed, { curve: soilCurve(0.05, 0.6) }))).not.toContain('D15');
});
