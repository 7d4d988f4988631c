import { formula, method, type Use, unrecorded } from '../formula/index.js';

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
  permeability: number;
}

/**
 * Height of the water in a bed at a distance from its pipe, see {@link bedHeadMethod}.
 * @param strata - from the liner down
 * @param atPipe - height of the water at the pipe above the underside of the bed, m, 0 and more
 * @param inflow - per area of floor, m/s, 0 and more
 * @param reach - distance from the pipe, m, 0 and more
 * @param use - what evaluates the formulas, for a record
 * @returns m above the underside of the bed
 */
export function bedHead(
  strata: BedStratum[],
  atPipe: number,
  inflow: number,
  reach: number,
  use: Use = unrecorded,
): number {
  const wanted = use(momentBetween, potential(strata, atPipe, use), inflow, 2 * reach);
  const height = heightOfPotential(strata, wanted);
  // The height is found from its moment; a record shows the way back.
  if (use !== unrecorded && inflow > 0) use(momentTrial, potential(strata, height, use), wanted);
  return height;
}

/** Moment of the permeability midway between two pipes. */
export const momentBetween = formula({
  title: 'Moment of the conductivity of the bed midway between its pipes',
  symbol: 'G',
  unit: 'm³/s',
  expression: 'g + q*(s/2)^2/2',
  parameters: {
    g: { meaning: 'moment at the pipe', unit: 'm³/s', min: 0, max: 10 },
    q: { meaning: 'inflow by the square metre', unit: 'm/s', min: 0, max: 1 },
    s: { meaning: 'distance of the pipes, or width of the floor', unit: 'm', min: 0, max: 200 },
  },
  compute: (g: number, q: number, s: number) => g + (q * (s / 2) ** 2) / 2,
  validity: 'water that rises evenly',
  source: 'Dupuit 1863, Girinsky 1946 (from memory)',
});

/** How near a height found by trial comes to its moment. */
export const momentTrial = formula({
  title: 'What the trial leaves of the moment, as a share: nought',
  symbol: 'δ',
  unit: '-',
  expression: 'a/b - 1',
  parameters: {
    a: { meaning: 'moment at the height tried', unit: 'm³/s', min: 0, max: 10 },
    b: { meaning: 'moment wanted', unit: 'm³/s', min: 1e-15, max: 10 },
  },
  compute: (a: number, b: number) => a / b - 1,
  validity: 'near nought',
  source: 'definition',
});

/**
 * Farthest distance from a pipe at which the water keeps below a height.
 * @param strata - from the liner down
 * @param atPipe - height of the water at the pipe above the underside of the bed, m, 0 and more
 * @param inflow - per area of floor, m/s, 0 and more
 * @param highest - height allowed above the underside, m
 * @param use - what evaluates the formulas, for a record
 * @returns m; Infinity where nothing flows in, 0 where the water stands higher at the pipe
 */
export function bedReach(
  strata: BedStratum[],
  atPipe: number,
  inflow: number,
  highest: number,
  use: Use = unrecorded,
): number {
  const [most, least] = [potential(strata, highest, use), potential(strata, atPipe, use)];
  return inflow > 0 ? use(reachInBed, most, least, inflow) : Number.POSITIVE_INFINITY;
}

/** Part of a layer in the moment of the permeability about the water table. */
export const layerPotential = formula({
  title: 'Moment of the conductivity of the bed about its water, up to a layer',
  symbol: 'G',
  unit: 'm³/s',
  expression: 'g + K*min(max(h - b, 0), t)*(h - b - min(max(h - b, 0), t)/2)',
  parameters: {
    g: { meaning: 'the same of the layers below', unit: 'm³/s', min: 0, max: 10 },
    K: { meaning: 'conductivity of the layer', unit: 'm/s', min: 0, max: 1 },
    t: { meaning: 'its thickness', unit: 'm', min: 0, max: 1 },
    b: { meaning: 'height of its underside', unit: 'm', min: 0, max: 1 },
    h: { meaning: 'height of the water over the underside of the bed', unit: 'm', min: 0, max: 1 },
  },
  compute: (g: number, K: number, t: number, b: number, h: number) => {
    const wet = Math.min(Math.max(h - b, 0), t);
    return g + K * wet * (h - b - wet / 2);
  },
  validity: 'level flow in a bed that is full only up to its water',
  source: 'Girinsky 1946 (from memory)',
});

/** Farthest way to a pipe. */
export const reachInBed = formula({
  title: 'Farthest way to a pipe at which the water stays below the height allowed',
  symbol: 'r',
  unit: 'm',
  expression: 'sqrt(2*max(a - b, 0)/q)',
  parameters: {
    a: { meaning: 'moment at the height allowed', unit: 'm³/s', min: 0, max: 10 },
    b: { meaning: 'moment at the pipe', unit: 'm³/s', min: 0, max: 10 },
    q: { meaning: 'inflow by the square metre', unit: 'm/s', min: 1e-12, max: 1 },
  },
  compute: (a: number, b: number, q: number) => Math.sqrt((2 * Math.max(a - b, 0)) / q),
  validity: 'water that rises evenly',
  source: 'Dupuit 1863 (from memory)',
});

/** G(h) = ∫ K (h − z) dz up to the water, m³/s. */
function potential(strata: BedStratum[], h: number, use: Use = unrecorded): number {
  let [bottom, sum] = [0, 0];
  for (const { thickness, permeability } of [...strata].reverse()) {
    sum = use(layerPotential, sum, permeability, thickness, bottom, h);
    bottom += thickness;
  }
  return sum;
}

/** The height that has a potential: from layer to layer a quadratic equation, above the bed a straight line. */
function heightOfPotential(strata: BedStratum[], wanted: number): number {
  let [bottom, reached, transmissivity] = [0, 0, 0];
  for (const { thickness, permeability } of [...strata].reverse()) {
    const next = reached + transmissivity * thickness + (permeability * thickness ** 2) / 2;
    if (wanted <= next) {
      const lacks = wanted - reached;
      const root = Math.sqrt(transmissivity ** 2 + 2 * permeability * lacks);
      return bottom + (2 * lacks) / (transmissivity + root || 1);
    }
    [bottom, reached, transmissivity] = [bottom + thickness, next, transmissivity + permeability * thickness];
  }
  return bottom + (wanted - reached) / transmissivity;
}
