import { formula, method } from '../formula/index.js';
import { BEDS, type Bed, type Granular } from './envelope.js';

export const layoutMethod = method({
  title: 'Layout of the pipes in the bed',
  what:
    'One pipe along the middle of the floor (spine); where the bed cannot bring the water to it within the head limit, ' +
    'branches to both sides at the spacing the bed allows (herringbone).',
  assumptions: [
    'a round or oval floor counted by its length and width',
    'the farthest point of a spine is half the width away, that of a branch half the spacing',
    'a pipe around the foot of the sides (ring) serves no better under the floor; it is offered where storm water comes down the ring',
  ],
  source: 'Darcy with uniform inflow; common practice',
});

/** Thickness of the bed under the floor, m. Common practice: pipe and cover. */
export const BED_THICKNESS = 0.15;
/** Filter sand under a core of gravel, m. Common practice: 50 mm, as little as can be spread. */
export const FILTER_THICKNESS = 0.05;
/** Head kept in the bed above the pipe's invert, m: a pipe half full and the bed's own loss. */
export const BED_LOSS = 0.03;

/** Conductivity of washed sand and stone, m/s; right within a factor of about 3. Common practice. */
const CONDUCTIVITY: Record<Granular, number> = {
  'masonry sand': 1.5e-4,
  'concrete sand': 3e-4,
  'pea gravel': 2e-2,
  '20 mm stone': 1e-1,
};

/** Conductivity times thickness of a bed, m²/s; a drainage mat's own figure is put in its place. */
export function transmissivity(bed: Bed): number {
  const { filter, core } = BEDS[bed];
  const below = core && filter !== 'fabric' ? FILTER_THICKNESS : 0;
  const sand = below > 0 ? CONDUCTIVITY[filter as Granular] * below : 0;
  return sand + CONDUCTIVITY[core ?? (filter as Granular)] * (BED_THICKNESS - below);
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

/** Pipes laid in the bed. */
export interface Layout {
  kind: 'spine' | 'herringbone';
  /** perforated pipe, m */
  length: number;
  /** branches on each side */
  branches: number;
  /** between pipes, or the width of the floor for a spine, m */
  spacing: number;
  /** at which the head limit is just kept, m */
  allowed: number;
}

/**
 * Layout for a floor, see {@link layoutMethod}.
 * @param floorLength - m
 * @param floorWidth - m
 * @param bed - what the bed is made of
 * @param inflow - reaching it, m³/s
 * @param headLimit - allowed above the pipes, m
 */
export function layoutOf(
  floorLength: number,
  floorWidth: number,
  bed: Bed,
  inflow: number,
  headLimit = BED_LOSS,
): Layout {
  const q = Math.max(inflow / (floorLength * floorWidth), 1e-12);
  const allowed = blanketSpacing.compute(transmissivity(bed), headLimit, q);
  if (floorWidth <= allowed)
    return { kind: 'spine', length: floorLength, branches: 0, spacing: floorWidth, allowed };
  // Branches closer than half a metre are no drain but a second bed.
  const branches = Math.ceil(floorLength / Math.max(allowed, 0.5));
  return {
    kind: 'herringbone',
    length: floorLength + branches * floorWidth,
    branches,
    spacing: floorLength / branches,
    allowed,
  };
}
