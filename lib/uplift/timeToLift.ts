import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { depthOver } from './netHead.js';
import { type PondShape, planArea } from './pondShape.js';

export const timeToLiftMethod = method({
  title: 'Time until an emptied liner lifts',
  what: 'Counts the liner lifted when the water that can arrive equals 20 mm over the floor.',
  assumptions: [
    '20 mm over the floor is our choice; 10 and 50 mm halve and multiply the time by 2.5',
    'what seeps in over the days is by the mean height of the water outside over the floor; sides and floor gather it ' +
      'like a disc of their mean plan at the highest',
    'water standing in the ring above the floor is there at once; storm water comes to a bed as fast as it enters the ring',
  ],
  source: 'balance of volumes',
});

/** Water over the floor that counts as lifted, m. */
export const LIFT_VOLUME_DEPTH = 0.02;
/** Depths shown beside each other, m: barely seen, counted as lifted, a bulge. */
export const LIFT_DEPTHS = [0.01, LIFT_VOLUME_DEPTH, 0.05];

/** Time for a steady inflow to bring a depth of water over a floor. */
export const fillTime = formula({
  title: 'Time for an inflow to bring a depth of water over the floor',
  symbol: 't',
  unit: 's',
  expression: 'd*A/Q',
  parameters: {
    d: { meaning: 'depth of water', unit: 'm', min: 0, max: 0.2 },
    A: { meaning: 'floor area', unit: 'm²', min: 0.01, max: 1000 },
    Q: { meaning: 'inflow', unit: 'm³/s', min: 1e-12, max: 1 },
  },
  compute: (d: number, A: number, Q: number) => (d * A) / Q,
  validity: 'steady inflow',
  source: 'balance of volumes',
});

/** Water that is missing over the floor. */
export const missingWater = formula({
  title: 'Water missing over the floor, beside what stands in the ring',
  symbol: 'd',
  unit: 'm',
  expression: 'l - r/A',
  parameters: {
    l: { meaning: 'depth of water that counts as lifted', unit: 'm', min: 0, max: 0.2 },
    r: { meaning: 'water that stands in the ring above the floor', unit: 'm³', min: 0, max: 1000 },
    A: { meaning: 'floor area', unit: 'm²', min: 0.01, max: 1000 },
  },
  compute: (l: number, r: number, A: number) => l - r / A,
  validity: 'what stands in the ring comes at once',
  source: 'balance of volumes',
});

/** Floor that is counted. */
export const floorCounted = formula({
  title: 'Floor area that is counted',
  symbol: 'A',
  unit: 'm²',
  expression: 'max(A, 0.05)',
  parameters: { A: { meaning: 'plan area at the floor', unit: 'm²', min: 0, max: 1e4 } },
  compute: (A: number) => Math.max(A, LEAST_FLOOR),
  validity: 'a bowl lifts over a patch, not a point: our choice',
  source: 'our choice',
});

/** Radius of the disc that gathers water as sides and floor do. */
export const gatheringRadius = formula({
  title: 'Radius of the circle as large as the mean of two plans',
  symbol: 'r',
  unit: 'm',
  expression: 'sqrt((A + B)/(2*pi))',
  parameters: {
    A: { meaning: 'plan area at the floor', unit: 'm²', min: 0, max: 1e4 },
    B: {
      meaning: 'plan area at the level of the water outside, or at the rim',
      unit: 'm²',
      min: 0,
      max: 1e4,
    },
  },
  compute: (A: number, B: number) => Math.sqrt((A + B) / 2 / Math.PI),
  validity: 'ponds not much longer than wide',
  source: 'geometry; sides and floor taken as one disc: our choice',
});

/** Water that can get under an emptied liner. */
export interface Arrival {
  /** through the clay, m³/s */
  clay: number;
  /** standing in the ring above the floor, m³ */
  ring: number;
  /** that a storm brings to a bed open to surface water, m³/s */
  storm: number;
}

/** Least floor that is counted, m²: a bowl lifts over a patch, not a point. */
export const LEAST_FLOOR = 0.05;

/**
 * Seepage through clay towards an emptied pond, as to a disc of the mean of its plans.
 * @param pond - its shape
 * @param depth - rim to floor, m
 * @param rise - head outside above the floor, m; 0 or less brings nothing
 * @param permeability - of the clay, m/s
 * @param use - what evaluates the formula, for a record
 * @returns m³/s
 */
export function clayArrival(
  pond: PondShape,
  depth: number,
  rise: number,
  permeability: number,
  use: Use = unrecorded,
): number {
  if (rise <= 0) return 0;
  const floor = use(floorCounted, planArea(pond, depth, use));
  const surface = planArea(pond, use(depthOver, depth, rise, 0), use);
  return use(discInflow, permeability, use(gatheringRadius, floor, surface), rise);
}

/**
 * Seconds until the water that can arrive stands `lifted` deep over the floor; 0 at once, Infinity never.
 * @param floorArea - m²; at least {@link LEAST_FLOOR} is counted
 * @param arrival - what comes from clay and storm, m³/s, and stands in the ring, m³
 * @param lifted - depth of water that counts as lifted, m
 * @param use - what evaluates the formula, for a record
 * @returns s
 */
export function secondsToFill(
  floorArea: number,
  { clay, ring, storm }: Arrival,
  lifted = LIFT_VOLUME_DEPTH,
  use: Use = unrecorded,
): number {
  const area = use(floorCounted, floorArea);
  const missing = use(missingWater, lifted, ring, area);
  if (missing <= 0) return 0;
  const inflow = clay + storm;
  return inflow > 0 ? use(fillTime, missing, area, inflow) : Number.POSITIVE_INFINITY;
}

/**
 * Times until 10, 20 and 50 mm of water stand over the floor, see {@link secondsToFill}.
 * @param floorArea - m²
 * @param arrival - what comes from clay and storm, m³/s, and stands in the ring, m³
 * @returns a time, s, for each depth, m; Infinity never
 */
export function liftTimes(floorArea: number, arrival: Arrival): { depth: number; seconds: number }[] {
  return LIFT_DEPTHS.map((depth) => ({ depth, seconds: secondsToFill(floorArea, arrival, depth) }));
}
