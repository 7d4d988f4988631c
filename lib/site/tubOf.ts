import { type ClimateRecord, HARD_SURFACE_FILM, runHardSurface } from '../climate/index.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { CAP_LEAK, type ColumnSeries, type TubGeometry } from '../groundwater/index.js';
import { RUNOFF_COEFFICIENT, WOODLAND_SHARE } from '../soil/index.js';
import type { SiteFacts } from '../survey/index.js';
import { outline, planArea } from '../uplift/index.js';
import type { Places } from './places.js';
import type { Pond } from './pond.js';

/** Drainable porosity of what a ring is filled with. Common practice; loosened clay from its table, doubled. */
const FILL_POROSITY = { clay: 0.06, topsoil: 0.12, sand: 0.25, gravel: 0.35 };
/** Water between field capacity and half the wilting point in the top 0.1 m (FAO-56 eq. 73, Table 19 rounded), m. */
const FILL_HOLD = { clay: 0.02, topsoil: 0.02, sand: 0.01, gravel: 0 };
const BED_POROSITY = { none: 0, sand: 0.25, gravel: 0.35, mat: 0.8 };
/** Slack between liner and clay where bedding has no ring around it, m. Common practice. */
const LINER_EDGE = 0.01;

/** The tub around a pond, or undefined where no permeable layer touches the liner. Levels on the site's datum. */
export function tubOf(pond: Pond, places: Places): TubGeometry | undefined {
  const { ring, bedding, shape, depth } = pond;
  if (ring.width === 0 && bedding.kind === 'none') return undefined;
  const ringDepth = ring.depth ?? depth;
  const perimeter = outline(shape);
  return {
    floor: -Math.min(ringDepth, depth),
    spill: Math.min(0, places.spill ?? 0),
    ringArea: perimeter * Math.max(ring.width, LINER_EDGE),
    ringPorosity: ring.width > 0 ? FILL_POROSITY[ring.fill] : 1,
    ringHold: ring.width > 0 ? FILL_HOLD[ring.fill] : 0,
    perimeter,
    bedArea: bedding.kind === 'none' ? 0 : planArea(shape, depth),
    bedThickness: bedding.thickness,
    bedPorosity: BED_POROSITY[bedding.kind],
  };
}

/** What drains towards the ring; areas m². */
export interface Catchment {
  uphillArea: number;
  /** of the area uphill */
  cover: NonNullable<SiteFacts['uphill_cover']>;
  roofArea: number;
  /** the ring has a lid of clay */
  capped: boolean;
}

/**
 * Water reaching the tub day by day. Lawn and bare ground shed what the full ground cannot hold, and what the clay
 * below cannot take in a day; woodland half of that; paving and roofs nearly all rain once they are wet. Rain on the
 * ring first wets what dried at its top.
 * @param record - its demand, m a day
 * @param column - daily water of the ground, m
 * @param tub - ring and bedding
 * @param c - what drains towards it
 * @param conductivity - of the clay, m/s
 * @param out - filled, m³ a day; as long as the record
 * @throws Error when the balance of a hard surface does not close to 1e-9 m
 */
export function tubInflow(
  record: Pick<ClimateRecord, 'demand'>,
  column: ColumnSeries,
  tub: TubGeometry,
  c: Catchment,
  conductivity: number,
  out: Float64Array,
): void {
  const intake = conductivity * SECONDS_PER_DAY;
  const share = c.capped ? CAP_LEAK : 1;
  const cover = c.cover === 'woodland' ? WOODLAND_SHARE : 1;
  const { paved, roof } = RUNOFF_COEFFICIENT;
  const hard = new Float64Array(out.length);
  if (c.roofArea > 0 || c.cover === 'paved')
    runHardSurface(column.liquid, record.demand, HARD_SURFACE_FILM, hard);
  let dry = 0;
  for (let d = 0; d < out.length; d++) {
    const rain = column.liquid[d];
    const through = rain > dry ? rain - dry : 0;
    dry = Math.min((rain > dry ? 0 : dry - rain) + record.demand[d], tub.ringHold);
    const excess = column.recharge[d] - intake;
    const shed = c.cover === 'paved' ? paved.likely * hard[d] : cover * Math.max(column.spill[d], excess, 0);
    out[d] = share * (through * tub.ringArea + hard[d] * roof.likely * c.roofArea + shed * c.uphillArea);
  }
}
