import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

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
