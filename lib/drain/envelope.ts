import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { fabricDoubtful, fabricRule } from './fabric.js';
import {
  type BaseSoil,
  FILTER_LIMITS,
  FINES_SIZE,
  filterBand,
  largestD90,
  retentionCoarse,
} from './filterBand.js';
import { type CurvePoint, finerThan, sieveCurve, sizeFiner, soilCurve } from './gradation.js';

const size = (meaning: string) => ({ meaning, unit: 'm', min: 1e-7, max: 0.2 });

/** A size that is allowed over the one there is. */
export const sizeReserve = formula({
  title: 'Size that is allowed over the size there is',
  symbol: 'n',
  unit: '-',
  expression: 'a/d',
  parameters: { a: size('size that is allowed'), d: size('size of what is laid') },
  compute: (a: number, d: number) => a / d,
  validity: '1 and more keeps the soil or the grains back',
  source: 'FHWA HDS-6; NRCS NEH 633 chapter 26',
});

/** The lesser of two reserves. */
export const lesserReserve = formula({
  title: 'The lesser of two reserves',
  symbol: 'n',
  unit: '-',
  expression: 'min(a, b)',
  parameters: {
    a: { meaning: 'filter on the soil', unit: '-', min: 0, max: 1000 },
    b: { meaning: 'stone on the filter', unit: '-', min: 0, max: 1000 },
  },
  compute: (a: number, b: number) => Math.min(a, b),
  validity: 'each layer on the one below it',
  source: 'definition',
});

/** Width of slots that grains bridge. */
export const slotAllowed = formula({
  title: 'Width of slots that the grains around them bridge',
  symbol: 's',
  unit: 'm',
  expression: 'd/1.2',
  parameters: { d: size('D85 of what lies around the pipe') },
  compute: (d: number) => d / 1.2,
  validity: 'slots; holes may be as wide as D85',
  source: 'EM 1110-2-1901 for openings, read in a teaching sheet',
});

export const envelopeMethod = method({
  title: 'What may lie on the soil',
  what: "What a builder's merchant sells, judged as the layer that touches the soil and as the one around the pipe.",
  assumptions: [
    'granular layers by the NRCS band, in the middle of their grading',
    'a second layer on a first one by the granular rule: D15 at most 4 times D85 below it',
    'fabric by AASHTO M 288; apparent opening of the fabric bought 0.15 mm (No. 100 sieve), permittivity 1 1/s',
    'fabric straight on soil with more than 85 % fines keeps it out but may clog: said, and sand chosen where it serves',
    'pipe slots at most 1/1.2 of the D85 around them, holes at most D85',
  ],
  source: 'NRCS NEH 633 chapter 26; AASHTO M 288; EM 1110-2-1901 for openings, read in a teaching sheet',
});

/**
 * Grading of what is sold, middle of the band: sizes in m and shares finer, 0–1. Concrete sand: ASTM C33 Table 1, and No. 57 stone
 * for '20 mm stone' (both read in copies); masonry sand ASTM C144 and pea gravel (No. 8 stone) from memory.
 */
export const GRADINGS = {
  'masonry sand': sieveCurve([
    [0.075, 2],
    [0.15, 8],
    [0.3, 22],
    [0.6, 57],
    [1.18, 85],
    [2.36, 97],
    [4.75, 100],
  ]),
  'concrete sand': sieveCurve([
    [0.075, 1.5],
    [0.15, 5],
    [0.3, 17.5],
    [0.6, 42.5],
    [1.18, 67.5],
    [2.36, 90],
    [4.75, 97.5],
    [9.5, 100],
  ]),
  'pea gravel': sieveCurve([
    [1.18, 2.5],
    [2.36, 5],
    [4.75, 20],
    [9.5, 92.5],
    [12.7, 100],
  ]),
  '20 mm stone': sieveCurve([
    [2.36, 2.5],
    [4.75, 5],
    [12.7, 42.5],
    [25.4, 97.5],
    [38.1, 100],
  ]),
} as const;
/** A grading by its name in the trade. */
export type Granular = keyof typeof GRADINGS;

/** Apparent opening size of the fabric bought, m: No. 100 sieve. Common practice. */
const FABRIC_OPENING = 1.5e-4;
/** Its permittivity, 1/s. Common practice. */
const FABRIC_PERMITTIVITY = 1;

/** Layers of a bed: what lies against the soil, and the coarser stuff around the pipe. */
export interface BedLayers {
  filter: Granular | 'fabric';
  core: Granular | undefined;
  /** a mat with fabric on it under the floor; the stone only around the pipe */
  mat?: true;
}

/** Ways to make the bed. */
export const BEDS = {
  'concrete sand': { filter: 'concrete sand', core: undefined },
  'masonry sand': { filter: 'masonry sand', core: undefined },
  'pea gravel on concrete sand': { filter: 'concrete sand', core: 'pea gravel' },
  'pea gravel on masonry sand': { filter: 'masonry sand', core: 'pea gravel' },
  'pea gravel in fabric': { filter: 'fabric', core: 'pea gravel' },
  '20 mm stone in fabric': { filter: 'fabric', core: '20 mm stone' },
  'drainage mat': { filter: 'fabric', core: 'pea gravel', mat: true },
  'pea gravel': { filter: 'pea gravel', core: undefined },
  '20 mm stone': { filter: '20 mm stone', core: undefined },
} as const satisfies Record<string, BedLayers>;
/** What may be laid on the soil, by name. */
export type Bed = keyof typeof BEDS;

/** A heavy clay without a log: 16 % sand, 56 % clay; its d85 is near 0.06 mm, the example soil of NEH 633-26. */
export const HEAVY_CLAY: BaseSoil = { curve: soilCurve(0.16, 0.56) };

/** A bed on a soil, judged. */
export interface EnvelopeVerdict {
  bed: Bed;
  /** what the soil and the layers allow over what is laid; below 1 the soil comes through */
  retention: number;
  /** D15 (fabric: permittivity) over the least at which water still passes more easily than through the soil */
  passage: number;
  /** whether it may clog although it keeps the soil out: fabric straight on very fine clay */
  doubtful: boolean;
  /** what the ground is called by its grains */
  ground: 'clay' | 'soil';
  /** its grains over the coarsest that this ground allows: above 1 it silts up; null: a fabric */
  coarseness: number | null;
}

/** Size of clay, m, and the share of it from which a soil is called clay (USDA: clay loam). */
const CLAY_SIZE = 2e-6;
const CLAYEY = 0.27;

/**
 * Judges a bed on a soil, see {@link envelopeMethod}.
 * @param bed - what is laid
 * @param soil - grain-size curve, and whether it disperses
 * @param use - what evaluates the formulas, for a record
 * @returns how far it keeps the soil out and lets the water through, as ratios of which 1 and more is enough
 */
export function judgeBed(bed: Bed, soil: BaseSoil, use: Use = unrecorded): EnvelopeVerdict {
  const { filter, core }: BedLayers = BEDS[bed];
  const band = filterBand(soil, use);
  const ground = finerThan(soil.curve, CLAY_SIZE) >= CLAYEY ? 'clay' : 'soil';
  if (filter === 'fabric') {
    const rule = fabricRule(band.fines);
    return {
      bed,
      retention: use(sizeReserve, rule.opening, FABRIC_OPENING),
      passage: FABRIC_PERMITTIVITY / rule.permittivity,
      doubtful: fabricDoubtful(band.fines),
      ground,
      coarseness: null,
    };
  }
  const curve = GRADINGS[filter];
  const d15 = sizeFiner(curve, 0.15, use);
  const onSoil = use(sizeReserve, band.largestD15, d15);
  const onFilter = core
    ? use(
        sizeReserve,
        use(retentionCoarse, sizeFiner(curve, 0.85, use)),
        sizeFiner(GRADINGS[core], 0.15, use),
      )
    : Number.POSITIVE_INFINITY;
  const retention = core ? use(lesserReserve, onSoil, onFilter) : onSoil;
  const passage = d15 / Math.max(4 * band.d15, 1e-4);
  return { bed, retention, passage, doubtful: false, ground, coarseness: 1 / onSoil };
}

/** What speaks against a grading as a filter, by name. */
export type GradingFault = 'fines' | 'many-sizes' | 'stones';

/**
 * What speaks against a grading as a filter: fines, gap grading, oversize; empty where nothing does.
 * @param curve - sizes in m and shares finer, 0–1, rising
 * @returns each fault
 */
export function gradingFaults(curve: readonly CurvePoint[]): GradingFault[] {
  const d10 = sizeFiner(curve, 0.1);
  const uniformity = sizeFiner(curve, 0.6) / d10;
  const faults: GradingFault[] = [];
  if (finerThan(curve, FINES_SIZE) > FILTER_LIMITS.fines) faults.push('fines');
  if (uniformity > FILTER_LIMITS.mostUniformity || sizeFiner(curve, 0.9) > largestD90(d10))
    faults.push('many-sizes');
  if (sizeFiner(curve, 1) > FILTER_LIMITS.largest) faults.push('stones');
  return faults;
}

/**
 * What lies around the pipe.
 * @param bed - what is laid
 * @returns the material whose grains meet the openings
 */
export function aroundPipe(bed: Bed): Granular {
  const { filter, core } = BEDS[bed];
  return core ?? filter;
}

/**
 * Openings of a pipe against the layer around it: what the grains allow over what the pipe has.
 * @param bed - what is laid around the pipe
 * @param opening - its kind and size, m, above 0
 * @param use - what evaluates the formulas, for a record
 * @returns ratio; below 1 grains go through
 */
export function openingReserve(
  bed: Bed,
  opening: { kind: 'slot' | 'hole' | 'sock'; size: number },
  use: Use = unrecorded,
): number {
  const d85 = sizeFiner(GRADINGS[aroundPipe(bed)], 0.85, use);
  return use(sizeReserve, opening.kind === 'slot' ? use(slotAllowed, d85) : d85, opening.size);
}
