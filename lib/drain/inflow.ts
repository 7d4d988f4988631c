import { formula, GRAVITY, type Use, unrecorded } from '../formula/index.js';

/** Run-off by the rational method. */
export const rationalRunoff = formula({
  title: 'Run-off of a storm (rational method)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'C*i*A',
  parameters: {
    C: { meaning: 'run-off coefficient', unit: '-', min: 0, max: 1 },
    i: { meaning: 'rain intensity', unit: 'm/s', min: 0, max: 1e-4 },
    A: { meaning: 'area', unit: 'm²', min: 0, max: 200000 },
  },
  compute: (C: number, i: number, A: number) => C * i * A,
  validity: 'small areas, rain lasting at least as long as the water takes to arrive',
  source: 'rational method; problem 079 of a public engineering practice site',
});

/** Rain of a storm by the second. */
export const rainIntensity = formula({
  title: 'Rain intensity of the storm',
  symbol: 'i',
  unit: 'm/s',
  expression: 'r/t',
  parameters: {
    r: { meaning: 'rain of the storm', unit: 'm', min: 0, max: 1 },
    t: { meaning: 'time in which it falls', unit: 's', min: 60, max: 1e6 },
  },
  compute: (r: number, t: number) => r / t,
  validity: 'rain as even as its mean',
  source: 'definition',
});

/** A storm on a pond that a roof is led into, as rain on the pond alone. */
export const rainWithRoof = formula({
  title: 'Rain of the storm on a pond that a roof is led into',
  symbol: 'r',
  unit: 'm',
  expression: 'r*(A + C*R)/A',
  parameters: {
    r: { meaning: 'rain of the storm', unit: 'm', min: 0, max: 1 },
    A: { meaning: 'area of the pond at the rim', unit: 'm²', min: 0.1, max: 1e4 },
    C: { meaning: 'share of the rain that the roof sheds', unit: '-', min: 0, max: 1 },
    R: { meaning: 'area of the roof', unit: 'm²', min: 0, max: 1e4 },
  },
  compute: (r: number, A: number, C: number, R: number) => (r * (A + C * R)) / A,
  validity: 'the downpipe carries the storm',
  source: 'balance of volumes',
});

/** What runs over the brim in a storm. */
export const overBrim = formula({
  title: 'What runs over the brim in the storm',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'max(r - d, 0)/t*A',
  parameters: {
    r: { meaning: 'rain of the storm, with what a roof led in brings', unit: 'm', min: 0, max: 1e5 },
    d: { meaning: 'what the pond lacks as the storm begins', unit: 'm', min: 0, max: 10 },
    t: { meaning: 'time in which it falls', unit: 's', min: 60, max: 1e6 },
    A: { meaning: 'area of the pond at the rim', unit: 'm²', min: 0, max: 1e4 },
  },
  compute: (r: number, d: number, t: number, A: number) => (Math.max(r - d, 0) / t) * A,
  validity: 'the pond holds back what it lacks and no more',
  source: 'balance of volumes',
});

/** What goes down through the ring. */
export const throughRing = formula({
  title: 'What goes down through the ring to the drain',
  symbol: 'q',
  unit: 'm³/s',
  expression: 'Q*s',
  parameters: {
    Q: { meaning: 'what comes over ground to the ring', unit: 'm³/s', min: 0, max: 10 },
    s: { meaning: 'share that the ring lets through', unit: '-', min: 0, max: 1 },
  },
  compute: (Q: number, s: number) => Q * s,
  validity: 'all of it without a cap of clay, a twentieth through one, none where there is no ring',
  source: 'common practice for the cap',
});

const flow = (meaning: string) => ({ meaning, unit: 'm³/s', min: 0, max: 10 });

/** Rain on the ring and what runs over the brim. */
export const ringInStorm = formula({
  title: 'Storm water of the ring: its own rain and what runs over the brim',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'r + o',
  parameters: { r: flow('rain on the ring'), o: flow('what runs over the brim') },
  compute: (r: number, o: number) => r + o,
  validity: 'while the storm lasts',
  source: 'sum of what is put in',
});

/** What rises under the floor. */
export const risingInflow = formula({
  title: 'Inflow that rises under the floor',
  symbol: 'b',
  unit: 'm³/s',
  expression: 'c + l',
  parameters: { c: flow('from the clay'), l: flow('through a hole in the liner') },
  compute: (c: number, l: number) => c + l,
  validity: 'taken as even',
  source: 'sum of what is put in',
});

/** What comes down the sides. */
export const sideInflow = formula({
  title: 'Inflow that comes down the sides',
  symbol: 's',
  unit: 'm³/s',
  expression: 'Q - b',
  parameters: { Q: flow('inflow in all'), b: flow('what rises under the floor') },
  compute: (Q: number, b: number) => Q - b,
  validity: 'all that comes over ground',
  source: 'balance of volumes',
});

/** All that a drain must take. */
export const allInflow = formula({
  title: 'What the drain must take in all',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'c + r + o + u + l',
  parameters: {
    c: flow('from the clay'),
    r: flow('storm water of the ring'),
    o: flow('from the roof'),
    u: flow('run-off from uphill'),
    l: flow('through a hole in the liner'),
  },
  compute: (c: number, r: number, o: number, u: number, l: number) => c + r + o + u + l,
  validity: 'all sources at once',
  source: 'sum of what is put in',
});

/** All that comes while the liner is sound. */
export const soundInflow = formula({
  title: 'What comes in all while the liner is sound',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'c + r + o + u + b',
  parameters: {
    c: flow('from the clay'),
    r: flow('rain on the ring'),
    o: flow('from the roof'),
    u: flow('run-off from uphill'),
    b: flow('what runs over the brim'),
  },
  compute: (c: number, r: number, o: number, u: number, b: number) => c + r + o + u + b,
  validity: 'all sources at the same end of what is likely',
  source: 'sum of what is put in',
});

/** What comes still, once the greatest source is kept away. */
export const inflowLeft = formula({
  title: 'What comes still, once the greatest source is kept away',
  symbol: 'L',
  unit: 'm³/s',
  expression: 'Q - s + s*p',
  parameters: {
    Q: flow('what comes in all'),
    s: flow('the greatest source'),
    p: { meaning: 'share of it that still passes', unit: '-', min: 0, max: 1 },
  },
  compute: (Q: number, s: number, p: number) => Q - s + s * p,
  validity: 'the measure named is built and kept',
  source: 'balance of volumes',
});

/** Flow through openings under a head: a hole in the liner, the perforations of a pipe. */
export const orificeFlow = formula({
  title: 'Flow through openings under a head (orifice)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: '0.6*A*sqrt(2*9.80665*h)',
  parameters: {
    A: { meaning: 'open area', unit: 'm²', min: 0, max: 1 },
    h: { meaning: 'head lost through it', unit: 'm', min: 0, max: 5 },
  },
  compute: (A: number, h: number) => 0.6 * A * Math.sqrt(2 * GRAVITY * h),
  validity: 'sharp-edged openings into open stone; a hole over clay leaks far less',
  source: "orifice equation, Torricelli's law with a coefficient of 0.6",
});

/** Inflow to a drain by source, m³/s. */
export interface DrainInflow {
  clay: number;
  ring_storm: number;
  roof: number;
  uphill: number;
  leak: number;
}

/**
 * Sum over the sources.
 * @param inflow - by source, m³/s
 * @param use - what evaluates the formula, for a record
 * @returns m³/s
 */
export function totalOf(
  { clay, ring_storm, roof, uphill, leak }: DrainInflow,
  use: Use = unrecorded,
): number {
  return use(allInflow, clay, ring_storm, roof, uphill, leak);
}
