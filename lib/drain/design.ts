import { formula, method } from '../formula/index.js';
import {
  aroundPipe,
  type Bed,
  type EnvelopeVerdict,
  HEAVY_CLAY,
  judgeBed,
  openingReserve,
} from './envelope.js';
import type { BaseSoil } from './filterBand.js';
import { bedUnderFloor, type HeadLeft, netUnderLiner, pipesForBallast, pipesInClay } from './floorRelief.js';
import { type DrainInflow, totalOf } from './inflow.js';
import type { Ends } from './inflowBySource.js';
import { BED_LOSS, BED_THICKNESS, type Layout, layoutOf } from './layout.js';
import { type FallLink, fallLinks } from './outlet.js';
import { pipeFlow } from './partFull.js';
import { BLOCKED, entryCapacity } from './perforations.js';
import { choosePipe, cleansingFall, LEAST_FALL, type PipeChoice, smallestThatServes } from './pipe.js';
import { type CommonPipe, ROUGHNESS } from './pipeSizes.js';
import { type DrainQuantity, type QuantityInput, quantitiesOf } from './quantities.js';
import { designSump, type Sump } from './sump.js';

export const drainDesign = method({
  title: 'Drain under the liner',
  what:
    'A filtered bed under floor and sides with a perforated pipe in it, led to an outlet or a sump; each link with its ' +
    'reserve: what it can take over what it must.',
  assumptions: [
    'bed 0.15 m thick under the floor: filter sand against the clay, washed gravel around the pipe',
    'sand or a drainage mat turned up behind the sides',
    'pipe at the underside of the bed at its lower end, on filter sand in a groove; fall at least 1 %',
    'pipe at least 100 mm, so that it can be flushed and looked into',
    'the drain relieves only what the bed touches: floor and sides both',
  ],
  source: 'common practice; pipe, filter and inflow by the formulas cited',
});

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
 * Level to which a drain lets the water in its bed fall, before the receiver's own water is looked at: the underside of
 * the bed, or what the outlet allows at the least fall.
 * @param floor - level of the dug floor, m above any datum
 * @param outletLevel - level of the pipe's lowest inside point (invert) at the outlet, m above the same
 * @param run - length of the pipe to it, m, 0 and more
 * @returns m above the same datum
 */
export function reliefLevel(floor: number, outletLevel: number, run: number): number {
  return Math.max(floor - BED_THICKNESS, outletLevel + fallNeeded.compute(LEAST_FALL, run));
}

/**
 * What the design of a drain starts from, SI. The datum of all levels is the lowest natural ground at the rim: depth of a
 * sump and cover of a pipe are counted from there.
 */
export interface DrainInput extends Omit<QuantityInput, 'bed' | 'layout' | 'pipe' | 'end' | 'sumpDepth'> {
  /** liner's lowest point, m above the datum */
  floor: number;
  /** length and width of the floor, m; without a width that of the area */
  floorLength: number;
  floorWidth?: number;
  /** m³/s by source */
  inflow: DrainInflow;
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

/** A drain as designed, SI. */
export interface Drain {
  kind: 'outlet' | 'sump';
  outlet: string;
  /** m³/s, by source and in all */
  inflow: DrainInflow;
  totalInflow: number;
  bed: Bed;
  envelope: EnvelopeVerdict;
  layout: Layout;
  /** head left under the emptied liner by this bed, and by one pipe laid in the clay instead, m */
  headLeft: { bed: HeadLeft; lonePipe: HeadLeft };
  /** net pressure head on the emptied liner by either, m; above 0 it lifts */
  netHead: { bed: HeadLeft; lonePipe: HeadLeft };
  /** pipes in the clay without a bed that would hold the floor down; absent where a dozen do not */
  pipesWithoutBed?: number;
  pipe: PipeChoice;
  /** smallest pipe that carries the inflow at all, whether or not it can be flushed */
  smallest?: PipeChoice;
  /** inside, m */
  pipeDiameter: number;
  /** at the rough end, m³/s */
  pipeCapacity: number;
  /** fall of the run, m/m */
  slope: number;
  /** depth over diameter, and velocity in m/s, of the design inflow at the rough end */
  flow: { depth: number; velocity: number };
  /** what gets in through the perforations, m³/s, with most, half and none of them blocked */
  entry: Ends;
  /** falls at which the pipe keeps itself clean without and with silt, m/m */
  cleansing: { filtered: number; silty: number };
  /** along the run to the outlet, m; 0 for a sump */
  fallNeeded: number;
  /** from the underside of the bed, m, below 0 where the outlet lies higher; absent for a sump */
  fallAvailable?: number;
  links: FallLink[];
  sump?: Sump;
  /** what each link can take over what it must, 1 and more holds; names in {@link LINK_NAMES} */
  reserve: Record<string, number>;
  /** the one with the least reserve */
  weakestLink: string;
  quantities: DrainQuantity[];
  /** as designed for, for figures */
  input: DrainInput;
}

/** Fall of a pipe that is dug level, and the steepest that counts, m/m. */
const FALL_RANGE: [number, number] = [0.0005, 0.2];
/** Slots of perforated pipe, and the openings of a sock over it, m. Common practice. */
const SLOT = 2e-3;
const SOCK = 4.25e-4;
/** Voids of the bed that take water up in a power cut. Common practice. */
const VOIDS = 0.35;

/**
 * A drain for a pond of known depth, see {@link drainDesign}.
 * @param input - pond, water, soil and where the drain ends, SI; see {@link DrainInput}
 * @returns the drain with layout, pipe, bed, fall or sump, the reserve of each link and quantities
 */
export function designDrain(input: DrainInput): Drain {
  const {
    floor,
    floorArea,
    floorLength,
    end,
    inflow,
    soil = HEAVY_CLAY,
    bed = 'pea gravel on concrete sand',
  } = input;
  const floorWidth = input.floorWidth ?? floorArea / floorLength;
  const totalInflow = totalOf(inflow);
  const some = Math.max(totalInflow, 1e-9);
  const needed = end.kind === 'outlet' ? fallNeeded.compute(LEAST_FALL, end.distance) : 0;
  const available = end.kind === 'outlet' ? floor - BED_THICKNESS - end.level : undefined;
  const slope =
    available !== undefined && end.distance > 0
      ? Math.min(Math.max(available / end.distance, FALL_RANGE[0]), FALL_RANGE[1])
      : LEAST_FALL;
  const pipe = choosePipe(totalInflow, slope, input.series);
  const fromBelow = inflow.clay + inflow.leak;
  const layout = layoutOf(
    floorLength,
    floorWidth,
    bed,
    { fromBelow, fromSides: totalInflow - fromBelow },
    pipe.diameter,
  );
  const envelope = judgeBed(bed, soil);
  const gravelly = aroundPipe(bed) === 'pea gravel' || aroundPipe(bed) === '20 mm stone';
  const opening = gravelly
    ? ({ kind: 'slot', size: SLOT } as const)
    : ({ kind: 'sock', size: SOCK } as const);
  const head = Math.max((input.outside ?? 0) - (floor - BED_THICKNESS), 0);
  const headLeft = {
    bed: bedUnderFloor(bed, layout.spacing, head, layout.evenly, true, pipe.diameter),
    lonePipe: pipesInClay(floorWidth, head, 1, input.sideSlope),
  };
  const held = input.ballast ?? 0;
  const entry = (blocked: number) => entryCapacity(layout.length, BED_LOSS, blocked);
  const reserve: Record<string, number> = {
    pipe: pipe.capacity / some,
    'pipe entry': entry(BLOCKED.likely) / some,
    'pipe openings': openingReserve(bed, opening),
    bed: (layout.allowed / layout.spacing) ** 2,
    envelope: envelope.retention,
  };
  if (available !== undefined) reserve.fall = available / Math.max(needed, 0.01);
  if (end.kind === 'outlet' && end.flood !== undefined)
    // Height of the floor above the receiver in flood, over the head the bed keeps.
    reserve['outlet in flood'] = Math.max((floor - end.flood) / BED_LOSS, 0);
  const sump = end.kind === 'sump' ? sumpOf(input, end, totalInflow) : undefined;
  if (sump) reserve.pump = sump.times;
  return {
    kind: end.kind,
    outlet: end.name,
    inflow,
    totalInflow,
    bed,
    envelope,
    layout,
    headLeft,
    netHead: {
      bed: netUnderLiner(headLeft.bed, held),
      lonePipe: netUnderLiner(headLeft.lonePipe, held),
    },
    pipesWithoutBed: pipesForBallast(floorWidth, head, held, input.sideSlope),
    pipe,
    smallest: smallestThatServes(totalInflow, slope, input.series),
    pipeDiameter: pipe.diameter,
    pipeCapacity: pipe.capacity,
    slope,
    flow: pipeFlow(totalInflow, pipe.diameter, slope, ROUGHNESS[pipe.pipe.kind].rough),
    entry: { low: entry(BLOCKED.most), likely: entry(BLOCKED.likely), high: entry(BLOCKED.least) },
    cleansing: cleansingFall(pipe),
    fallNeeded: needed,
    fallAvailable: available,
    links: end.kind === 'outlet' ? fallLinks({ floor, floorLength, outlet: end }) : [],
    sump,
    reserve,
    weakestLink: Object.entries(reserve).reduce((a, b) => (b[1] < a[1] ? b : a))[0],
    quantities: quantitiesOf({
      ...input,
      bed,
      layout,
      pipe: shopSize(pipe),
      sumpDepth: sump && BED_THICKNESS - floor + sump.stroke,
    }),
    input,
  };
}

/** Size as it is asked for: `100 mm`, `4 in`. */
function shopSize({ pipe }: PipeChoice): string {
  return /^[\d/ ]+ (mm|in)/.exec(pipe.name)![0];
}

/** The sump starts at the underside of the bed. */
function sumpOf(
  { floor, floorArea, inflow }: DrainInput,
  end: Extract<DrainInput['end'], { kind: 'sump' }>,
  storm: number,
): Sump {
  return designSump({
    floor,
    start: floor - BED_THICKNESS,
    discharge: { level: end.discharge ?? 0, distance: end.distance },
    storm,
    ordinary: inflow.clay,
    bedStorage: floorArea * BED_THICKNESS * VOIDS,
  });
}
