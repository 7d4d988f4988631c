import { formula, type Use, unrecorded } from '../formula/index.js';
import {
  aroundPipe,
  type Bed,
  type EnvelopeVerdict,
  HEAVY_CLAY,
  judgeBed,
  openingReserve,
} from './envelope.js';
import type { BaseSoil } from './filterBand.js';
import { type DrainInflow, risingInflow, sideInflow, totalOf } from './inflow.js';
import { BED_LOSS, BED_THICKNESS, bedUnderside, type Layout, layoutOf } from './layout.js';
import {
  bedHolds,
  bedReserve,
  fallReserve,
  fallThere,
  floodReserve,
  slopeThere,
  timesOver,
} from './linkReserve.js';
import { pipeRun } from './outlet.js';
import { BLOCKED, entryCapacity } from './perforations.js';
import { choosePipe, LEAST_FALL, type PipeChoice } from './pipe.js';
import type { CommonPipe } from './pipeSizes.js';
import type { QuantityInput } from './quantities.js';
import { designSump, type Sump, type SumpInput } from './sump.js';

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

/**
 * What the design of a drain starts from, SI. The datum of all levels is the lowest natural ground at the rim: depth of a
 * sump and cover of a pipe are counted from there.
 */
export interface DrainInput
  extends Omit<QuantityInput, 'bed' | 'layout' | 'pipe' | 'end' | 'sumpDepth' | 'sideBranch'> {
  /** liner's lowest point, m above the datum */
  floor: number;
  /** length and width of the floor, m; without a width that of the area */
  floorLength: number;
  floorWidth?: number;
  /** m³/s by source */
  inflow: DrainInflow;
  /** how long the storm in it lasts, s; absent: without end */
  stormSeconds?: number;
  /** highest water outside without a drain, m above the datum; absent: level with the datum */
  outside?: number;
  /** head that ballast on the liner holds, m */
  ballast?: number;
  /** soil under the floor; absent: heavy clay */
  soil?: BaseSoil;
  /** what the bed is made of; absent: gravel on concrete sand */
  bed?: Bed;
  /** which pipes the shop sells */
  series?: CommonPipe['series'];
  /** where it goes, along the pond's length and across it from its middle, m; absent: not on the plan */
  towards?: [number, number];
  /** where it ends: level of its mouth, way there, ordinary and highest water it meets; or a sump. m */
  end:
    | { kind: 'outlet'; name: string; level: number; distance: number; ditch?: number; flood?: number }
    | {
        kind: 'sump';
        name: string;
        /** at which the pump holds the water */
        level: number;
        /** of the pumped line, m */
        distance: number;
        /** where the pumped water goes, and its level, m above the datum */
        to?: string;
        discharge?: number;
      };
}

/** Slots of perforated pipe, and the openings of a sock over it, m. Common practice. */
const SLOT = 2e-3;
const SOCK = 4.25e-4;
/** Voids of the bed that take water up in a power cut. Common practice. */
const VOIDS = 0.35;

/** What each link of a drain takes, and what it must. */
export interface Conveyance {
  /** m³/s */
  totalInflow: number;
  bed: Bed;
  envelope: EnvelopeVerdict;
  pipe: PipeChoice;
  /** fall of the run, m/m */
  slope: number;
  layout: Layout;
  /** what gets in through the perforations, m³/s, with a share of them blocked */
  entry(blocked: number): number;
  /** along the run from the bed to the outlet, m; 0 for a sump */
  fallNeeded: number;
  /** from the underside of the bed, m, below 0 where the outlet lies higher; absent for a sump */
  fallAvailable?: number;
  sump?: Sump;
  /** what each link can take over what it must, 1 and more holds; names in {@link LINK_NAMES} */
  reserve: Record<string, number>;
}

/** Links whose reserve is a flow over the inflow. */
export const FLOW_LINKS = ['pipe', 'pipe entry', 'bed', 'pump'] as const;
/** Links that let soil through where their reserve is below 1. */
export const SOIL_LINKS = ['pipe openings', 'envelope'] as const;

/**
 * Width of the floor; without one that of the area.
 * @param input - of a drain
 * @returns m
 */
export function widthOf({ floorArea, floorLength, floorWidth }: DrainInput): number {
  return floorWidth ?? floorArea / floorLength;
}

/**
 * The links that lead water away, with the pipe and the layout that they ask for.
 * @param input - pond, water, soil and where the drain ends, SI; see {@link DrainInput}
 * @param use - what evaluates the formulas, for a record
 * @returns each link's reserve, m³/s and m
 */
export function conveyanceOf(input: DrainInput, use: Use = unrecorded): Conveyance {
  const { floor, floorLength, end, inflow, soil = HEAVY_CLAY, bed = 'pea gravel on concrete sand' } = input;
  const totalInflow = totalOf(inflow, use);
  const toOutlet = end.kind === 'outlet' ? use : unrecorded;
  const run = pipeRun(end, input.underSide ?? 0, toOutlet);
  const needed = end.kind === 'outlet' ? use(fallNeeded, LEAST_FALL, run) : 0;
  const available = end.kind === 'outlet' ? use(fallThere, floor, BED_THICKNESS, end.level) : undefined;
  const slope = available !== undefined && run > 0 ? use(slopeThere, available, run) : LEAST_FALL;
  const pipe = choosePipe(totalInflow, slope, input.series, use);
  const fromBelow = use(risingInflow, inflow.clay, inflow.leak);
  const fromSides = use(sideInflow, totalInflow, fromBelow);
  const layout = layoutOf(floorLength, widthOf(input), bed, { fromBelow, fromSides }, pipe.diameter, use);
  const envelope = judgeBed(bed, soil, use);
  const gravelly = aroundPipe(bed) === 'pea gravel' || aroundPipe(bed) === '20 mm stone';
  const opening = gravelly
    ? ({ kind: 'slot', size: SLOT } as const)
    : ({ kind: 'sock', size: SOCK } as const);
  const entry = (blocked: number, use?: Use) => entryCapacity(layout.length, BED_LOSS, blocked, use);
  const reserve: Record<string, number> = {
    pipe: use(timesOver, pipe.capacity, totalInflow),
    'pipe entry': use(timesOver, entry(BLOCKED.likely, use), totalInflow),
    'pipe openings': openingReserve(bed, opening, use),
    bed: use(bedReserve, layout.allowed, layout.spacing),
    envelope: envelope.retention,
  };
  if (available !== undefined) reserve.fall = use(fallReserve, available, needed);
  if (end.kind === 'outlet' && end.flood !== undefined)
    // Height of the floor above the receiver in flood, over the head the bed keeps.
    reserve['outlet in flood'] = use(floodReserve, floor, end.flood, BED_LOSS);
  const sump = end.kind === 'sump' ? sumpOf(input, end, totalInflow, use) : undefined;
  if (sump) reserve.pump = sump.times;
  return {
    totalInflow,
    bed,
    envelope,
    pipe,
    slope,
    layout,
    entry,
    fallNeeded: needed,
    fallAvailable: available,
    sump,
    reserve,
  };
}

/** The sump starts at the underside of the bed. */
function sumpOf(
  { floor, floorArea, inflow, stormSeconds = Number.POSITIVE_INFINITY }: DrainInput,
  end: Extract<DrainInput['end'], { kind: 'sump' }>,
  storm: number,
  use: Use,
): Sump {
  const sump: SumpInput = {
    floor,
    start: use(bedUnderside, floor, BED_THICKNESS),
    discharge: { level: end.discharge ?? 0, distance: end.distance },
    storm: { inflow: storm, seconds: stormSeconds },
    ordinary: inflow.clay,
    bedStorage: use(bedHolds, floorArea, BED_THICKNESS, VOIDS),
  };
  return designSump(sump, use);
}
