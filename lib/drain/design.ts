import { formula, method } from '../formula/index.js';
import { CLAY_SWELL } from './earthworks.js';
import { CLAY_D85, ENVELOPES, filterRatio, RETENTION_LIMIT_CLAY } from './envelope.js';
import type { DrainInflow } from './inflow.js';
import { choosePipe, LEAST_FALL } from './pipe.js';

export const drainDesign = method({
  title: 'Drain under the liner',
  what:
    'A blanket of concrete sand under floor and sides with one perforated pipe in it, led to an outlet or a sump; ' +
    'each link with its reserve: what it can take over what it must.',
  assumptions: [
    'bed 0.15 m thick under the floor, turned up 0.10 m thick behind the sides',
    'pipe at least 100 mm, so that it can be flushed and looked into; fall at least 1 %',
    'the drain relieves only what the bed touches: floor and sides both',
  ],
  source: 'common practice; pipe, filter and inflow by the formulas cited',
});

/** Thickness of the bed under the floor, m. Common practice: pipe and cover. */
export const BED_THICKNESS = 0.15;
const SIDE_BLANKET = 0.1;
/** Head kept in the bed above the pipe's invert, m: a pipe half full and the bed's own loss. */
export const BED_LOSS = 0.03;

/** Fall a run of pipe needs. */
export const fallNeeded = formula({
  title: 'Fall a pipe run needs',
  symbol: 'Δz',
  unit: 'm',
  expression: 'S*L',
  parameters: {
    S: { meaning: 'least fall', unit: 'm/m', min: 0, max: 0.1 },
    L: { meaning: 'length of the run', unit: 'm', min: 0, max: 500 },
  },
  compute: (S: number, L: number) => S * L,
  validity: 'straight run of one fall',
  source: 'common practice: 1 %',
});

/** Level to which a drain lets the water in its bed fall, before the receiver's own water is looked at. */
export function reliefLevel(floor: number, outletLevel: number, run: number): number {
  return Math.max(floor - BED_THICKNESS, outletLevel + fallNeeded.compute(LEAST_FALL, run));
}

export interface DrainInput {
  /** liner's lowest point, m above the datum */
  floor: number;
  floorArea: number;
  /** length of the floor, for the pipe in the bed, m */
  floorLength: number;
  /** area of the sides, m² */
  sideArea: number;
  inflow: DrainInflow;
  end:
    | { kind: 'outlet'; name: string; level: number; distance: number; flood?: number }
    | { kind: 'sump'; name: string; level: number; distance: number };
}

export interface Quantity {
  item: string;
  amount: number;
  unit: string;
}

export interface Drain {
  kind: 'outlet' | 'sump';
  outlet: string;
  inflow: DrainInflow;
  totalInflow: number;
  pipeDiameter: number;
  pipeCapacity: number;
  fallNeeded: number;
  /** from the underside of the bed; absent for a sump */
  fallAvailable?: number;
  /** what each link can take over what it must */
  reserve: Record<string, number>;
  weakestLink: string;
  quantities: Quantity[];
}

/** A drain for a pond of known depth. */
export function designDrain(input: DrainInput): Drain {
  const { floor, end, inflow } = input;
  const totalInflow = Object.values(inflow).reduce((a, b) => a + b, 0);
  const needed = end.kind === 'outlet' ? fallNeeded.compute(LEAST_FALL, end.distance) : 0;
  const available = end.kind === 'outlet' ? floor - BED_THICKNESS - end.level : undefined;
  const slope = available !== undefined && end.distance > 0 ? Math.max(available / end.distance, 0.0005) : LEAST_FALL;
  const pipe = choosePipe(totalInflow, Math.min(slope, 0.2));
  const reserve: Record<string, number> = {
    pipe: pipe.capacity / Math.max(totalInflow, 1e-9),
    envelope: RETENTION_LIMIT_CLAY / filterRatio.compute(ENVELOPES['concrete sand'], CLAY_D85),
  };
  if (available !== undefined) reserve.fall = available / Math.max(needed, 0.01);
  if (end.kind === 'outlet' && end.flood !== undefined)
    // Height of the floor above the receiver in flood, over the head the bed keeps.
    reserve['outlet in flood'] = Math.max((floor - end.flood) / BED_LOSS, 0);
  const weakestLink = Object.entries(reserve).reduce((a, b) => (b[1] < a[1] ? b : a))[0];
  return {
    kind: end.kind,
    outlet: end.name,
    inflow,
    totalInflow,
    pipeDiameter: pipe.diameter,
    pipeCapacity: pipe.capacity,
    fallNeeded: needed,
    fallAvailable: available,
    reserve,
    weakestLink,
    quantities: quantitiesOf(input, pipe.diameter),
  };
}

function quantitiesOf({ floorArea, floorLength, sideArea, end }: DrainInput, diameter: number): Quantity[] {
  const sand = floorArea * BED_THICKNESS + sideArea * SIDE_BLANKET;
  const trench = end.kind === 'outlet' ? end.distance * 0.3 * 0.6 : 0.6 * 0.6 * 1;
  const list: Quantity[] = [
    { item: `perforated pipe, ${Math.round(diameter * 1000)} mm`, amount: floorLength, unit: 'm' },
    { item: `solid pipe, ${end.kind === 'outlet' ? Math.round(diameter * 1000) : 40} mm`, amount: end.distance, unit: 'm' },
    { item: 'concrete sand for the blanket, 10 % waste', amount: 1.1 * sand, unit: 'm³' },
    { item: 'filter fabric under the liner, 15 % laps', amount: 1.15 * (floorArea + sideArea), unit: 'm²' },
    { item: 'inspection pipe to the surface', amount: 1, unit: 'piece' },
    { item: 'extra spoil, loose (30 % swell)', amount: (1 + CLAY_SWELL) * (sand + trench), unit: 'm³' },
  ];
  if (end.kind === 'outlet')
    list.push({ item: 'flap valve', amount: 1, unit: 'piece' }, { item: 'animal guard', amount: 1, unit: 'piece' });
  else
    list.push(
      { item: 'sump chamber with lid', amount: 1, unit: 'piece' },
      { item: 'drainage pump', amount: 2, unit: 'piece' },
      { item: 'high-water alarm with battery', amount: 1, unit: 'piece' },
    );
  return list;
}
