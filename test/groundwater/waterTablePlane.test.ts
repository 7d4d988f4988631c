import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { waterTablePlane } from '../../lib/groundwater/index.js';
import { latinNormals } from '../../lib/sampling/index.js';

const PLACES = [
  [0, 0],
  [20, 3],
  [8, 15],
  [15, 12],
];
const heads = (a: number, b: number, c: number, n = 4) =>
  PLACES.slice(0, n).map(([x, y]) => ({ x, y, head: a * x + b * y + c }));
const slope = fc.double({ min: -0.1, max: 0.1, noNaN: true });

describe('plane through holes', () => {
  test('gives back any plane, wherever the axes start', () => {
    fc.assert(
      fc.property(slope, slope, fc.double({ min: -500, max: 500, noNaN: true }), (a, b, shift) => {
        const moved = heads(a, b, 10).map((h) => ({ ...h, x: h.x + shift, y: h.y - shift }));
        const plane = waterTablePlane([moved], 0.01)!;
        expect(plane.slopeX).toBeCloseTo(a, 9);
        expect(plane.slopeY).toBeCloseTo(b, 9);
        for (const r of plane.residuals[0]) expect(Math.abs(r)).toBeLessThan(1e-9);
        expect(plane.headAt(30 + shift, -10 - shift).head).toBeCloseTo(30 * a - 10 * b + 10, 8);
      }),
      { seed: 1 },
    );
  });

  test('no plane where the heads rise more than 1 in 2, and none to tell of a spot far beyond the holes', () => {
    expect(waterTablePlane([heads(0.3, 0.45, 10)], 0.01)).toBeUndefined();
    const plane = waterTablePlane([heads(0.3, 0.3, 10)], 0.01)!;
    // The holes lie 10.75, 7.5 on the middle, the first 13.1 m from it.
    const away = Math.hypot(10.75, 7.5);
    expect(plane.reaches(10.75 + 9.99 * away, 7.5)).toBe(true);
    expect(plane.reaches(10.75, 7.5 - 10.01 * away)).toBe(false);
  });

  test('rounds at different heights share one slope; two holes of a round help', () => {
    const wet = heads(0.02, -0.01, 10, 3);
    const dry = heads(0.02, -0.01, 9.2).slice(2);
    const plane = waterTablePlane([wet, dry], 0.01)!;
    expect(plane.slopeX).toBeCloseTo(0.02, 12);
    expect(plane.slopeY).toBeCloseTo(-0.01, 12);
    expect(plane.headAt(0, 0, 0).head).toBeCloseTo(10, 12);
    expect(plane.headAt(0, 0, 1).head).toBeCloseTo(9.2, 12);
  });

  test('a misfit is not hidden: it becomes the error', () => {
    const bent = heads(0.02, -0.01, 10);
    bent[3].head += 0.3;
    const plane = waterTablePlane([bent], 0.01)!;
    expect(Math.max(...plane.residuals[0].map(Math.abs))).toBeGreaterThan(0.05);
    const rss = plane.residuals[0].reduce((s, r) => s + r * r, 0);
    expect(plane.error).toBeCloseTo(Math.sqrt(rss), 12);
  });

  test('a level table flows nowhere, and a faint slope in no known direction', () => {
    const flat = waterTablePlane([heads(0, 0, 10)], 0.01)!;
    expect(flat.azimuth).toBeUndefined();
    expect(flat.azimuthSpread).toBe(180);
    const faint = waterTablePlane([heads(1e-5, 0, 10)], 0.01)!;
    expect(faint.azimuthSpread).toBeGreaterThan(60);
    expect(waterTablePlane([heads(0.1, 0, 10)], 0.01)!.azimuthSpread).toBeLessThan(6);
  });

  test('holes in a row or too few span no plane', () => {
    const row = [0, 5, 10, 20].map((x) => ({ x, y: 0.05 * x + 1, head: 10 }));
    expect(waterTablePlane([row], 0.01)).toBeUndefined();
    expect(waterTablePlane([heads(0, 0, 10, 2)], 0.01)).toBeUndefined();
    expect(waterTablePlane([], 0.01)).toBeUndefined();
    expect(() => waterTablePlane([heads(0, 0, 10), []], 0.01)).toThrow('missing heads');
  });

  test('the error grows beyond the holes', () => {
    const plane = waterTablePlane([heads(0.02, 0, 10)], 0.01)!;
    const spreads = [10, 30, 60, 120].map((x) => plane.headAt(x, 8).spread);
    for (let i = 1; i < spreads.length; i++) expect(spreads[i]).toBeGreaterThan(spreads[i - 1]);
    expect(spreads[0]).toBeLessThan(0.01);
  });

  test('the errors stated are the errors made: 4000 noisy repeats', () => {
    const n = 4000;
    const noise = latinNormals(n * 4, 1, 5);
    const truth = 0.02 * 30 - 0.01 * 5 + 10;
    const [off, slopes] = [new Float64Array(n), new Float64Array(n)];
    let stated = 0;
    let gradientSpread = 0;
    for (let i = 0; i < n; i++) {
      const seen = heads(0.02, -0.01, 10).map((h, j) => ({ ...h, head: h.head + 0.001 * noise[i * 4 + j] }));
      // A larger error than the noise keeps the misfit out of it.
      const plane = waterTablePlane([seen], 0.004)!;
      const at = plane.headAt(30, 5);
      off[i] = at.head - truth;
      slopes[i] = plane.gradient - Math.hypot(0.02, 0.01);
      stated += at.spread / plane.error / n;
      gradientSpread += plane.gradientSpread / plane.error / n;
    }
    const rms = (v: Float64Array) => Math.sqrt(v.reduce((s, e) => s + e * e, 0) / n);
    expect(rms(off) / (0.001 * stated)).toBeGreaterThan(0.95);
    expect(rms(off) / (0.001 * stated)).toBeLessThan(1.05);
    expect(rms(slopes) / (0.001 * gradientSpread)).toBeGreaterThan(0.95);
    expect(rms(slopes) / (0.001 * gradientSpread)).toBeLessThan(1.05);
  });
});
