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

/** Waste and laps over what is measured, as a share of it. Common practice. */
export const WASTE = { pipe: 0.05, granular: 0.1, fabric: 0.15 };
/** Sand turned up behind the sides, m. Common practice. */
export const SIDE_BLANKET = 0.1;
/** Flattest side on which sand stays, horizontal to 1 vertical; a steeper one takes a drainage mat. Common practice. */
const SAND_STAYS = 1.5;
/** Trench of the run, m. Common practice. */
const TRENCH = { width: 0.3, depth: 0.6 };
/** A sump stands so far outside the rim, and a pumped line lies so deep, m. Common practice. */
export const BESIDE = 0.5;
const PUMPED_DEPTH = 0.3;
const FOOT = 0.3048;
/** The United States gallon. */
const LITRES_A_GALLON = 3.785411784;
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
  /** what the pump of a sump was reckoned with: flow, m³/s, and lift with losses, m; absent for an outlet */
  duty?: { flow: number; head: number };
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
 * Everything to buy for a drain, with waste and laps.
 * @param input - layout, bed, pipe and end, SI; see {@link QuantityInput}
 * @returns items with amount in m, m², m³ or pieces
 */
export function quantitiesOf(input: QuantityInput): DrainQuantity[] {
  const { floorArea, sideArea, bed, layout, pipe, end, duty } = input;
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
  add('inspection pipe to the surface, with cap', 1, 'piece');
  if (end.kind === 'outlet') {
    add('flap valve', 1, 'piece');
    add('animal guard', 1, 'piece');
    add('flat stone under the mouth', 1, 'piece');
  } else {
    const side = inBoth(SUMP_SIDE);
    add(`sump chamber with lid, ${side} square, ${inBoth(sumpDepth)} deep`, 1, 'piece');
    add(`drainage pump${duty ? `, at least ${dutyWords(duty)}` : ''}`, 2, 'piece');
    add('non-return valve', 2, 'piece');
    add('high-water alarm with battery', 1, 'piece');
  }
  return list;
}

/** A length up to the next step of a rule, in both systems. */
const inBoth = (metres: number) =>
  `${(Math.ceil(metres * 10 - 1e-9) / 10).toFixed(1)} m (${Math.ceil((metres / FOOT) * 2 - 1e-9) / 2} ft)`;

/** What is asked of a pump in the shop, down to what it was reckoned with. */
function dutyWords({ flow, head }: { flow: number; head: number }): string {
  const minute = flow * 60_000;
  return `${Math.round(minute)} L (${Math.round(minute / LITRES_A_GALLON)} gal) a minute at ${inBoth(head)} of lift`;
}
