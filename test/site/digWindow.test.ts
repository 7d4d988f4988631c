import { describe, expect, test } from 'vitest';
import { digRadius, digWindow } from '../../lib/site/index.js';

const BOX = { shape: 'box' as const, length: 4, width: 3, sideSlope: 0 };

/** Two samples of ten years: water at −0.4 m in winter months, at −1.2 m in summer ones, wetter by year, and higher uphill. */
function water(step = 0.02, rise = 0) {
  const [samples, years] = [2, 10];
  const month = new Float32Array(samples * years * 12);
  for (let i = 0; i < month.length; i++) {
    const m = i % 12;
    const year = Math.floor(i / 12) % years;
    month[i] = (m < 3 || m > 9 ? -0.4 : -1.2) + step * year;
  }
  const none = new Float32Array(month.length);
  const clayHigh = { month: month.map((level) => level + rise), emptied: none };
  return {
    samples,
    years,
    clayLow: { month, emptied: none },
    clayHigh,
    permeability: Float64Array.of(1e-8, 1e-6),
  };
}

describe('digging window', () => {
  const w = digWindow(water(), BOX, [0.31, 0.5, 1.11, 1.5]);
  test('counts the years in which the water stays below the floor', () => {
    // Winter water −0.40 … −0.22 m: below −0.31 m in five years of ten (−0.40, −0.38, …, −0.32).
    expect(w.dry[0][0]).toBeCloseTo(0.5, 6);
    expect(w.dry[0][6]).toBe(1);
    expect(w.dry[1][0]).toBe(0);
    // Summer water −1.20 … −1.02 m: below −1.11 m in five years of ten.
    expect(w.dry[2][6]).toBeCloseTo(0.5, 6);
    expect(w.dry[3]).toEqual(Array(12).fill(0));
  });

  test('names the months at 50, 80 and 95 %', () => {
    expect(w.months.map((m) => m.chance)).toEqual([0.5, 0.8, 0.95]);
    expect(w.months[0].at[0]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(w.months[1].at[0]).toEqual([4, 5, 6, 7, 8, 9, 10]);
    expect(w.months[2].at[1]).toEqual([4, 5, 6, 7, 8, 9, 10]);
    expect(w.months[0].at[3]).toEqual([]);
  });

  test('pumps 4 K r s at the head of the month', () => {
    const r = digRadius(BOX, 1.5);
    expect(r).toBeCloseTo(Math.sqrt(12 / Math.PI), 12);
    const one = digWindow(water(0), BOX, [1.5]);
    // One sample at 1e-8 and one at 1e-6 m/s: the middle of two, and the larger.
    expect(one.pumped.p50[0][0]).toBeCloseTo((4 * r * 1.1 * (1e-8 + 1e-6)) / 2, 12);
    expect(one.pumped.p90[0][0]).toBeCloseTo(4 * r * 1.1 * 1e-6, 12);
    expect(one.pumped.p50[0][6]).toBeLessThan(one.pumped.p50[0][0]);
    expect(w.pumped.p50[1].slice(4, 9)).toEqual([0, 0, 0, 0, 0]);
  });

  test('on a slope is dry where it lies above the water uphill, and is pumped at the mean of both sides', () => {
    // Winter water uphill −0.20 … −0.02 m, at both sides together −0.30 … −0.12 m.
    expect(digWindow(water(0.02, 0.2), BOX, [0.11]).dry[0][0]).toBeCloseTo(0.5, 6);
    const r = digRadius(BOX, 1.5);
    const sloped = digWindow(water(0, 0.2), BOX, [1.5]);
    expect(sloped.pumped.p90[0][0]).toBeCloseTo(4 * r * 1.2 * 1e-6, 12);
  });

  test('is drier and needs less pumping the shallower it is dug', () => {
    for (let d = 1; d < w.depths.length; d++)
      for (let m = 0; m < 12; m++) {
        expect(w.dry[d][m]).toBeLessThanOrEqual(w.dry[d - 1][m]);
        expect(w.pumped.p90[d][m]).toBeGreaterThanOrEqual(w.pumped.p90[d - 1][m]);
      }
  });

  test('refuses a year with a month missing', () => {
    const short = water();
    short.clayLow.month[5] = Number.NEGATIVE_INFINITY;
    expect(() => digWindow(short, BOX, [1])).toThrow('month 6');
  });
});
