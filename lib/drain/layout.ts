import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { type BedStratum, bedReach } from './bedHead.js';
import { BEDS, type Bed, type BedLayers, type Granular } from './envelope.js';
import { branchedPipe, branchSpacing, ringPipe } from './pipeLength.js';

export const layoutMethod = method({
  title: 'Layout of the pipes in the bed',
  what:
    'One pipe along the middle of the floor (spine); where the bed cannot bring storm water from the sides to it within ' +
    'the head limit, a pipe around the foot of the sides (ring), which takes that water before it crosses the floor; where ' +
    'the floor itself yields too much for that, branches to both sides at the spacing the bed allows (herringbone).',
  assumptions: [
    'a round or oval floor counted by its length and width',
    'the bed takes 1.2 times the likely water where more pipe can have it so (our choice): a wetter ground brings more',
    'the farthest point of a spine is half the width away, that of a branch half the spacing, the middle for a ring',
    'water that comes down the sides goes the whole way, so it counts twice what rises evenly under the floor',
    'the pipe half full; the water in the bed stays 0.03 m below the liner (our choice), a mat may run full',
  ],
  source:
    'level flow with a free surface in the layers of the bed; common practice; tested on the numerical section',
});

/** Thickness of the bed under the floor, m. Common practice: pipe and cover. */
export const BED_THICKNESS = 0.15;
/** Underside of the bed. */
export const bedUnderside = formula({
  title: 'Underside of the bed',
  symbol: 'z',
  unit: 'm',
  expression: 'f - t',
  parameters: {
    f: { meaning: "level of the liner's lowest point", unit: 'm', min: -10, max: 10 },
    t: { meaning: 'thickness of the bed', unit: 'm', min: 0, max: 1 },
  },
  compute: (f: number, t: number) => f - t,
  validity: 'level bed',
  source: 'geometry',
});

/** Filter sand under a core of gravel, m. Common practice: 50 mm, as little as can be spread. */
export const FILTER_THICKNESS = 0.05;
/** Groove under the pipe in which the filter sand goes on, m. Common practice: as wide as a spade and a half. */
export const GROOVE_WIDTH = 0.3;
/** Head kept in the bed above the pipe's invert, m, as long as no storm fills it. */
export const BED_LOSS = 0.03;

/** Permeability times thickness of a drainage mat under a metre of water, m²/s; within a factor of 3. Common practice. */
const MAT_TRANSMISSIVITY = 5e-4;
/** Thickness of a drainage mat, m. Common practice. */
export const MAT_THICKNESS = 0.02;

/** Upper part of a bed that stays dry under the liner, m. Our choice. */
const DRY_UNDER_LINER = 0.03;

/** Permeability of washed sand and stone, m/s; right within a factor of about 3. Common practice. */
const PERMEABILITY: Record<Granular, number> = {
  'masonry sand': 1.5e-4,
  'concrete sand': 3e-4,
  'pea gravel': 2e-2,
  '20 mm stone': 1e-1,
};

/**
 * Height of the water above the underside of a bed at its pipe: the pipe half full, or the middle of a mat.
 * @param bed - what is laid
 * @param diameter - inside, of the pipe, m
 * @param use - what evaluates the formula, for a record
 * @returns m
 */
export function levelAtPipe(bed: Bed, diameter: number, use: Use = unrecorded): number {
  return isMat(bed) ? MAT_THICKNESS / 2 : use(halfPipe, diameter);
}

/** Water in a pipe half full. */
export const halfPipe = formula({
  title: 'Height of the water at the pipe, half full',
  symbol: 'h',
  unit: 'm',
  expression: 'D/2',
  parameters: { D: { meaning: 'inside diameter', unit: 'm', min: 0.02, max: 1 } },
  compute: (D: number) => D / 2,
  validity: 'above the underside of the bed, on which the pipe lies',
  source: 'geometry',
});

/**
 * Highest water allowed in a bed, m above its underside.
 * @param bed - what is laid
 * @returns m
 */
function highestInBed(bed: Bed): number {
  return isMat(bed) ? MAT_THICKNESS : BED_THICKNESS - DRY_UNDER_LINER;
}

/**
 * Whether a mat lies under the floor.
 * @param bed - what is laid
 * @returns true where it is one
 */
export function isMat(bed: Bed): boolean {
  return (BEDS[bed] as BedLayers).mat === true;
}

/**
 * Layers of a bed from the liner down: the core on the filter sand, or the one material it is made of.
 * @param bed - what is laid
 * @param thickness - of all, m; a mat keeps its own
 * @returns layers with thickness, m, and permeability, m/s
 */
export function strataOf(bed: Bed, thickness = BED_THICKNESS): BedStratum[] {
  if (isMat(bed)) return [{ thickness: MAT_THICKNESS, permeability: MAT_TRANSMISSIVITY / MAT_THICKNESS }];
  const { filter, core }: BedLayers = BEDS[bed];
  const sand = core && filter !== 'fabric' ? Math.min(FILTER_THICKNESS, thickness) : 0;
  return [
    { thickness: thickness - sand, permeability: PERMEABILITY[core ?? (filter as Granular)] },
    ...(sand > 0 ? [{ thickness: sand, permeability: PERMEABILITY[filter as Granular] }] : []),
  ].filter((l) => l.thickness > 0);
}

/**
 * Middles of equal parts of a width, from the middle of it, m.
 * @param width - m
 * @param count - of parts, at least 1
 * @returns m, from the left
 */
export function evenPlaces(width: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => (width * (i + 0.5)) / count - width / 2);
}

/** Pipes laid in the bed. */
export interface Layout {
  kind: 'spine' | 'ring' | 'herringbone';
  /** perforated pipe, m */
  length: number;
  /** branches on each side */
  branches: number;
  /** between pipes, or the width of the floor for a spine or a ring, m */
  spacing: number;
  /** at which the head limit is just kept, m */
  allowed: number;
  /** inflow per area of floor as if it all rose evenly, m/s */
  evenly: number;
}

/**
 * The longest way of water in the pipes of a bed: along a spine, half round a ring, down a branch and along its spine.
 * @param layout - from {@link layoutOf}
 * @param floorLength - m
 * @param floorWidth - m
 * @returns m
 */
export function longestWay({ kind, length }: Layout, floorLength: number, floorWidth: number): number {
  return { spine: floorLength, ring: length / 2, herringbone: floorLength + floorWidth / 2 }[kind];
}

/** Inflow by the square metre of floor. */
export const evenInflow = formula({
  title: 'Inflow of the bed by the square metre of floor',
  symbol: 'q',
  unit: 'm/s',
  expression: '(b + 2*s)/(L*W)',
  parameters: {
    b: { meaning: 'inflow that rises under the floor', unit: 'm³/s', min: 0, max: 10 },
    s: { meaning: 'inflow that comes down the sides', unit: 'm³/s', min: 0, max: 10 },
    L: { meaning: 'length of the floor', unit: 'm', min: 0.1, max: 100 },
    W: { meaning: 'width of the floor', unit: 'm', min: 0.1, max: 100 },
  },
  compute: (b: number, s: number, L: number, W: number) => (b + 2 * s) / (L * W),
  validity:
    'what comes down the sides goes the whole way, so it counts twice; nothing of it where a ring takes it first',
  source: 'common practice',
});

/** Spacing by the reach of a pipe. */
export const spacingAllowed = formula({
  title: 'Spacing of pipes that the bed allows',
  symbol: 'a',
  unit: 'm',
  expression: '2*r',
  parameters: { r: { meaning: 'farthest way to a pipe', unit: 'm', min: 0, max: 1e5 } },
  compute: (r: number) => 2 * r,
  validity: 'a pipe drains both of its sides',
  source: 'geometry',
});

/** What counts as no inflow, m/s. */
const LEAST_INFLOW = 1e-12;
/** Times the likely water that a bed must bring to its pipes: a wetter ground brings more than is likely. Our choice. */
const BED_RESERVE = 1.2;

/**
 * Layout for a floor, see {@link layoutMethod}.
 * @param floorLength - m, above 0
 * @param floorWidth - m, above 0
 * @param bed - what the bed is made of
 * @param fromBelow - inflow that rises evenly under the floor, m³/s
 * @param fromSides - inflow that comes down the sides, m³/s
 * @param diameter - inside, of the pipe, m
 * @param use - what evaluates the formulas, for a record
 * @returns kind, length of pipe, m, branches and spacing, m
 */
export function layoutOf(
  floorLength: number,
  floorWidth: number,
  bed: Bed,
  { fromBelow, fromSides }: { fromBelow: number; fromSides: number },
  diameter: number,
  use: Use = unrecorded,
): Layout {
  const spacingFor = (q: number, use: Use = unrecorded) =>
    use(
      spacingAllowed,
      bedReach(
        strataOf(bed),
        levelAtPipe(bed, diameter, use),
        Math.max(q, LEAST_INFLOW),
        highestInBed(bed),
        use,
      ),
    );
  const evenly = use(evenInflow, fromBelow, fromSides, floorLength, floorWidth);
  const allowed = spacingFor(evenly, use);
  // The spacing goes with the root of the inflow.
  const serves = (spacing: number) => floorWidth <= spacing / Math.sqrt(BED_RESERVE);
  if (serves(allowed))
    return { kind: 'spine', length: floorLength, branches: 0, spacing: floorWidth, allowed, evenly };
  const below = evenInflow.compute(fromBelow, 0, floorLength, floorWidth);
  if (serves(spacingFor(below)))
    return {
      kind: 'ring',
      length: use(ringPipe, floorLength, floorWidth),
      branches: 0,
      spacing: floorWidth,
      allowed: spacingFor(use(evenInflow, fromBelow, 0, floorLength, floorWidth), use),
      evenly: below,
    };
  // Branches closer than half a metre are no drain but a second bed.
  const branches = Math.ceil((floorLength * Math.sqrt(BED_RESERVE)) / Math.max(allowed, 0.5));
  return {
    kind: 'herringbone',
    length: use(branchedPipe, floorLength, branches, floorWidth),
    branches,
    spacing: use(branchSpacing, floorLength, branches),
    allowed,
    evenly,
  };
}
