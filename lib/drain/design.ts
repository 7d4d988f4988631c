import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { conveyanceOf, type DrainInput, fallNeeded, widthOf } from './conveyance.js';
import type { Bed, EnvelopeVerdict } from './envelope.js';
import { bedUnderFloor, type HeadLeft, netUnderLiner, pipesForBallast, pipesInClay } from './floorRelief.js';
import type { DrainInflow } from './inflow.js';
import type { Ends } from './inflowBySource.js';
import { BED_THICKNESS, bedUnderside, type Layout, longestWay } from './layout.js';
import { type FallLink, fallLinks } from './outlet.js';
import { pipeFlow } from './partFull.js';
import { BLOCKED } from './perforations.js';
import { cleansingFall, LEAST_FALL, type PipeChoice, smallestThatServes } from './pipe.js';
import { ROUGHNESS } from './pipeSizes.js';
import {
  type DrainQuantity,
  drainDug,
  drainRefilled,
  type QuantityInput,
  quantitiesOf,
  sumpDug,
} from './quantities.js';
import type { Sump } from './sump.js';
import { sideBranch } from './wayOut.js';

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

/** Level that an outlet lets the water in a bed fall to. */
export const reliefAt = formula({
  title: 'Level that the drain holds',
  symbol: 'z',
  unit: 'm',
  expression: 'max(b, o + n)',
  parameters: {
    b: { meaning: 'underside of the bed', unit: 'm', min: -10, max: 10 },
    o: { meaning: 'level of the outlet', unit: 'm', min: -20, max: 10 },
    n: { meaning: 'fall that the run needs', unit: 'm', min: 0, max: 10 },
  },
  compute: (b: number, o: number, n: number) => Math.max(b, o + n),
  validity: 'run laid at its least fall, before the receiving water is looked at',
  source: 'levelling',
});

/**
 * Level to which a drain lets the water in its bed fall, before the receiver's own water is looked at: the underside of
 * the bed, or what the outlet allows at the least fall.
 * @param floor - level of the dug floor, m above any datum
 * @param outletLevel - level of the pipe's lowest inside point (invert) at the outlet, m above the same
 * @param run - length of the pipe to it, m, 0 and more
 * @param use - what evaluates the formulas, for a record
 * @returns m above the same datum
 */
export function reliefLevel(floor: number, outletLevel: number, run: number, use: Use = unrecorded): number {
  const underside = use(bedUnderside, floor, BED_THICKNESS);
  // A sump has no outlet to hold the water up.
  return outletLevel === Number.NEGATIVE_INFINITY
    ? underside
    : use(reliefAt, underside, outletLevel, use(fallNeeded, LEAST_FALL, run));
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
  /** from the lowest ground to the bottom of the sump, m; absent for an outlet */
  sumpDepth?: number;
  /** beside the pond's own hole, before it is loosened, m³ */
  dug: number;
  /** of it, what goes back over the pipe, m³ */
  refilled: number;
  /** as designed for, for figures */
  input: DrainInput;
}

/**
 * A drain for a pond of known depth, see {@link drainDesign}.
 * @param input - pond, water, soil and where the drain ends, SI; see {@link DrainInput}
 * @returns the drain with layout, pipe, bed, fall or sump, the reserve of each link and quantities
 */
export function designDrain(input: DrainInput): Drain {
  const { floor, floorLength, end, inflow } = input;
  const floorWidth = widthOf(input);
  const carried = conveyanceOf(input);
  const { totalInflow, slope, fallAvailable, bed, envelope, layout, pipe, entry, sump, reserve } = carried;
  const head = Math.max((input.outside ?? 0) - (floor - BED_THICKNESS), 0);
  const headLeft = {
    bed: bedUnderFloor(bed, layout.spacing, head, layout.evenly, true, pipe.diameter),
    lonePipe: pipesInClay(floorWidth, head, 1, input.sideSlope),
  };
  const held = input.ballast ?? 0;
  const works = takeoffOf({ input, bed, layout, pipe, sump });
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
    fallNeeded: carried.fallNeeded,
    fallAvailable,
    links:
      end.kind === 'outlet'
        ? fallLinks({
            floor,
            inBed: longestWay(layout, floorLength, floorWidth),
            underSide: input.underSide,
            outlet: end,
          })
        : [],
    sump,
    reserve,
    weakestLink: Object.entries(reserve).reduce((a, b) => (b[1] < a[1] ? b : a))[0],
    quantities: quantitiesOf(works),
    ...(works.sumpDepth === undefined ? {} : { sumpDepth: works.sumpDepth }),
    dug: drainDug(works),
    refilled: drainRefilled(works),
    input,
  };
}

/**
 * What the quantities of a drain are counted from.
 * @param drain - as designed
 * @param use - what evaluates the formula, for a record
 * @returns lengths, areas and depths, SI
 */
export function takeoffOf(
  { input, bed, layout, pipe, sump }: Pick<Drain, 'input' | 'bed' | 'layout' | 'pipe' | 'sump'>,
  use: Use = unrecorded,
): QuantityInput {
  return {
    ...input,
    bed,
    layout,
    sideBranch: sideBranch(
      layout,
      { length: input.floorLength, width: widthOf(input) },
      input.underSide ?? 0,
      input.towards,
    ),
    pipe: shopSize(pipe),
    sumpDepth: sump && use(sumpDug, BED_THICKNESS, input.floor, sump.stroke),
    duty: sump?.duty,
  };
}

/** Size as it is asked for: `100 mm`, `4 in`. */
function shopSize({ pipe }: PipeChoice): string {
  return /^[\d/ ]+ (mm|in)/.exec(pipe.name)![0];
}
