import { describe, expect, test } from 'vitest';
import {
  type Dip,
  dipFollower,
  errorSeries,
  freeLevel,
  logLikelihoodOf,
  logLikelihoodOfColour,
  seenFrom,
} from '../../lib/groundwater/index.js';

const DAYS = 40_000;
const series = new Float64Array(DAYS);
errorSeries(5)(series);
const mean = (v: ArrayLike<number>) => Array.from(v).reduce((a, b) => a + b, 0) / v.length;

describe('the error of the model', () => {
  test('has mean 0, spread 1, and one value in twenty beyond 1.96', () => {
    const all = new Float64Array(DAYS * 5);
    const fill = errorSeries(1);
    for (let k = 0; k < 5; k++) fill(all.subarray(k * DAYS, (k + 1) * DAYS));
    expect(Math.abs(mean(all))).toBeLessThan(0.05);
    expect(Math.sqrt(mean(all.map((v) => v * v)))).toBeCloseTo(0.98, 1);
    expect(mean(all.map((v) => (Math.abs(v) > 1.96 ? 1 : 0)))).toBeCloseTo(0.05, 1);
  });

  // exp(−t/45 d), beside 0.75, 0.55 and 0.25 of the misses of measured wells.
  test.each([
    [10, 0.8],
    [30, 0.51],
    [60, 0.26],
  ])('correlates over %i days by %d', (lag, expected) => {
    let sum = 0;
    for (let d = 0; d + lag < DAYS; d++) sum += series[d] * series[d + lag];
    expect(Math.abs(sum / (DAYS - lag) / mean(series.map((v) => v * v)) - expected)).toBeLessThan(0.08);
  });

  test('the same seed gives the same series, and each call a new one', () => {
    const [a, b, c] = [0, 1, 2].map(() => new Float64Array(50));
    const fill = errorSeries(9);
    fill(a);
    fill(b);
    errorSeries(9)(c);
    expect(c).toEqual(a);
    expect(b).not.toEqual(a);
  });

  test('lifts the water freely to the ground, or to 0.05 m above where it was read', () => {
    const dip = (depth: number, says: Dip['says'] = 'level'): Dip => ({ day: 1, depth, says, error: 0.01 });
    expect(freeLevel([])).toBe(0);
    expect(freeLevel([dip(0.4), dip(-0.02)])).toBeCloseTo(0.07, 12);
    expect(freeLevel([dip(0.4), dip(-0.31)])).toBeCloseTo(0.36, 12);
    expect(freeLevel([dip(-0.5, 'above')])).toBe(0);
  });
});

describe('the likelihood of dips', () => {
  const model = new Float64Array(400).fill(1);
  const level = (day: number, depth: number, error = 0): Dip => ({ day, depth, says: 'level', error });
  const log = (dips: Dip[], error: number) => logLikelihoodOf(seenFrom(0, dips), model, error);

  test.each([0, 0.08])(
    'of three levels read to ±%d m is the joint normal density of their misses',
    (reading) => {
      const days = [10, 40, 130];
      const misses = [0.1, -0.05, 0.2];
      const error = 0.15;
      const [[a, d, e], [, b, f], [, , c]] = days.map((from, i) =>
        days.map((to, j) => error ** 2 * Math.exp(-Math.abs(from - to) / 45) + (i === j ? reading ** 2 : 0)),
      );
      const determinant = a * b * c + 2 * d * e * f - a * f * f - b * e * e - c * d * d;
      const inverse = [
        [b * c - f * f, e * f - c * d, d * f - b * e],
        [e * f - c * d, a * c - e * e, d * e - a * f],
        [d * f - b * e, d * e - a * f, a * b - d * d],
      ].map((row) => row.map((v) => v / determinant));
      let squares = 0;
      for (let i = 0; i < 3; i++)
        for (let j = 0; j < 3; j++) squares += misses[i] * inverse[i][j] * misses[j];
      const dips = days.map((day, i) => level(day, 1 + misses[i], reading));
      expect(log(dips, error)).toBeCloseTo(-0.5 * (squares + Math.log(determinant)), 10);
    },
  );

  test('can only fall from look to look, from that of a model that meets them all', () => {
    const dips = [
      level(10, 1.1),
      level(30, 0.7, 0.02),
      { ...level(50, 0.9), says: 'below' as const },
      level(90, 1),
    ];
    const follower = dipFollower(seenFrom(0, dips));
    let last = follower.begin(0.1);
    const met = Float64Array.from(model);
    dips.forEach(({ day, depth }) => {
      met[day] = depth;
    });
    const levels = dips.filter(({ says }) => says === 'level');
    expect(logLikelihoodOf(seenFrom(0, levels), met, 0.1)).toBeCloseTo(last, 12);
    for (const end of [5, 11, 40, 60, 400]) {
      const log = follower.follow(model, end);
      expect(log).toBeLessThanOrEqual(last);
      last = log;
    }
    expect(last).toBe(log(dips, 0.1));
  });

  test('a level said again within two weeks tells nothing more', () => {
    const dips = [level(10, 1.1), level(80, 0.9)];
    expect(log([dips[0], level(12, 1.1), dips[1], level(81, 0.95)], 0.1)).toBe(log(dips, 0.1));
  });

  test('of thousands few hundred are kept, the first and the last year among them', () => {
    const many = Array.from({ length: 9000 }, (_, i) => level(i, 1));
    const { at } = seenFrom(0, many);
    expect(at.length).toBeLessThanOrEqual(401);
    expect(at.length).toBeGreaterThan(300);
    expect(at[0]).toBe(0);
    expect(at[at.length - 1]).toBeGreaterThan(9000 - 30);
  });

  test('a bound is half likely at the model, nearly sure on its side, and follows the miss of a level just before', () => {
    const bound = (depth: number, says: Dip['says'], before: Dip[] = []) =>
      Math.exp(
        log([...before, { day: 20, depth, says, error: 0 }], 0.1) -
          (before.length > 0 ? log(before, 0.1) : 0),
      );
    expect(bound(1, 'below')).toBeCloseTo(0.5, 10);
    expect(bound(0.7, 'below')).toBeGreaterThan(0.99);
    expect(bound(1.3, 'above')).toBeGreaterThan(0.99);
    expect(bound(0.7, 'above')).toBeLessThan(0.01);
    expect(bound(1.1, 'below', [level(19, 1.2)])).toBeGreaterThan(0.99);
  });
});

test('colours make a high that does not come as near unlikely, and say nothing against one that comes nearer', () => {
  const year = (high: number) =>
    Float64Array.from({ length: 1500 }, (_, d) => (d % 365 === 100 ? high : 1.5));
  const log = (high: number) => logLikelihoodOfColour({ depth: 0.3, spread: 0.2 }, year(high));
  expect(log(0.3)).toBeCloseTo(Math.log(0.5), 10);
  expect(log(0.1)).toBeCloseTo(Math.log(0.8413), 3);
  expect(log(-0.5)).toBeGreaterThan(-1e-4);
  expect(log(0.7)).toBeCloseTo(Math.log(0.02275), 3);
  expect(log(3)).toBeCloseTo(Math.log(0.01), 10);
});
