import type { Basis } from '../basis/index.js';
import { drawdownOf } from '../basis/index.js';
import type { SiteDrain } from '../contract/index.js';
import {
  type BaseSoil,
  type Bed,
  type DrainInput,
  designDrain,
  type Ends,
  HEAVY_CLAY,
  type InflowInput,
  inflowBySource,
  judgeBed,
  likelyInflow,
  MOUTH,
  runAtRim,
  type SourceInflow,
  soilCurve,
} from '../drain/index.js';
import { type Use, unrecorded } from '../formula/index.js';
import {
  assumeUpkeep,
  drainLevel,
  floodOf,
  floorLevel,
  fullLevel,
  isAsBuilt,
  type Measures,
  oldDrainWorks,
} from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import {
  type Across,
  Assumptions,
  acrossOf,
  frameOf,
  permeabilityAround,
  placedPoints,
  type Site,
} from '../site/index.js';
import { compositionOf, logPercentiles } from '../soil/index.js';
import type { LevelPoint } from '../survey/index.js';
import {
  depthOver,
  floorSide,
  gatheringRadius,
  insetAt,
  lowestUsual,
  planArea,
  sidesArea,
} from '../uplift/index.js';
import { aroundIt } from './drainAround.js';
import { STORM, type Storm } from './storm.js';
import { wetGroundRunoff } from './wetGroundRunoff.js';

/** Beds that may be chosen, the easiest to lay first. */
const CHOICE: Bed[] = ['pea gravel on concrete sand', 'pea gravel on masonry sand', 'pea gravel in fabric'];
/** Reserve of the filter asked for where there is a choice. Our choice. */
const FILTER_RESERVE = 1.2;

const designed = new Remembered<SiteDrain>();

/** The drain that belongs to measures at a depth, or null where none does. */
export function drainFor(basis: Basis, m: Measures, depth: number): SiteDrain | null {
  const { drain } = m;
  return drain
    ? designed.of(basis, JSON.stringify([m, depth]), () => designFor(basis, m, drain, depth))
    : null;
}

function designFor(basis: Basis, m: Measures, drain: DrainMeasure, depth: number): SiteDrain {
  const { site } = basis;
  const assume = new Assumptions();
  const { input, sources, storm, level, outside } = drainInputOf(basis, m, drain, depth, assume);
  assumeUpkeep(drain.kind, site.survey.site, oldDrainWorks(site), assume);
  const design = designDrain(input);
  return {
    ...design,
    ...(isAsBuilt(m) && { quantities: [], dug: 0, refilled: 0 }),
    ...aroundIt(basis, design, depth, sources, storm, level, outside),
    assumptions: assume.list,
  };
}

type DrainMeasure = NonNullable<Measures['drain']>;

/** What a drain at a depth is designed from. */
interface DesignBasis {
  input: DrainInput;
  sources: SourceInflow[];
  storm: Storm;
  /** that the drain holds, and highest water outside in nine years of ten, m above the datum */
  level: number;
  outside: number;
  /** of the disc of equal area, m */
  radius: number;
  /** net head across the liner at the usual lowest level, m */
  leakHead: number;
}

/**
 * What the drain of measures is designed from at a depth; `assume` hears what the survey does not say.
 * @param use - a recorder, for the worked sheet
 * @param end - of the inflow, that is recorded
 */
export function drainInputOf(
  basis: Basis,
  m: Measures,
  drain: DrainMeasure,
  depth: number,
  assume = new Assumptions(),
  use: Use = unrecorded,
  end: keyof Ends = 'likely',
): DesignBasis {
  const { site, highs } = basis;
  const { pond, survey } = site;
  const floor = floorLevel(depth, m, use);
  const level = drainLevel(m, floor, use);
  const { shape } = pond;
  const floorArea = planArea(shape, depth, use);
  const sideArea = sidesArea(shape, depth);
  const soil = soilUnder(site, -floor, assume);
  const storm: Storm = {
    rain: assume.or(survey.site.storm_rain, 'storm_rain', STORM.rain, 'm', 'a heavy summer storm: 30 mm'),
    seconds: assume.or(survey.site.storm_hours, 'storm_hours', STORM.seconds, 's', 'falling in one hour'),
  };
  const radius = use(gatheringRadius, floorArea, planArea(shape, 0));
  const lowest = use(lowestUsual, fullLevel(site, m, use), drawdownOf(basis, 0.5));
  const leakHead = use(depthOver, lowest, level, 0);
  const sources = sourcesOf(basis, m, depth, radius, level, storm, leakHead, use, end);
  const outside = highs.yearly(m, 0.9);
  if (drain.kind === 'outlet' && drain.outlet.flood === undefined)
    assume.add(
      'flood level',
      floodOf(drain.outlet),
      'm',
      'no flood mark at the outlet: 0.4 m above its ordinary water',
    );
  const input: DrainInput = {
    floor,
    floorArea,
    floorLength: use(floorSide, shape.length, shape.sideSlope, depth),
    floorWidth: use(floorSide, shape.width, shape.sideSlope, depth),
    sideArea,
    sideSlope: shape.sideSlope,
    towards: towardsEnd(survey.levels, drain),
    trenchAtRim: runAtRim.compute(level, MOUTH),
    underSide: insetAt(shape, depth),
    inflow: likelyInflow(sources, use),
    stormSeconds: storm.seconds,
    outside,
    soil,
    bed: bedFor(pond.bedding.kind === 'mat', soil),
    ballast: m.ballast + pond.floorBallast,
    series: survey.site.show_units === 'us' ? 'us' : 'metric',
    end:
      drain.kind === 'outlet'
        ? { ...drain.outlet, kind: 'outlet', flood: floodOf(drain.outlet) }
        : {
            kind: 'sump',
            name: 'sump',
            level,
            distance: drain.to.distance,
            to: drain.to.name,
            discharge: drain.to.level,
          },
  };
  return { input, sources, storm, level, outside, radius, leakHead };
}

/** Where the pipe goes, on the pond's own axes; undefined where the plan does not have it. */
function towardsEnd(levels: readonly LevelPoint[], drain: DrainMeasure): Across | undefined {
  const frame = frameOf(levels);
  const [name, roles] =
    drain.kind === 'outlet' ? [drain.outlet.name, ['outlet']] : [drain.to.name, PUMPED_TO];
  const end = placedPoints(levels).find((p) => p.point === name && roles.includes(p.role));
  return end && frame.axes === 'survey' ? acrossOf(frame, end) : undefined;
}

const PUMPED_TO = ['discharge', 'outlet'];

const beds = new Remembered<Bed>();
const soils = new Remembered<BaseSoil>();

/** The mat where the survey plans one, else the first bed that keeps the soil out with some reserve. */
function bedFor(mat: boolean, soil: BaseSoil): Bed {
  return beds.of(soil, `${mat}`, () => chooseBed(mat, soil));
}

function chooseBed(mat: boolean, soil: BaseSoil): Bed {
  const choice: Bed[] = mat ? ['drainage mat', ...CHOICE] : CHOICE;
  const serves = choice.find((bed) => judgeBed(bed, soil).retention >= FILTER_RESERVE);
  return serves ?? choice[choice.length - 1];
}

/** Soil that the bed lies on. */
function soilUnder({ ground }: Site, depth: number, assume: Assumptions): BaseSoil {
  const layer =
    ground.layers.find(({ row }) => row.top <= depth && depth < row.bottom) ??
    ground.layers[ground.layers.length - 1];
  if (!layer.texture.match(/sand|silt|clay|loam/)) {
    assume.add('soil under the bed', 'heavy clay', '', `no grain sizes for ${layer.texture}`);
    return HEAVY_CLAY;
  }
  // That percentages are typical of the texture is said by the layer's evidence.
  return soils.of(layer, '', () => {
    const { sand, clay } = compositionOf({
      texture: layer.texture,
      sand: layer.row.sand,
      clay: layer.row.clay,
    });
    return { curve: soilCurve(sand, clay) };
  });
}

function sourcesOf(
  basis: Basis,
  m: Measures,
  depth: number,
  radius: number,
  level: number,
  storm: Storm,
  leakHead: number,
  use: Use,
  end: keyof Ends,
): SourceInflow[] {
  const { site, highs } = basis;
  const { catchment, tub, pond, ground } = site;
  const lacks = drawdownOf(basis, 0.5);
  const kept = m.way === 'keptOut';
  const { p10, p50, p90 } = logPercentiles(permeabilityAround(ground, depth));
  const input: InflowInput = {
    permeability: { low: p10, likely: p50, high: p90 },
    radius,
    head: use(depthOver, highs.yearly(m, 0.9), level, 0),
    ...storm,
    ring: tub && { area: tub.ringArea, capped: catchment.capped || kept },
    roofArea: kept ? 0 : catchment.roofArea,
    uphillArea: kept ? 0 : catchment.uphillArea,
    cover: catchment.cover,
    shed: wetGroundRunoff(site, storm, Math.max(-highs.yearly(m, 0.9), 0)),
    pondArea: pond.overflow === 'ring' && !kept ? planArea(pond.shape, 0) : 0,
    pondRoof: catchment.pondRoof,
    drawdown: lacks,
    leakHead,
  };
  return inflowBySource(input, use, end);
}
