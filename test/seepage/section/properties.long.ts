import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gradedLines, pondSection, soilsOf } from '../../../lib/seepage/section/index.js';
import { holds, symmetric } from './holds.js';
import { COARSE, pondGround } from './randomGround.js';

const SEED = 11;

test('in random ground the balance closes, outlets only let out, no head goes beyond those given', () => {
  fc.assert(fc.property(pondGround, holds), { seed: SEED, numRuns: 40, endOnFailure: true });
}, 60_000);

test('both sides alike, the answer alike', () => {
  fc.assert(fc.property(pondGround, symmetric), { seed: SEED, numRuns: 20, endOnFailure: true });
}, 60_000);

describe('the grid', () => {
  const mark = fc.record({
    at: fc.integer({ min: -500, max: 500 }).map((cm) => cm / 100),
    size: fc.double({ min: 0.01, max: 1, noNaN: true }),
  });

  test('ascends, keeps its ends and comes near the number of cells asked for', () => {
    fc.assert(
      fc.property(fc.array(mark, { minLength: 2, maxLength: 8 }), (marks) => {
        const ends = marks.map((m) => m.at);
        const [low, high] = [Math.min(...ends), Math.max(...ends)];
        fc.pre(high - low > 0.5);
        const lines = gradedLines(marks, [], 150);
        expect(lines[0]).toBe(low);
        expect(lines[lines.length - 1]).toBe(high);
        for (let i = 1; i < lines.length; i++) expect(lines[i]).toBeGreaterThan(lines[i - 1]);
        expect(lines.length).toBeLessThanOrEqual(151);
        expect(lines.length).toBeGreaterThan(75);
      }),
      { seed: SEED, numRuns: 100, endOnFailure: true },
    );
  });

  test('neighbours differ by little', () => {
    const lines = gradedLines(
      [
        { at: -8, size: 1 },
        { at: 0, size: 0.01 },
        { at: 8, size: 1 },
      ],
      [{ from: 2, to: 2.1, cells: 2 }],
      120,
    );
    const sizes = Array.from(lines.slice(1), (x, i) => x - lines[i]);
    for (let i = 1; i < sizes.length; i++) {
      const ratio = sizes[i] / sizes[i - 1];
      expect(Math.max(ratio, 1 / ratio)).toBeLessThan(1.6);
    }
  });

  test('holes that overlap, and one beyond the ends, are refused', () => {
    const ends = [
      { at: 0, size: 1 },
      { at: 1, size: 1 },
    ];
    const hole = (from: number, to: number) => ({ from, to, cells: 1 });
    expect(() => gradedLines(ends, [hole(0.2, 0.5), hole(0.4, 0.6)], 20)).toThrow('overlaps');
    expect(() => gradedLines(ends, [hole(0.9, 1.2)], 20)).toThrow('leaves the section');
    expect(() => gradedLines([ends[0]], [], 20)).toThrow('no extent');
  });
});

test('what is not a ground is refused, with the value and the range', () => {
  const [ground] = fc.sample(pondGround, { seed: 3, numRuns: 1, endOnFailure: true });
  const bad = (change: Partial<typeof ground>) => () => pondSection({ ...ground, ...change }, COARSE);
  expect(bad({ layers: [] })).toThrow('missing layers');
  expect(bad({ base: 0 })).toThrow(/base 0 m is outside/);
  expect(bad({ rain: -1e-8 })).toThrow(/rain -1e-8 m\/s is outside/);
  expect(bad({ outline: [{ x: 0, z: 0 }] })).toThrow('missing outline');
  expect(bad({ layers: [{ thickness: 0, soil: soilsOf(ground)[0] }] })).toThrow(/layer 1: thickness 0 m/);
  expect(bad({ pipes: [{ x: 0, z: -0.01, radius: 0.02 }] })).toThrow(/lies in the pond/);
  expect(
    bad({
      surface: [
        { x: -0.1, z: 0 },
        { x: 0.1, z: 0 },
      ],
    }),
  ).toThrow('leaves the section');
});
