import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { leftByTrial } from './trial.js';

/** Water round a drain as it rises towards the end of its reach. */
export const waterRoundDrain = formula({
  title: 'Water round a drain in ground fed by rain (Dupuit)',
  symbol: 'y',
  unit: 'm',
  expression: 'sqrt(d^2 + q/K*(R^2*log(p/r) - (p^2 - r^2)/2)) - d',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    q: { meaning: 'recharge', unit: 'm/s', min: 1e-10, max: 1e-5 },
    d: { meaning: 'depth below the drain in which water flows to it', unit: 'm', min: 0, max: 50 },
    r: { meaning: 'radius of the drained circle', unit: 'm', min: 0.2, max: 20 },
    R: { meaning: 'reach: beyond it rain does not come to the drain', unit: 'm', min: 0.2, max: 500 },
    p: { meaning: 'distance from the middle', unit: 'm', min: 0.2, max: 500 },
  },
  compute: (K: number, q: number, d: number, r: number, R: number, p: number) =>
    Math.sqrt(d * d + (q / K) * (R * R * Math.log(p / r) - (p * p - r * r) / 2)) - d,
  together: { says: 'r <= p and p <= R', holds: (_K, _q, _d, r, R, p) => r <= p && p <= R },
  validity: 'steady, flow nearly level; all rain within the reach goes to the drain',
  source: 'Dupuit with uniform recharge round a circle, integrated',
});

/** Depth in which water flows to a drain. */
export const flowDepth = formula({
  title: 'Depth below the drain in which water flows to it',
  symbol: 'd',
  unit: 'm',
  expression: 'min(b, 2*r/pi*max(log(R/r), 1))',
  parameters: {
    b: { meaning: 'thickness of the same ground below the drain', unit: 'm', min: 0, max: 1000 },
    r: { meaning: 'radius of the drained circle', unit: 'm', min: 0.2, max: 20 },
    R: { meaning: 'reach', unit: 'm', min: 0.2, max: 500 },
  },
  compute: (b: number, r: number, R: number) =>
    Math.min(b, ((2 * r) / Math.PI) * Math.max(Math.log(R / r), 1)),
  validity: 'deep ground counts as a layer that brings as much as the ground under a disc does',
  source: 'flow to a disc on a half-space',
});

/** A place by its distance from the middle. */
export const placeInReach = formula({
  title: 'Distance of a place from the middle of the pond, no farther than the reach',
  symbol: 'p',
  unit: 'm',
  expression: 'min(r + x, R)',
  parameters: {
    r: { meaning: 'radius of the drained circle', unit: 'm', min: 0.2, max: 20 },
    x: { meaning: "distance from the pond's edge", unit: 'm', min: 0, max: 1000 },
    R: { meaning: 'reach', unit: 'm', min: 0.2, max: 500 },
  },
  compute: (r: number, x: number, R: number) => Math.min(r + x, R),
  validity: 'the pond as a circle',
  source: 'geometry',
});

/** What is left of a lowering at a place. */
export const loweredBy = formula({
  title: 'Lowering of the water at the place',
  symbol: 's',
  unit: 'm',
  expression: 'max(s0 - y, 0)',
  parameters: {
    s0: { meaning: 'water lowered at the drain', unit: 'm', min: 0, max: 20 },
    y: { meaning: 'rise of the water from the drain to the place', unit: 'm', min: -1, max: 20 },
  },
  compute: (s0: number, y: number) => Math.max(s0 - y, 0),
  validity: 'none from the end of the reach on',
  source: 'levelling',
});

export const loweringMethod = method({
  title: 'Lowering of the water round a drained pond',
  what:
    'The reach at which the water is back where it stood, the rain within it being what the drain takes, and the lowering ' +
    'on the way there. Deep ground counts as a layer that brings as much as the ground under a disc does: 2r/π ln(R/r).',
  assumptions: [
    'the pond as a circle of equal area; steady recharge',
    'the same ground down to a tight layer',
    'in deep ground that takes up little rain it lies above the drawdown round a disc, 2s/π asin(r/p)',
  ],
  source: 'Dupuit with recharge; flow to a disc on a half-space',
});

/** A drained circle in the ground, SI. */
interface DrainedGround {
  /** water lowered at the drain, m, 0 and more */
  lowered: number;
  /** permeability, m/s, above 0 */
  permeability: number;
  /** m/s, above 0 */
  recharge: number;
  /** thickness of the same ground below the drain, m, 0 and more; Infinity where no tight layer is known */
  below: number;
  /** of the circle, m, above 0 */
  radius: number;
}

/**
 * Lowering of the water at a distance from the edge of a drained pond, see {@link loweringMethod}.
 * @param ground - lowering at the drain, ground and recharge, SI
 * @param distance - from the edge, m, 0 and more
 * @param use - what evaluates the formulas at the reach that is found, for a record
 * @returns m; 0 from the end of the reach on
 */
export function loweringAt(
  { lowered, permeability: k, recharge, below, radius }: DrainedGround,
  distance: number,
  use: Use = unrecorded,
): number {
  if (lowered <= 0) return 0;
  // The flow does not get down so far: more changes nothing.
  const thickness = Math.min(below, flowDepth.parameters.b.max);
  const water = (reach: number, at: number, use: Use = unrecorded) =>
    use(waterRoundDrain, k, recharge, use(flowDepth, thickness, radius, reach), radius, reach, at);
  let low = radius;
  let high = 2 * radius;
  while (water(high, high) < lowered) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (water(middle, middle) < lowered) low = middle;
    else high = middle;
  }
  use(leftByTrial, water(high, high, use), lowered);
  return use(loweredBy, lowered, water(high, use(placeInReach, radius, distance, high), use));
}
