import { formula, method } from '../formula/index.js';
import { BEDS, type Bed, type BedLayers, type Granular } from './envelope.js';

export const layoutMethod = method({
  title: 'Layout of the pipes in the bed',
  what:
    'One pipe along the middle of the floor (spine); where the bed cannot bring storm water from the sides to it within ' +
    'the head limit, a pipe around the foot of the sides (ring), which takes that water before it crosses the floor; where ' +
    'the floor itself yields too much for that, branches to both sides at the spacing the bed allows (herringbone).',
  assumptions: [
    'a round or oval floor counted by its length and width',
    'the farthest point of a spine is half the width away, that of a branch half the spacing, the middle for a ring',
    'water that comes down the sides goes the whole way, so it counts twice what rises evenly under the floor',
  ],
  source: 'Darcy with uniform inflow; common practice',
});

/** Thickness of the bed under the floor, m. Common practice: pipe and cover. */
export const BED_THICKNESS = 0.15;
/** Filter sand under a core of gravel, m. Common practice: 50 mm, as little as can be spread. */
export const FILTER_THICKNESS = 0.05;
/** Groove under the pipe in which the filter sand goes on, m. Common practice: as wide as a spade and a half. */
export const GROOVE_WIDTH = 0.3;
/** Head kept in the bed above the pipe's invert, m: a pipe half full and the bed's own loss. */
export const BED_LOSS = 0.03;

/** Conductivity times thickness of a drainage mat under a metre of water, m²/s; within a factor of 3. Common practice. */
const MAT_TRANSMISSIVITY = 5e-4;
/** Thickness of a drainage mat, m. Common practice. */
export const MAT_THICKNESS = 0.02;

/** Conductivity of washed sand and stone, m/s; right within a factor of about 3. Common practice. */
const CONDUCTIVITY: Record<Granular, number> = {
  'masonry sand': 1.5e-4,
  'concrete sand': 3e-4,
  'pea gravel': 2e-2,
  '20 mm stone': 1e-1,
};

/** Conductivity times thickness of a bed, m²/s. */
export function transmissivity(bed: Bed, thickness = BED_THICKNESS): number {
  return isMat(bed)
    ? MAT_TRANSMISSIVITY
    : strata(bed, thickness).reduce((sum, s) => sum + s.conductivity * s.thickness, 0);
}

/**
 * Conductivity of a bed taken as one layer, m/s: along it, and downwards through filter sand and core one after the other.
 * @param thickness - m; a mat keeps its own
 */
export function bedConductivity(bed: Bed, thickness = BED_THICKNESS): { across: number; down: number } {
  if (isMat(bed)) {
    const mat = MAT_TRANSMISSIVITY / MAT_THICKNESS;
    return { across: mat, down: mat };
  }
  const resistance = strata(bed, thickness).reduce((sum, s) => sum + s.thickness / s.conductivity, 0);
  return { across: transmissivity(bed, thickness) / thickness, down: thickness / resistance };
}

/** Whether a mat lies under the floor. */
export function isMat(bed: Bed): boolean {
  return (BEDS[bed] as BedLayers).mat === true;
}

/** Filter sand and core of a bed, or the one material it is made of. */
function strata(bed: Bed, thickness: number): { conductivity: number; thickness: number }[] {
  const { filter, core }: BedLayers = BEDS[bed];
  const below = core && filter !== 'fabric' ? Math.min(FILTER_THICKNESS, thickness) : 0;
  const sand = below > 0 ? [{ conductivity: CONDUCTIVITY[filter as Granular], thickness: below }] : [];
  const rest = { conductivity: CONDUCTIVITY[core ?? (filter as Granular)], thickness: thickness - below };
  return rest.thickness > 0 ? [...sand, rest] : sand;
}

/** Spacing of pipes in a bed for a head limit. */
export const blanketSpacing = formula({
  title: 'Spacing of pipes in a drainage bed for a head limit',
  symbol: 'e',
  unit: 'm',
  expression: '2*sqrt(2*T*h/q)',
  parameters: {
    T: { meaning: 'conductivity times thickness of the bed', unit: 'm²/s', min: 1e-6, max: 1 },
    h: { meaning: 'head allowed midway', unit: 'm', min: 0.001, max: 1 },
    q: { meaning: 'inflow per area', unit: 'm/s', min: 1e-12, max: 1e-3 },
  },
  compute: (T: number, h: number, q: number) => 2 * Math.sqrt((2 * T * h) / q),
  validity: 'bed level, evenly fed; inverse of the loss in a blanket',
  source: 'Darcy with uniform inflow, integrated',
});

/** Middles of equal parts of a width, from the middle of it, m. */
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
 * Layout for a floor, see {@link layoutMethod}.
 * @param floorLength - m
 * @param floorWidth - m
 * @param bed - what the bed is made of
 * @param fromBelow - inflow that rises evenly under the floor, m³/s
 * @param fromSides - inflow that comes down the sides, m³/s
 * @param headLimit - allowed above the pipes, m
 */
export function layoutOf(
  floorLength: number,
  floorWidth: number,
  bed: Bed,
  { fromBelow, fromSides }: { fromBelow: number; fromSides: number },
  headLimit = BED_LOSS,
): Layout {
  const area = floorLength * floorWidth;
  const spacingFor = (q: number) =>
    blanketSpacing.compute(transmissivity(bed), headLimit, Math.max(q, 1e-12));
  const evenly = (fromBelow + 2 * fromSides) / area;
  const allowed = spacingFor(evenly);
  if (floorWidth <= allowed)
    return { kind: 'spine', length: floorLength, branches: 0, spacing: floorWidth, allowed, evenly };
  const below = fromBelow / area;
  if (floorWidth <= spacingFor(below))
    return {
      kind: 'ring',
      length: 2 * (floorLength + floorWidth),
      branches: 0,
      spacing: floorWidth,
      allowed: spacingFor(below),
      evenly: below,
    };
  // Branches closer than half a metre are no drain but a second bed.
  const branches = Math.ceil(floorLength / Math.max(allowed, 0.5));
  return {
    kind: 'herringbone',
    length: floorLength + branches * floorWidth,
    branches,
    spacing: floorLength / branches,
    allowed,
    evenly,
  };
}
