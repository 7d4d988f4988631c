import { formula, LEVEL_RESOLUTION, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const level = (meaning: string) => ({ meaning, unit: 'm', min: -10, max: 10 });

/** Head that holds the liner down, the same at every depth below the pond's surface. */
export const netHead = formula({
  title: 'Net head on the liner',
  symbol: 'N',
  unit: 'm',
  expression: 'p - h',
  parameters: { p: level('pond level'), h: level('head outside') },
  compute: (p: number, h: number) => p - h,
  validity: "below the pond's surface; the liner's own weight (about 1.4 mm of water) is not counted",
  source: 'hydrostatics',
});

/** Height of a water over a level, where a tape can tell them apart. */
export const headOver = formula({
  title: 'Height of a water over a level',
  symbol: 'd',
  unit: 'm',
  expression: 'h - z <= 0.0005 ? 0 : h - z',
  parameters: { h: level('level of the water'), z: level('level that it is counted from') },
  compute: (h: number, z: number) => (h - z <= LEVEL_RESOLUTION ? 0 : h - z),
  validity: 'nothing below half a millimetre, to which levels are measured',
  source: 'hydrostatics',
});

/** Depth of a water over a level, no less than is counted. */
export const depthOver = formula({
  title: 'Depth of a water over a level, no less than is counted',
  symbol: 'd',
  unit: 'm',
  expression: 'max(h - z, e)',
  parameters: {
    h: level('level of the water'),
    z: level('level that it is counted from'),
    e: { meaning: 'least that is counted', unit: 'm', min: 0, max: 1 },
  },
  compute: (h: number, z: number, e: number) => Math.max(h - z, e),
  validity: 'still water',
  source: 'hydrostatics',
});

/** Level of the pond at its lowest in use. */
export const lowestUsual = formula({
  title: 'Level of the pond at its lowest of the year',
  symbol: 'p',
  unit: 'm',
  expression: 'f - d',
  parameters: {
    f: level('level of the full pond'),
    d: { meaning: 'the most that it lacks, below full', unit: 'm', min: 0, max: 10 },
  },
  compute: (f: number, d: number) => f - d,
  validity: 'as it is kept',
  source: 'levelling',
});

/** Pressure of water and of a slab in it. */
export const slabPressure = formula({
  title: 'Pressure of the water and of a slab under it',
  symbol: 'w',
  unit: 'Pa',
  expression: 'u + 9810*b',
  parameters: {
    u: { meaning: 'pressure of the water', unit: 'Pa', min: 0, max: 2e5 },
    b: { meaning: 'head held by a slab', unit: 'm', min: 0, max: 5 },
  },
  compute: (u: number, b: number) => u + b * UNIT_WEIGHT_OF_WATER,
  validity: 'a level floor',
  source: 'statics',
});

/** What a level has over a water. */
export const spareHead = formula({
  title: 'That the water outside may rise before it lifts',
  symbol: 'm',
  unit: 'm',
  expression: 'abs(p - h) < 0.000001 ? 0 : p - h',
  parameters: { p: level('level that holds'), h: level('level of the water outside') },
  compute: (p: number, h: number) => (Math.abs(p - h) < 1e-6 ? 0 : p - h),
  validity: 'below 0 it lifts; below a micrometre there is none',
  source: 'hydrostatics',
});

/** Level of a pond with the head that a slab on its liner holds. */
export const withSlab = formula({
  title: 'Level that holds, with the slab',
  symbol: 'p',
  unit: 'm',
  expression: 'l + b',
  parameters: {
    l: level('level of the pond'),
    b: { meaning: 'head held by a slab', unit: 'm', min: 0, max: 5 },
  },
  compute: (l: number, b: number) => l + b,
  validity: 'slab and facings on floor and sides',
  source: 'statics',
});

/** The higher of two waters. */
export const higherWater = formula({
  title: 'The higher of two waters',
  symbol: 'h',
  unit: 'm',
  expression: 'max(a, b)',
  parameters: { a: level('one water'), b: level('the other') },
  compute: (a: number, b: number) => Math.max(a, b),
  validity: 'of the same statistic',
  source: 'hydrostatics',
});

/** Head that holds, counted from the floor: the water it may rise to before it lifts. */
export const holdingHead = formula({
  title: 'Head that holds, over a level',
  symbol: 'd',
  unit: 'm',
  expression: 'max(h + m - z, 0)',
  parameters: {
    h: level('level of the water outside'),
    m: { meaning: 'that it may rise before the liner lifts', unit: 'm', min: -10, max: 10 },
    z: level('level that it is counted from'),
  },
  compute: (h: number, m: number, z: number) => Math.max(h + m - z, 0),
  validity: 'water over the liner, and the head that a weight on it holds',
  source: 'hydrostatics',
});

/** Pressure of a head of water. */
export const waterPressure = formula({
  title: 'Pressure of a head of water',
  symbol: 'u',
  unit: 'Pa',
  expression: '9810*h',
  parameters: { h: { meaning: 'head', unit: 'm', min: -20, max: 20 } },
  compute: (h: number) => UNIT_WEIGHT_OF_WATER * h,
  validity: 'still fresh water',
  source: 'hydrostatics; 9.81 kN/m³ (62.4 lb/ft³)',
});

/** The head that makes a pressure. */
export const headOfPressure = formula({
  title: 'Head of a pressure of water',
  symbol: 'h',
  unit: 'm',
  expression: 'u/9810',
  parameters: { u: { meaning: 'pressure', unit: 'Pa', min: -2e5, max: 2e5 } },
  compute: (u: number) => u / UNIT_WEIGHT_OF_WATER,
  validity: 'still fresh water',
  source: 'hydrostatics; 9.81 kN/m³ (62.4 lb/ft³)',
});

/** Pressure that presses a point of the liner against the ground; negative lifts it. */
export const netPressure = formula({
  title: 'Net pressure on a point of the liner',
  symbol: 'Δu',
  unit: 'Pa',
  expression: '9810*(max(p - z, 0) - max(h - z, 0))',
  parameters: { p: level('pond level'), h: level('head outside'), z: level('level of the point') },
  compute: (p: number, h: number, z: number) =>
    UNIT_WEIGHT_OF_WATER * (Math.max(p - z, 0) - Math.max(h - z, 0)),
  validity: 'still water on both sides; tension in the liner and its weight are not counted on',
  source: 'hydrostatics: what stands above the pond is dry inside, what stands above the head is dry outside',
});
