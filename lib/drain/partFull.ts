import { formula, method } from '../formula/index.js';
import { manningFull } from './pipe.js';

const y = { meaning: 'depth of the water over the diameter', unit: '-', min: 0.02, max: 0.98 };

/** Wet area of a pipe running part full, over the square of its diameter. */
export const partFullArea = formula({
  title: 'Wet area of a pipe running part full, over D²',
  symbol: 'A/D²',
  unit: '-',
  expression: '(2*acos(1 - 2*y) - sin(2*acos(1 - 2*y)))/8',
  parameters: { y },
  compute: (y: number) => {
    const theta = 2 * Math.acos(1 - 2 * y);
    return (theta - Math.sin(theta)) / 8;
  },
  validity: 'round pipe',
  source: 'geometry; table after Chow 1959, read in an online copy',
});

/** Hydraulic radius of a pipe running part full, over its diameter. */
export const partFullRadius = formula({
  title: 'Hydraulic radius of a pipe running part full, over D',
  symbol: 'R/D',
  unit: '-',
  expression: '(1 - sin(2*acos(1 - 2*y))/(2*acos(1 - 2*y)))/4',
  parameters: { y },
  compute: (y: number) => {
    const theta = 2 * Math.acos(1 - 2 * y);
    return (1 - Math.sin(theta) / theta) / 4;
  },
  validity: 'round pipe',
  source: partFullArea.source,
});

export const flowDepth = method({
  title: 'Depth of flow in a drain pipe',
  what: 'Depth and velocity at which a pipe carries a flow, by Manning with the same roughness at every depth.',
  assumptions: [
    'steady even flow, free at its end',
    'searched up to 0.938 of the diameter, where a pipe carries most, 7.6 % more than full; above that it counts as full',
  ],
  source: 'Manning; hydraulic elements of the circle',
});

/** Depth over diameter at which a round pipe carries most. */
const MOST = 0.938;

/**
 * Flow at a depth over that of the full pipe, by Manning.
 * @param y - depth over diameter, above 0 to 1
 * @returns 0 to about 1.08
 */
export function partFullFlow(y: number): number {
  return (partFullArea.compute(y) / (Math.PI / 4)) * (4 * partFullRadius.compute(y)) ** (2 / 3);
}

/**
 * Depth and velocity of a flow in a pipe, see {@link flowDepth}.
 * @param flow - m³/s, 0 and more
 * @param diameter - inside, m
 * @param fall - m/m, above 0
 * @param roughness - Manning's n, s/m^(1/3)
 * @returns depth over diameter and velocity in m/s; a depth of 1 where the pipe cannot carry it
 */
export function pipeFlow(
  flow: number,
  diameter: number,
  fall: number,
  roughness: number,
): { depth: number; velocity: number } {
  const full = manningFull.compute(diameter, fall, roughness);
  if (flow >= full * partFullFlow(MOST))
    return { depth: 1, velocity: flow / ((Math.PI / 4) * diameter ** 2) };
  let low = 1e-4;
  let high = MOST;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (full * partFullFlow(middle) < flow) low = middle;
    else high = middle;
  }
  const depth = (low + high) / 2;
  return { depth, velocity: flow > 0 ? flow / (partFullArea.compute(depth) * diameter ** 2) : 0 };
}
