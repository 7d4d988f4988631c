import { formula, type Use, unrecorded } from '../formula/index.js';
import { FOOT } from '../units/index.js';
import { layerVolume, pitVolume, together, trenchLining, trenchVolume, withWaste } from './amounts.js';
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
const TRENCH = { width: 0.3, atRim: 0.9 };
/** A sump stands so far outside the rim, and a pumped line lies so deep, m. Common practice. */
export const BESIDE = 0.5;
const PUMPED_DEPTH = 0.3;
/** The United States gallon. */
const LITRES_A_GALLON = 3.785411784;
/** Length in which stiff pipe is sold, m. Common practice. */
const STICK = 6;

/** Depth of the trench of a run where it leaves the pond. */
export const runAtRim = formula({
  title: 'Depth of the trench at the rim',
  symbol: 'a',
  unit: 'm',
  expression: 'max(-z, M)',
  parameters: {
    z: { meaning: 'level of the drain', unit: 'm', min: -10, max: 10 },
    M: { meaning: 'depth at its mouth', unit: 'm', min: 0, max: 2 },
  },
  compute: (z: number, M: number) => Math.max(-z, M),
  validity: 'below the lowest ground at the rim',
  source: 'geometry',
});

/** Depth of a pit for a sump. */
export const sumpDug = formula({
  title: 'Depth of the pit of the sump',
  symbol: 'D',
  unit: 'm',
  expression: 't - f + s',
  parameters: {
    t: { meaning: 'thickness of the bed', unit: 'm', min: 0, max: 1 },
    f: { meaning: "level of the liner's lowest point", unit: 'm', min: -10, max: 10 },
    s: { meaning: 'below the bed: what the pump starts and stops between', unit: 'm', min: 0, max: 3 },
  },
  compute: (t: number, f: number, s: number) => t - f + s,
  validity: 'below the lowest ground at the rim',
  source: 'geometry',
});

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
  /** pipe in the bed from a spine to the long side by which it leaves, m; absent or nought: it leaves by an end */
  sideBranch?: number;
  /** depth of the trench of the run at the rim, m */
  trenchAtRim?: number;
  /** from the foot of the side to the rim, level, m */
  underSide?: number;
  /** what the pump of a sump was reckoned with: flow, m³/s, and lift with losses, m; absent for an outlet */
  duty?: { flow: number; head: number };
}

/**
 * What a drain makes to be dug beside the pond's own hole: bed, sand behind the sides, trenches and sump.
 * @param input - layout, bed and end, SI; see {@link QuantityInput}
 * @param use - what evaluates the formulas, for a record
 * @returns before it is loosened, m³
 */
export function drainDug(input: QuantityInput, use: Use = unrecorded): number {
  const { floorArea, end, sumpDepth = 0 } = input;
  const { filter, mat }: BedLayers = BEDS[input.bed];
  const groove = mat ? BED_THICKNESS : filter === 'fabric' ? 0 : FILTER_THICKNESS;
  return together(
    'm³',
    [
      use(layerVolume, floorArea, mat ? MAT_THICKNESS : BED_THICKNESS),
      alongPipe(input, groove, use),
      sideSand(input, use),
      drainRefilled(input, use),
      end.kind === 'sump' ? use(pitVolume, SUMP_SIDE, sumpDepth) : 0,
    ],
    use,
  );
}

/**
 * The trenches of the pipe past its bed, which are filled again with what was dug.
 * @param input - lengths and depths, SI; see {@link QuantityInput}
 * @param use - what evaluates the formulas, for a record
 * @returns before it is loosened, m³
 */
export function drainRefilled(input: QuantityInput, use: Use = unrecorded): number {
  const { end, sumpDepth = 0, underSide = 0, trenchAtRim = TRENCH.atRim } = input;
  const trench = (length: number, from: number, to: number) =>
    length === 0 ? 0 : use(trenchVolume, length, TRENCH.width, from, to);
  // Under a side the trench is as deep as the bed at its foot and as its depth at the rim at its top.
  return together(
    'm³',
    end.kind === 'outlet'
      ? [trench(underSide, BED_THICKNESS, trenchAtRim), trench(end.distance, trenchAtRim, MOUTH)]
      : [
          trench(underSide, BED_THICKNESS, sumpDepth),
          trench(BESIDE, sumpDepth, sumpDepth),
          trench(end.distance, PUMPED_DEPTH, PUMPED_DEPTH),
        ],
    use,
  );
}

/** A groove under the pipe, or the stone around it where a mat lies on that, m³. */
const alongPipe = (input: QuantityInput, depth: number, use: Use) =>
  depth === 0 ? 0 : use(trenchVolume, inBed(input, use), GROOVE_WIDTH, depth, depth);

/** All pipe in the bed, m. */
const inBed = ({ layout, sideBranch = 0 }: QuantityInput, use: Use) =>
  together('m', [layout.length, sideBranch], use);

const isSteep = ({ sideSlope = SAND_STAYS }: QuantityInput) => sideSlope < SAND_STAYS;

/** Sand behind the sides, m³; none where they are too steep for it or a mat lies there. */
function sideSand(input: QuantityInput, use: Use): number {
  return isSteep(input) || (BEDS[input.bed] as BedLayers).mat
    ? 0
    : use(layerVolume, input.sideArea, SIDE_BLANKET);
}

/**
 * Everything to buy for a drain, with waste and laps.
 * @param input - layout, bed, pipe and end, SI; see {@link QuantityInput}
 * @param use - what evaluates the formulas, for a record
 * @returns items with amount in m, m², m³ or pieces
 */
export function quantitiesOf(input: QuantityInput, use: Use = unrecorded): DrainQuantity[] {
  const { floorArea, sideArea, bed, layout, pipe, end, duty, sideBranch = 0 } = input;
  const { filter, core, mat: floorMat }: BedLayers = BEDS[bed];
  const steep = isSteep(input);
  const thick = core && filter !== 'fabric' ? FILTER_THICKNESS : core ? 0 : BED_THICKNESS;
  // The sand dips under the pipe, whose lowest point lies at the underside of the bed; what lies on it fills the groove.
  const groove = filter === 'fabric' ? 0 : alongPipe(input, FILTER_THICKNESS, use);
  const layer = (thickness: number) => (thickness === 0 ? 0 : use(layerVolume, floorArea, thickness));
  const sand = together('m³', [layer(thick), core ? 0 : groove, sideSand(input, use)], use);
  // Under a mat the stone lies in a trench around the pipe only.
  const stone = BED_THICKNESS - thick;
  const gravel = core
    ? together('m³', [floorMat ? alongPipe(input, stone, use) : layer(stone), groove], use)
    : 0;
  const { sumpDepth = 0, underSide = 0 } = input;
  const list: DrainQuantity[] = [];
  const add = (item: string, amount: number, unit: string) => {
    if (amount > 0) list.push({ item, amount, unit });
  };
  const piped = (length: number) => use(withWaste.m, length, WASTE.pipe);
  const granular = (v: number) => (v === 0 ? 0 : use(withWaste['m³'], v, WASTE.granular));
  const sides = filter === 'fabric' ? 'concrete sand' : filter;
  add(`perforated pipe, ${pipe}, 5 % waste`, piped(inBed(input, use)), 'm');
  const solid =
    end.kind === 'outlet' ? pipeRun(end, underSide, use) : together('m', [underSide, BESIDE], use);
  const to = end.kind === 'outlet' ? '' : ', to the sump';
  add(`solid pipe, ${pipe}${to}, 5 % waste`, piped(solid), 'm');
  if (end.kind === 'sump') {
    const line = together('m', [end.distance, sumpDepth, Math.max(end.discharge ?? 0, -PUMPED_DEPTH)], use);
    add('pressure pipe, 40 mm (1 1/2 in), 5 % waste', piped(line), 'm');
  }
  add(
    'couplings, bends and branches',
    2 +
      (layout.kind === 'ring' ? 4 : 2 * layout.branches + (sideBranch > 0 ? 1 : 0)) +
      Math.floor((end.kind === 'outlet' ? solid : end.distance) / STICK),
    'piece',
  );
  const where = steep ? 'for the bed' : thick > 0 ? 'for the bed and behind the sides' : 'behind the sides';
  add(`${sides} ${where}, 10 % waste`, granular(sand), 'm³');
  if (core) add(`${core}, washed, around the pipe, 10 % waste`, granular(gravel), 'm³');
  const sheet = (...areas: number[]) => use(withWaste['m²'], together('m²', areas, use), WASTE.fabric);
  if (floorMat) {
    add(
      'drainage mat with fabric on both faces, floor and sides, 15 % laps',
      sheet(floorArea, sideArea),
      'm²',
    );
    // Round the stone: over the bottom and up both sides of the trench.
    add(
      'drainage fabric in the trench of the pipe, 15 % laps',
      sheet(use(trenchLining, inBed(input, use), GROOVE_WIDTH, BED_THICKNESS)),
      'm²',
    );
  } else {
    if (filter === 'fabric') add('drainage fabric between clay and bed, 15 % laps', sheet(floorArea), 'm²');
    if (steep) add('drainage mat with fabric on it behind the sides, 15 % laps', sheet(sideArea), 'm²');
  }
  if (!floorMat) add('filter fabric under the liner, 15 % laps', sheet(floorArea, sideArea), 'm²');
  // A spine that leaves by the long side has a head at either end.
  add('inspection pipe to the surface, with cap', sideBranch > 0 ? 2 : 1, 'piece');
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
