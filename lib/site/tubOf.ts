import { type ClimateRecord, HARD_SURFACE_FILM, runHardSurface } from '../climate/index.js';
import { formula, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import {
  CAP_LEAK,
  type ColumnSeries,
  type GroundAround,
  ringFlow,
  type TubDrain,
  type TubGeometry,
  tubBottom,
  tubLoses,
  tubVolume,
} from '../groundwater/index.js';
import { RUNOFF_COEFFICIENT, WOODLAND_SHARE } from '../soil/index.js';
import type { SiteFacts, Survey, Warning } from '../survey/index.js';
import { formatQuantity } from '../units/index.js';
import { outline, planArea } from '../uplift/index.js';
import type { Assumptions } from './assumptions.js';
import type { Places } from './places.js';
import type { Pond } from './pond.js';

/** Drainable porosity of what a ring is filled with. Common practice; loosened clay from its table, doubled. */
const FILL_POROSITY = { clay: 0.06, topsoil: 0.12, sand: 0.25, gravel: 0.35 };
/** Water between field capacity and half the wilting point in the top 0.1 m (FAO-56 eq. 73, Table 19 rounded), m. */
const FILL_HOLD = { clay: 0.02, topsoil: 0.02, sand: 0.01, gravel: 0 };
const BED_POROSITY = { none: 0, sand: 0.25, gravel: 0.35, mat: 0.8 };
/** Slack between liner and clay where bedding has no ring around it, m. Common practice. */
const LINER_EDGE = 0.01;

/** Permeability of what a ring is filled with, m/s: towards the tight end of Freeze & Cherry 1979, Table 2.2 (from memory). */
const FILL_PERMEABILITY = { clay: 1e-7, topsoil: 5e-6, sand: 1e-4, gravel: 3e-3 };

/** Area of the ring from above. */
export const ringFrom = formula({
  title: 'Area of the dug ring from above',
  symbol: 'R',
  unit: 'm²',
  expression: 'P*max(w, 0.01)',
  parameters: {
    P: { meaning: 'outline at the rim', unit: 'm', min: 0, max: 1000 },
    w: { meaning: 'width of the ring', unit: 'm', min: 0, max: 5 },
  },
  compute: (P: number, w: number) => P * Math.max(w, LINER_EDGE),
  validity: 'a ring narrow against the pond; the slack at the liner where there is none',
  source: 'geometry',
});

/** Floor of the ring. */
export const ringFloor = formula({
  title: 'Level of the floor of the ring',
  symbol: 'f',
  unit: 'm',
  expression: '-min(r, d)',
  parameters: {
    r: { meaning: 'depth of the ring', unit: 'm', min: 0, max: 10 },
    d: { meaning: 'depth of the pond', unit: 'm', min: 0, max: 10 },
  },
  compute: (r: number, d: number) => -Math.min(r, d),
  validity: 'the ring is dug no deeper than the pond',
  source: 'geometry',
});

/**
 * The tub around a pond, or undefined where no permeable layer touches the liner. Levels on the site's datum.
 * @param use - a recorder, for the worked sheet
 */
export function tubOf(
  pond: Pond,
  places: Places,
  assume: Assumptions,
  use: Use = unrecorded,
): TubGeometry | undefined {
  const { ring, bedding, shape, depth } = pond;
  if (ring.width === 0 && bedding.kind === 'none') return undefined;
  const ringDepth = ring.depth ?? depth;
  const perimeter = outline(shape, 0, use);
  const floor = use(ringFloor, ringDepth, depth);
  return {
    floor,
    spill: 0,
    exit: exitOf(pond, floor, perimeter, places, assume),
    flooded: floodedTo(floor, places),
    ringArea: use(ringFrom, perimeter, ring.width),
    ringPorosity: ring.width > 0 ? FILL_POROSITY[ring.fill] : 1,
    ringHold: ring.width > 0 ? FILL_HOLD[ring.fill] : 0,
    perimeter,
    bedArea: bedding.kind === 'none' ? 0 : planArea(shape, depth, use),
    bedThickness: bedding.thickness,
    bedPorosity: BED_POROSITY[bedding.kind],
  };
}

/** A way out below the ground; one that lies below the floor of the ring is none: the ring does not reach it. */
function exitOf(
  { ring }: Pond,
  floor: number,
  perimeter: number,
  { spill = 0 }: Places,
  assume: Assumptions,
): TubDrain | undefined {
  if (spill >= 0 || spill <= floor) return undefined;
  const permeability = assume.or(
    ring.permeability,
    'ring_ksat',
    FILL_PERMEABILITY[ring.width > 0 ? ring.fill : 'sand'],
    'm/s',
    'water in the ring has to flow along its fill to the way out',
  );
  const width = Math.max(ring.width, LINER_EDGE);
  return { level: spill, conductance: 0, perDepth: ringFlow.compute(permeability, width, perimeter, 1, 0) };
}

/** Warns of spill points that lie below the floor of the ring. */
export function spillBelow({ floor }: TubGeometry, survey: Survey, { datum, spill = 0 }: Places): Warning[] {
  if (spill > floor) return [];
  return survey.levels
    .filter(({ role, level }) => role === 'spill' && level - datum <= floor)
    .map(({ point, level, origin }) => ({
      code: 'spill-below-ring',
      message: `${point} (spill) lies ${metres(datum - level)} below the ground at the rim and the ring ends ${metres(-floor)} below it, so it lets nothing out of the ring: what runs off there needs a ring or a trench as deep; a pipe led there is an outlet`,
      ...origin,
      column: 'level',
    }));
}

const metres = (value: number) => formatQuantity(value, 'length', 'metric');

/** What drains towards the ring; areas m². */
export interface Catchment {
  uphillArea: number;
  /** of the area uphill */
  cover: NonNullable<SiteFacts['uphill_cover']>;
  roofArea: number;
  /** of a roof led into the pond itself, m² */
  pondRoof: number;
  /** where it goes what runs over the brim of the pond */
  overflow: Pond['overflow'];
  /** the ring has a lid of clay */
  capped: boolean;
}

/** Highest water where the way out of the ring ends, no higher than the ground; undefined where it does not reach the way out. */
function floodedTo(floor: number, { spill = 0, spillFlood = spill }: Places): number | undefined {
  return spill > floor && spillFlood > spill ? Math.min(spillFlood, 0) : undefined;
}

/** Rain of a heavy day, m. Our choice. */
const HEAVY_DAY = 0.03;

/**
 * Rain of a heavy day on a ring and all that drains to it, m³; of the ground uphill a share runs off, and a roof led into
 * a full pond runs over the brim.
 */
function heavyDay({ ringArea }: TubGeometry, c: Catchment, share: number): number {
  const overBrim = c.overflow === 'ring' ? c.pondRoof : 0;
  return HEAVY_DAY * (ringArea + share * c.uphillArea + c.roofArea + overBrim) * (c.capped ? CAP_LEAK : 1);
}

/**
 * Level to which a heavy day fills a ring that stood as the ground does, in a month whose weather nobody knows, m above the
 * datum; no higher than it can stand.
 */
export function stormRing(tub: TubGeometry, c: Catchment, ground: GroundAround): number {
  const from = ground.level;
  const bed = tub.bedArea * tub.bedPorosity;
  const ring = tub.ringArea * tub.ringPorosity;
  const held =
    tubVolume(tub, Math.max(from, tubBottom(tub))) + heavyDay(tub, c, RUNOFF_COEFFICIENT[c.cover].likely);
  const inBed = bed * tub.bedThickness;
  const level = held <= inBed ? tubBottom(tub) + held / bed : tub.floor + (held - inBed) / ring;
  return Math.max(from, Math.min(level, fullRing(tub, c, ground)));
}

/** Nearer than this the level of a ring is not sought, m. */
const NEAR = 1e-4;

/**
 * Level at which a ring is taken to stand in a wet month whose weather nobody knows, m above the datum: where the ground
 * around it and its way out take the rain of a heavy day, every day, on the ring and all that drains to it; no higher than
 * the ground.
 */
export function fullRing(tub: TubGeometry, c: Catchment, ground: GroundAround): number {
  const { spill, flooded = Number.NEGATIVE_INFINITY } = tub;
  const inflow = heavyDay(tub, c, 1) / SECONDS_PER_DAY;
  const isLost = (level: number) => tubLoses(tub, ground, level) > inflow;
  let low = tubBottom(tub);
  let high = spill;
  if (!isLost(high)) return spill;
  if (isLost(low)) high = low;
  while (high - low > NEAR) {
    const middle = (low + high) / 2;
    if (isLost(middle)) high = middle;
    else low = middle;
  }
  return Math.min(Math.max(high, flooded), spill);
}

/**
 * Water reaching the tub day by day. Lawn and bare ground shed what the full ground cannot hold, and what the clay
 * below cannot take in a day; woodland half of that; paving and roofs nearly all rain once they are wet. Rain on the
 * ring first wets what dried at its top.
 * @param record - its demand, m a day
 * @param column - daily water of the ground, m
 * @param tub - ring and bedding
 * @param c - what drains towards it
 * @param permeability - of the clay, m/s
 * @param out - filled, m³ a day; as long as the record
 * @throws Error when the balance of a hard surface does not close to 1e-9 m
 */
export function tubInflow(
  record: Pick<ClimateRecord, 'demand'>,
  column: ColumnSeries,
  tub: TubGeometry,
  c: Omit<Catchment, 'pondRoof'>,
  permeability: number,
  out: Float64Array,
): void {
  const { liquid, recharge, spill } = column;
  const { demand } = record;
  const { ringArea, ringHold } = tub;
  const intake = permeability * SECONDS_PER_DAY;
  const share = c.capped ? CAP_LEAK : 1;
  const { paved, roof } = RUNOFF_COEFFICIENT;
  const ofRoof = roof.likely * c.roofArea;
  const ofPaving = c.cover === 'paved' ? paved.likely * c.uphillArea : 0;
  const ofGround = c.cover === 'paved' ? 0 : (c.cover === 'woodland' ? WOODLAND_SHARE : 1) * c.uphillArea;
  let dry = 0;
  for (let d = 0; d < out.length; d++) {
    const rain = liquid[d];
    const through = rain > dry ? rain - dry : 0;
    dry = (rain > dry ? 0 : dry - rain) + demand[d];
    if (dry > ringHold) dry = ringHold;
    let over = recharge[d] - intake;
    if (spill[d] > over) over = spill[d];
    out[d] = share * (through * ringArea + (over > 0 ? over * ofGround : 0));
  }
  if (!(ofRoof > 0 || ofPaving > 0)) return;
  const hard = new Float64Array(out.length);
  runHardSurface(liquid, demand, HARD_SURFACE_FILM, hard);
  for (let d = 0; d < out.length; d++) out[d] += share * hard[d] * (ofRoof + ofPaving);
}

/**
 * Adds what runs over the brim of the pond to what reaches the ring.
 * @param overflow - m³ a day
 * @param inflow - of the ring, m³ a day; added to
 */
export function overflowToRing(
  { overflow: to, capped }: Pick<Catchment, 'overflow' | 'capped'>,
  overflow: Float64Array,
  inflow: Float64Array,
): void {
  if (to === 'away') return;
  const share = capped ? CAP_LEAK : 1;
  for (let d = 0; d < inflow.length; d++) inflow[d] += share * overflow[d];
}
