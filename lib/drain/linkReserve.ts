/** What a link of a drain can take over what it must. */

import { formula } from '../formula/index.js';

/** Fall of a pipe that is dug level, and the steepest that counts, m/m. */
const FALL_RANGE: [number, number] = [0.0005, 0.2];
/** What counts as no inflow, m³/s. */
const LEAST_INFLOW = 1e-9;

/** Fall that there is. */
export const fallThere = formula({
  title: 'Fall from the underside of the bed to the outlet',
  symbol: 'Δz',
  unit: 'm',
  expression: 'f - t - o',
  parameters: {
    f: { meaning: "level of the liner's lowest point", unit: 'm', min: -10, max: 10 },
    t: { meaning: 'thickness of the bed', unit: 'm', min: 0, max: 1 },
    o: { meaning: 'level of the outlet', unit: 'm', min: -20, max: 10 },
  },
  compute: (f: number, t: number, o: number) => f - t - o,
  validity: 'below 0 the outlet lies higher than the bed',
  source: 'levelling',
});

/** Fall of the run. */
export const slopeThere = formula({
  title: 'Fall of the run by its length',
  symbol: 'S',
  unit: 'm/m',
  expression: 'min(max(z/L, 0.0005), 0.2)',
  parameters: {
    z: { meaning: 'fall that there is', unit: 'm', min: -10, max: 20 },
    L: { meaning: 'length of the run', unit: 'm', min: 0.1, max: 500 },
  },
  compute: (z: number, L: number) => Math.min(Math.max(z / L, FALL_RANGE[0]), FALL_RANGE[1]),
  validity: 'a pipe that is dug level still runs; the steepest that counts is 20 %',
  source: 'levelling; our choice for the ends',
});

/** Capacity of the bed over what comes. */
export const bedReserve = formula({
  title: 'What the bed can bring to its pipes over what comes',
  symbol: 'n',
  unit: '-',
  expression: '(a/s)^2',
  parameters: {
    a: { meaning: 'spacing of pipes at which the head limit is just kept', unit: 'm', min: 0, max: 1e5 },
    s: { meaning: 'spacing of the pipes', unit: 'm', min: 0.1, max: 100 },
  },
  compute: (a: number, s: number) => (a / s) ** 2,
  validity: 'the spacing goes with the root of the inflow',
  source: 'level flow in the bed',
});

/** Fall there is over what is needed. */
export const fallReserve = formula({
  title: 'Fall that there is over what the run needs',
  symbol: 'n',
  unit: '-',
  expression: 'z/max(n, 0.01)',
  parameters: {
    z: { meaning: 'fall that there is', unit: 'm', min: -10, max: 20 },
    n: { meaning: 'fall that the run needs', unit: 'm', min: 0, max: 10 },
  },
  compute: (z: number, n: number) => z / Math.max(n, 0.01),
  validity: '1 and more serves',
  source: 'definition',
});

/** Height of the floor over the receiver in flood, by the head that the bed keeps. */
export const floodReserve = formula({
  title: 'Height of the floor over the flood, over the head that the bed keeps',
  symbol: 'n',
  unit: '-',
  expression: 'max((f - r)/d, 0)',
  parameters: {
    f: { meaning: "level of the liner's lowest point", unit: 'm', min: -10, max: 10 },
    r: { meaning: 'highest water of the receiver', unit: 'm', min: -20, max: 10 },
    d: { meaning: 'head lost in the bed', unit: 'm', min: 0.001, max: 1 },
  },
  compute: (f: number, r: number, d: number) => Math.max((f - r) / d, 0),
  validity: '1 and more serves',
  source: 'definition',
});

/** Water that the bed takes up. */
export const bedHolds = formula({
  title: 'Water that the bed takes up',
  symbol: 'V',
  unit: 'm³',
  expression: 'A*t*n',
  parameters: {
    A: { meaning: 'area of the floor', unit: 'm²', min: 0, max: 1e4 },
    t: { meaning: 'thickness of the bed', unit: 'm', min: 0, max: 1 },
    n: { meaning: 'voids', unit: '-', min: 0, max: 1 },
  },
  compute: (A: number, t: number, n: number) => A * t * n,
  validity: 'a bed drained before',
  source: 'balance of volumes',
});

/** Capacity over what must go through. */
export const timesOver = formula({
  title: 'What it can take over what it must',
  symbol: 'n',
  unit: '-',
  expression: 'Q/max(q, 1e-9)',
  parameters: {
    Q: { meaning: 'flow that it can take', unit: 'm³/s', min: 0, max: 10 },
    q: { meaning: 'flow that it must take', unit: 'm³/s', min: 0, max: 10 },
  },
  compute: (Q: number, q: number) => Q / Math.max(q, LEAST_INFLOW),
  validity: '1 and more serves',
  source: 'definition',
});
