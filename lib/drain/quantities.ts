import { formula } from '../formula/index.js';
import { CLAY_SWELL } from './earthworks.js';
import { BEDS, type Bed, type BedLayers } from './envelope.js';
import { BED_THICKNESS, FILTER_THICKNESS, GROOVE_WIDTH, type Layout, MAT_THICKNESS } from './layout.js';
import { MOUTH, pipeRun } from './outlet.js';
import { SUMP_SIDE } from './sump.js';

/** Something to buy, to make or to cart away. */
export interface DrainQuantity {
  item: string;
  amount: number;
  unit: string;
  /** length and width of a sheet in one piece, m */
  sides_m?: [number, number];
}

/** Side of a sheet that lines a pond. */
export const sheetSide = formula({
  title: 'Length of a sheet that lines a pond',
  symbol: 'l',
  unit: 'm',
  expression: 'a + 2*d*(sqrt(1 + m^2) - m) + 2*o',
  parameters: {
    a: { meaning: 'length of the pond at the rim', unit: 'm', min: 0.5, max: 100 },
    d: { meaning: 'depth', unit: 'm', min: 0, max: 5 },
    m: { meaning: 'slope of the sides, horizontal to 1 vertical', unit: '-', min: 0, max: 5 },
    o: { meaning: 'overlap at the rim', unit: 'm', min: 0, max: 1 },
  },
  compute: (a: number, d: number, m: number, o: number) => a + 2 * d * (Math.sqrt(1 + m ** 2) - m) + 2 * o,
  validity:
    'sides of one slope; a level shelf takes as much of the floor as it adds; for upright sides the common rule of length plus twice the depth',
  source: 'geometry',
});

/** Waste and laps over what is measured, as a share of it. Common practice. */
export const WASTE = { pipe: 0.05, granular: 0.1, fabric: 0.15 };
/** Sand turned up behind the sides, m. Common practice. */
export const SIDE_BLANKET = 0.1;
/** Flattest side on which sand stays, horizontal to 1 vertical; a steeper one takes a drainage mat. Common practice. */
const SAND_STAYS = 1.5;
/** All that is dug, as it is carried. */
export const SPOIL = 'spoil of all that is dug, loose (30 % swell)';
/** The liner goes up above the full pond, m. Common practice. */
export const FREEBOARD = 0.1;
/** Liner laid over the rim, m: about 1 ft. Common practice. */
const OVERLAP = 0.3;
/** Trench of the run, m. Common practice. */
const TRENCH = { width: 0.3, depth: 0.6 };
/** A sump stands so far outside the rim, and a pumped line lies so deep, m. Common practice. */
export const BESIDE = 0.5;
const PUMPED_DEPTH = 0.3;
/** Length in which stiff pipe is sold, m. Common practice. */
const STICK = 6;

/** What the quantities are counted from, SI. */
export interface QuantityInput {
  /** m², level; and of the sides along their slope */
  floorArea: number;
  sideArea: number;
  /** horizontal to 1 vertical; absent: flat enough for sand */
  sideSlope?: number;
  bed: Bed;
  layout: Layout;
  /** as it is asked for in the shop */
  pipe: string;
  /** and the way there from the pond's edge, m: of the run, or of the pumped line; level at which that ends, m above the ground */
  end: { kind: 'outlet' | 'sump'; distance: number; discharge?: number };
  /** from the ground to the bottom of the sump, m; absent for an outlet */
  sumpDepth?: number;
  /** mean depth of the trench of the run from the rim to the mouth, m */
  trenchDepth?: number;
  /** from the foot of the side to the rim, level, m */
  underSide?: number;
  /**
   * Length and width at the lowest ground, depth below it and edge of the liner above it, m, and the hole as it lies, m³;
   * with it sheets and hole are counted too.
   */
  pond?: { length: number; width: number; depth: number; sideSlope: number; edge: number; hole: number };
}

/**
 * What a drain makes to be dug beside the pond's own hole: bed, sand behind the sides, trenches and sump.
 * @param input - layout, bed and end, SI; see {@link QuantityInput}
 * @returns as it lies, m³
 */
export function drainDug(input: QuantityInput): number {
  const { floorArea, layout, end, sumpDepth = 0, underSide = 0, trenchDepth = TRENCH.depth } = input;
  const { filter, mat }: BedLayers = BEDS[input.bed];
  const trench = layout.length * GROOVE_WIDTH;
  const bed = mat
    ? floorArea * MAT_THICKNESS + trench * BED_THICKNESS
    : floorArea * BED_THICKNESS + (filter === 'fabric' ? 0 : trench * FILTER_THICKNESS);
  // Under a side the trench is as deep as the bed at its foot and as its depth at the rim at its top.
  const under = (atRim: number) => (underSide * (BED_THICKNESS + atRim)) / 2;
  const cut =
    end.kind === 'outlet'
      ? under(Math.max(2 * trenchDepth - MOUTH, BED_THICKNESS)) + end.distance * trenchDepth
      : under(sumpDepth) + BESIDE * sumpDepth + end.distance * PUMPED_DEPTH;
  return bed + sideSand(input) + TRENCH.width * cut + (end.kind === 'sump' ? SUMP_SIDE ** 2 * sumpDepth : 0);
}

const isSteep = ({ sideSlope = SAND_STAYS }: QuantityInput) => sideSlope < SAND_STAYS;

/** Sand behind the sides, m³; none where they are too steep for it or a mat lies there. */
function sideSand(input: QuantityInput): number {
  return isSteep(input) || (BEDS[input.bed] as BedLayers).mat ? 0 : input.sideArea * SIDE_BLANKET;
}

/**
 * Everything to buy and dig for a drain and the sheets over it, with waste, laps and swell.
 * @param input - layout, bed, pipe, end and pond, SI; see {@link QuantityInput}
 * @returns items with amount in m, m², m³ or pieces
 */
export function quantitiesOf(input: QuantityInput): DrainQuantity[] {
  const { floorArea, sideArea, bed, layout, pipe, end, pond } = input;
  const { filter, core, mat: floorMat }: BedLayers = BEDS[bed];
  const steep = isSteep(input);
  const thick = core && filter !== 'fabric' ? FILTER_THICKNESS : core ? 0 : BED_THICKNESS;
  // The sand dips under the pipe, whose lowest point lies at the underside of the bed; what lies on it fills the groove.
  const groove = filter === 'fabric' ? 0 : layout.length * GROOVE_WIDTH * FILTER_THICKNESS;
  const sand = floorArea * thick + (core ? 0 : groove) + sideSand(input);
  // Under a mat the stone lies in a trench around the pipe only.
  const trench = layout.length * GROOVE_WIDTH;
  const gravel = core ? (floorMat ? trench : floorArea) * (BED_THICKNESS - thick) + groove : 0;
  const { sumpDepth = 0, underSide = 0 } = input;
  const list: DrainQuantity[] = [];
  const add = (item: string, amount: number, unit: string) => {
    if (amount > 0) list.push({ item, amount, unit });
  };
  const granular = (v: number) => v * (1 + WASTE.granular);
  const sides = filter === 'fabric' ? 'concrete sand' : filter;
  add(`perforated pipe, ${pipe}, 5 % waste`, layout.length * (1 + WASTE.pipe), 'm');
  const solid = end.kind === 'outlet' ? pipeRun(end, underSide) : underSide + BESIDE;
  const to = end.kind === 'outlet' ? '' : ', to the sump';
  add(`solid pipe, ${pipe}${to}, 5 % waste`, solid * (1 + WASTE.pipe), 'm');
  if (end.kind === 'sump') {
    const rise = sumpDepth + Math.max(end.discharge ?? 0, -PUMPED_DEPTH);
    add('pressure pipe, 40 mm (1 1/2 in), 5 % waste', (end.distance + rise) * (1 + WASTE.pipe), 'm');
  }
  add(
    'couplings, bends and branches',
    2 +
      (layout.kind === 'ring' ? 4 : 2 * layout.branches) +
      Math.floor((end.kind === 'outlet' ? solid : end.distance) / STICK),
    'piece',
  );
  const where = steep ? 'for the bed' : thick > 0 ? 'for the bed and behind the sides' : 'behind the sides';
  add(`${sides} ${where}, 10 % waste`, granular(sand), 'm³');
  if (core) add(`${core}, washed, around the pipe, 10 % waste`, granular(gravel), 'm³');
  const sheet = (area: number) => area * (1 + WASTE.fabric);
  if (floorMat) {
    add(
      'drainage mat with fabric on both faces, floor and sides, 15 % laps',
      sheet(floorArea + sideArea),
      'm²',
    );
    // Round the stone: over the bottom and up both sides of the trench.
    add(
      'drainage fabric in the trench of the pipe, 15 % laps',
      sheet(layout.length * (GROOVE_WIDTH + 2 * BED_THICKNESS)),
      'm²',
    );
  } else {
    if (filter === 'fabric') add('drainage fabric between clay and bed, 15 % laps', sheet(floorArea), 'm²');
    if (steep) add('drainage mat with fabric on it behind the sides, 15 % laps', sheet(sideArea), 'm²');
  }
  if (!floorMat) add('filter fabric under the liner, 15 % laps', sheet(floorArea + sideArea), 'm²');
  if (pond) {
    // The sides go on at their slope up to the edge of the liner.
    const { depth, sideSlope, edge } = pond;
    const side = (a: number) => sheetSide.compute(a + 2 * sideSlope * edge, depth + edge, sideSlope, OVERLAP);
    const sides: [number, number] = [side(pond.length), side(pond.width)];
    const liner = sides[0] * sides[1];
    list.push({
      item: 'liner, one sheet with 0.3 m (1 ft) over the rim',
      amount: liner,
      unit: 'm²',
      sides_m: sides,
    });
    add('protection fleece under the liner, 15 % laps', sheet(liner), 'm²');
  }
  add('inspection pipe to the surface, with cap', 1, 'piece');
  add(SPOIL, (1 + CLAY_SWELL) * ((pond?.hole ?? 0) + drainDug(input)), 'm³');
  if (end.kind === 'outlet') {
    add('flap valve', 1, 'piece');
    add('animal guard', 1, 'piece');
    add('flat stone under the mouth', 1, 'piece');
  } else {
    add('sump chamber with lid', 1, 'piece');
    add('drainage pump', 2, 'piece');
    add('non-return valve', 2, 'piece');
    add('high-water alarm with battery', 1, 'piece');
  }
  return list;
}
