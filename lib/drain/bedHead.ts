import { method } from '../formula/index.js';

export const bedHeadMethod = method({
  title: 'How high the water stands in a drainage bed between its pipes',
  what:
    'Level flow in a bed that is full only up to its water (Dupuit), its layers one on another (Girinsky): with G the moment ' +
    'of the conductivity about the water table, G(h) = G(h₀) + q L²/2, h₀ at the pipe. Above its top the bed is under pressure.',
  assumptions: [
    'water that rises evenly, or half as much that comes in at the far end',
    'underside level and tight, no capillary fringe',
    'within 0.015 m of the numerical section as long as the water stays in the bed',
  ],
  source: 'Dupuit 1863, Girinsky 1946 (from memory); agrees with the numerical section',
});

/** A layer of a bed. */
export interface BedStratum {
  /** m */
  thickness: number;
  /** m/s */
  conductivity: number;
}

/**
 * Height of the water in a bed at a distance from its pipe, see {@link bedHeadMethod}.
 * @param strata - from the liner down
 * @param atPipe - height of the water at the pipe above the underside of the bed, m, 0 and more
 * @param inflow - per area of floor, m/s, 0 and more
 * @param reach - distance from the pipe, m, 0 and more
 * @returns m above the underside of the bed
 */
export function bedHead(strata: BedStratum[], atPipe: number, inflow: number, reach: number): number {
  return heightOfPotential(strata, potential(strata, atPipe) + (inflow * reach * reach) / 2);
}

/**
 * Farthest distance from a pipe at which the water keeps below a height.
 * @param strata - from the liner down
 * @param atPipe - height of the water at the pipe above the underside of the bed, m, 0 and more
 * @param inflow - per area of floor, m/s, 0 and more
 * @param highest - height allowed above the underside, m
 * @returns m; Infinity where nothing flows in, 0 where the water stands higher at the pipe
 */
export function bedReach(strata: BedStratum[], atPipe: number, inflow: number, highest: number): number {
  const spare = Math.max(potential(strata, highest) - potential(strata, atPipe), 0);
  return inflow > 0 ? Math.sqrt((2 * spare) / inflow) : Number.POSITIVE_INFINITY;
}

/** G(h) = ∫ K (h − z) dz up to the water, m³/s. */
function potential(strata: BedStratum[], h: number): number {
  let [bottom, sum] = [0, 0];
  for (const { thickness, conductivity } of [...strata].reverse()) {
    const wet = Math.min(Math.max(h - bottom, 0), thickness);
    sum += conductivity * wet * (h - bottom - wet / 2);
    bottom += thickness;
  }
  return sum;
}

/** The height that has a potential: from layer to layer a quadratic equation, above the bed a straight line. */
function heightOfPotential(strata: BedStratum[], wanted: number): number {
  let [bottom, reached, transmissivity] = [0, 0, 0];
  for (const { thickness, conductivity } of [...strata].reverse()) {
    const next = reached + transmissivity * thickness + (conductivity * thickness ** 2) / 2;
    if (wanted <= next) {
      const lacks = wanted - reached;
      const root = Math.sqrt(transmissivity ** 2 + 2 * conductivity * lacks);
      return bottom + (2 * lacks) / (transmissivity + root || 1);
    }
    [bottom, reached, transmissivity] = [bottom + thickness, next, transmissivity + conductivity * thickness];
  }
  return bottom + (wanted - reached) / transmissivity;
}
