import { formula } from '../formula/index.js';
import { CLAY_SWELL } from './earthworks.js';
import { BEDS, type Bed, type BedLayers } from './envelope.js';
import { BED_THICKNESS, FILTER_THICKNESS, GROOVE_WIDTH, type Layout, MAT_THICKNESS } from './layout.js';
import { SUMP_SIDE } from './sump.js';

/** Something to buy, to make or to cart away. */
export interface DrainQuantity {
  item: string;
  amount: number;
  unit: string;
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
  validity: 'even sides without shelves; for upright sides the common rule of length plus twice the depth',
  source: 'geometry',
});

/** Waste and laps over what is measured, as a share of it. Common practice. */
export const WASTE = { pipe: 0.05, granular: 0.1, fabric: 0.15 };
/** Sand turned up behind the sides, m. Common practice. */
export const SIDE_BLANKET = 0.1;
/** Flattest side on which sand stays, horizontal to 1 vertical; a steeper one takes a drainage mat. Common practice. */
const SAND_STAYS = 1.5;
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
  /** and the way there, m: of the run, or of the pumped line */
  end: { kind: 'outlet' | 'sump'; distance: number };
  /** from the ground to the bottom of the sump, m; absent for an outlet */
  sumpDepth?: number;
  /** mean depth of the trench of the run, m */
  trenchDepth?: number;
  /** at the rim, m; with it the sheets are counted too */
  pond?: { length: number; width: number; depth: number; sideSlope: number };
}

/**
 * Everything to buy and dig for a drain and the sheets over it, with waste, laps and swell.
 * @param input - layout, bed, pipe, end and pond, SI; see {@link QuantityInput}
 * @returns items with amount in m, m², m³ or pieces
 */
export function quantitiesOf(input: QuantityInput): DrainQuantity[] {
  const { floorArea, sideArea, bed, layout, pipe, end, pond } = input;
  const { filter, core, mat: floorMat }: BedLayers = BEDS[bed];
  const steep = (input.sideSlope ?? SAND_STAYS) < SAND_STAYS;
  const sideSand = steep || floorMat ? 0 : sideArea * SIDE_BLANKET;
  const thick = core && filter !== 'fabric' ? FILTER_THICKNESS : core ? 0 : BED_THICKNESS;
  // The sand dips under the pipe, whose lowest point lies at the underside of the bed; what lies on it fills the groove.
  const groove = filter === 'fabric' ? 0 : layout.length * GROOVE_WIDTH * FILTER_THICKNESS;
  const sand = floorArea * thick + (core ? 0 : groove) + sideSand;
  // Under a mat the stone lies in a trench around the pipe only.
  const trench = layout.length * GROOVE_WIDTH;
  const gravel = core ? (floorMat ? trench : floorArea) * (BED_THICKNESS - thick) + groove : 0;
  const bedDug = floorMat
    ? floorArea * MAT_THICKNESS + trench * BED_THICKNESS
    : floorArea * BED_THICKNESS + groove;
  const { sumpDepth = 0 } = input;
  // Under the side of the pond and the half metre beside it.
  const toSump = (pond ? pond.sideSlope * pond.depth : 0) + BESIDE;
  const run =
    end.kind === 'outlet'
      ? end.distance * TRENCH.width * (input.trenchDepth ?? TRENCH.depth)
      : SUMP_SIDE ** 2 * sumpDepth + TRENCH.width * (toSump * sumpDepth + end.distance * PUMPED_DEPTH);
  const dug = bedDug + sideSand + run;
  const list: DrainQuantity[] = [];
  const add = (item: string, amount: number, unit: string) => {
    if (amount > 0) list.push({ item, amount, unit });
  };
  const granular = (v: number) => v * (1 + WASTE.granular);
  const sides = filter === 'fabric' ? 'concrete sand' : filter;
  add(`perforated pipe, ${pipe}, 5 % waste`, layout.length * (1 + WASTE.pipe), 'm');
  if (end.kind === 'outlet') add(`solid pipe, ${pipe}, 5 % waste`, end.distance * (1 + WASTE.pipe), 'm');
  else {
    add(`solid pipe, ${pipe}, to the sump, 5 % waste`, toSump * (1 + WASTE.pipe), 'm');
    add('pressure pipe, 40 mm (1 1/2 in), 5 % waste', end.distance * (1 + WASTE.pipe), 'm');
  }
  add(
    'couplings, bends and branches',
    2 + (layout.kind === 'ring' ? 4 : 2 * layout.branches) + Math.floor(end.distance / STICK),
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
    const side = (a: number) => sheetSide.compute(a, pond.depth, pond.sideSlope, OVERLAP);
    const liner = side(pond.length) * side(pond.width);
    add('liner, one sheet with 0.3 m (1 ft) over the rim', liner, 'm²');
    add('protection fleece under the liner, 15 % laps', sheet(liner), 'm²');
  }
  add('inspection pipe to the surface, with cap', 1, 'piece');
  add('extra spoil, loose (30 % swell)', (1 + CLAY_SWELL) * dug, 'm³');
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
