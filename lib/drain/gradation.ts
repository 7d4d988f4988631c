import { formula, method, type Use, unrecorded } from '../formula/index.js';

export const gradationMethod = method({
  title: 'Grain sizes of a soil or a stone',
  what: 'Grain size of which a share is finer, and share finer than a size, along a curve of known points.',
  assumptions: [
    'straight between points on a paper with a logarithmic axis of size',
    'a texture becomes a curve by the bounds of clay, silt and sand (0.002, 0.05, 2 mm); nothing finer than 0.0002 mm',
    'regraded on the 4.75 mm sieve: what is coarser is left out of the base soil',
  ],
  source: 'sieve practice; USDA bounds; regrading as in NRCS NEH 633 chapter 26, from memory',
});

/** A point of a grain-size curve: size in m, share finer 0–1. */
export type CurvePoint = readonly [size: number, finer: number];

/** Grain size between two points of a curve. */
export const sizeBetween = formula({
  title: 'Grain size of which a share is finer, between two points of the curve',
  symbol: 'd',
  unit: 'm',
  expression: 'a*(b/a)^((p - f)/(g - f))',
  parameters: {
    a: { meaning: 'size at the point below', unit: 'm', min: 1e-7, max: 0.01 },
    b: { meaning: 'size at the point above', unit: 'm', min: 0.011, max: 0.2 },
    p: { meaning: 'share finer that is asked for', unit: '-', min: 0, max: 1 },
    f: { meaning: 'share finer at the point below', unit: '-', min: 0, max: 0.49 },
    g: { meaning: 'share finer at the point above', unit: '-', min: 0.5, max: 1 },
  },
  compute: (a: number, b: number, p: number, f: number, g: number) => a * (b / a) ** ((p - f) / (g - f)),
  validity: 'straight on paper with a logarithmic axis of size',
  source: 'sieve practice',
});

/**
 * Size of which a share is finer, m; the curve's end where it does not reach that far.
 * @param curve - sizes in m and shares finer, 0–1, rising
 * @param share - 0–1
 * @param use - what evaluates the formula, for a record
 * @returns m
 */
export function sizeFiner(curve: readonly CurvePoint[], share: number, use: Use = unrecorded): number {
  const at = curve.findIndex(([, finer]) => finer >= share);
  if (at < 0) return curve[curve.length - 1][0];
  if (at === 0) return curve[0][0];
  const [[s0, f0], [s1, f1]] = [curve[at - 1], curve[at]];
  return use(sizeBetween, s0, s1, share, f0, f1);
}

/**
 * Share finer than a size.
 * @param curve - sizes in m and shares finer, 0–1, rising
 * @param size - m
 * @returns 0–1
 */
export function finerThan(curve: readonly CurvePoint[], size: number): number {
  const at = curve.findIndex(([s]) => s >= size);
  if (at < 0) return 1;
  if (at === 0) return size < curve[0][0] ? 0 : curve[0][1];
  const [[s0, f0], [s1, f1]] = [curve[at - 1], curve[at]];
  return f0 + ((f1 - f0) * Math.log(size / s0)) / Math.log(s1 / s0);
}

/** Sieve No. 4, m: what is coarser is left out of a base soil. */
const COARSE = 4.75e-3;

/**
 * Curve of what passes the 4.75 mm sieve, counted as the whole; a curve that ends below it as it is.
 * @param curve - sizes in m and shares finer, 0–1, rising
 * @returns sizes in m, with the shares counted anew
 */
export function regraded(curve: readonly CurvePoint[]): readonly CurvePoint[] {
  const passing = finerThan(curve, COARSE);
  if (passing >= 1 || passing <= 0) return curve;
  const kept = curve
    .filter(([size]) => size < COARSE)
    .map(([size, finer]) => [size, finer / passing] as const);
  return [...kept, [COARSE, 1]];
}

/**
 * Grain-size curve of the fine earth of a soil, without stones, between the limits of clay, silt and sand of the USDA.
 * @param sand - mass fraction, 0–1
 * @param clay - mass fraction, 0–1; sand and clay at most 1 together
 * @returns sizes in m and shares finer, 0–1, rising
 */
export function soilCurve(sand: number, clay: number): CurvePoint[] {
  return [
    [2e-7, 0],
    [2e-6, clay],
    [5e-5, 1 - sand],
    [2e-3, 1],
  ];
}

/**
 * Grain-size curve from sieves.
 * @param rows - size of the sieve, mm, and percent passing, 0–100, in any order
 * @returns sizes in m and shares finer, 0–1, rising
 */
export function sieveCurve(rows: readonly (readonly [mm: number, percent: number])[]): CurvePoint[] {
  return rows.map(([mm, percent]) => [mm / 1000, percent / 100] as const).sort((a, b) => a[0] - b[0]);
}
