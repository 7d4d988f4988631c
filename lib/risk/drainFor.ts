import {
  type BaseSoil,
  type Bed,
  designDrain,
  HEAVY_CLAY,
  inflowBySource,
  judgeBed,
  likelyInflow,
  MOUTH,
  type SourceInflow,
  soilCurve,
} from '../drain/index.js';
import { Assumptions, type Site } from '../site/index.js';
import { compositionOf, logPercentiles } from '../soil/index.js';
import { outline, planArea } from '../uplift/index.js';
import type { Basis } from './basis.js';
import type { Decision } from './decide.js';
import { aroundIt, type SiteDrain } from './drainAround.js';
import { lawfulOutlets } from './lawfulOutlets.js';
import { drainLevel, floorLevel, lowestUsualLevel, type Measures } from './measures.js';
import { floodOf } from './options.js';
import { Remembered } from './remembered.js';
import { STORM, type Storm } from './storm.js';
import { wetGroundRunoff } from './wetGroundRunoff.js';

/** Beds that may be chosen, the easiest to lay first. */
const CHOICE: Bed[] = ['pea gravel on concrete sand', 'pea gravel on masonry sand', 'pea gravel in fabric'];
/** Reserve of the filter asked for where there is a choice. Our choice. */
const FILTER_RESERVE = 1.2;

/** The drain a decision needs, or null where it needs none. */
export function drainOf(basis: Basis, { option, measures, depth }: Decision): SiteDrain | null {
  if (option === 'do-not-dig' || option === 'measure-first' || option === 'move') return null;
  return drainFor(basis, measures, depth);
}

const designed = new Remembered<SiteDrain>();

/** The drain that belongs to measures at a depth, or null where none does. */
export function drainFor(basis: Basis, m: Measures, depth: number): SiteDrain | null {
  const { drain } = m;
  return drain
    ? designed.of(basis, JSON.stringify([m, depth]), () => designFor(basis, m, drain, depth))
    : null;
}

function designFor(
  basis: Basis,
  m: Measures,
  drain: NonNullable<Measures['drain']>,
  depth: number,
): SiteDrain {
  const { site, highs } = basis;
  const { pond, places, survey } = site;
  const assume = new Assumptions();
  const floor = floorLevel(depth, m);
  const level = drainLevel(drain, floor);
  const { shape } = pond;
  const floorArea = planArea(shape, depth);
  const sideArea = ((outline(shape) + outline(shape, depth)) / 2) * depth * Math.hypot(1, shape.sideSlope);
  const inset = 2 * shape.sideSlope * depth;
  const soil = soilUnder(site, -floor, assume);
  const storm: Storm = {
    rain: assume.or(survey.site.storm_rain, 'storm_rain', STORM.rain, 'm', 'a heavy summer storm: 30 mm'),
    seconds: assume.or(survey.site.storm_hours, 'storm_hours', STORM.seconds, 's', 'falling in one hour'),
  };
  const sources = sourcesOf(basis, m, depth, level, storm);
  const undrained = { ...m, drain: undefined };
  const outside = highs.yearly(undrained, 0.9);
  const to = places.discharge ?? lawfulOutlets(site).outlets[0];
  if (drain.kind === 'outlet' && drain.outlet.flood === undefined)
    assume.add(
      'flood level',
      floodOf(drain.outlet),
      'm',
      'no flood mark at the outlet: 0.4 m above its ordinary water',
    );
  const design = designDrain({
    floor,
    floorArea,
    floorLength: Math.max(shape.length - inset, 0.5),
    floorWidth: Math.max(shape.width - inset, 0.5),
    sideArea,
    sideSlope: shape.sideSlope,
    trenchDepth: Math.max((MOUTH - level) / 2, MOUTH),
    pond: pond.existing ? undefined : { ...shape, depth },
    inflow: likelyInflow(sources),
    outside,
    soil,
    bed: bedFor(pond.bedding.kind === 'mat', soil),
    ballast: m.ballast + pond.floorBallast,
    series: survey.site.show_units === 'us' ? 'us' : 'metric',
    end:
      drain.kind === 'outlet'
        ? { ...drain.outlet, kind: 'outlet', flood: floodOf(drain.outlet) }
        : { kind: 'sump', name: 'sump', level, distance: drain.distance, to: to?.name, discharge: to?.level },
  });
  return {
    ...design,
    ...aroundIt(basis, design, sources, storm, level, outside),
    assumptions: assume.list,
  };
}

/** The mat where the survey plans one, else the first bed that keeps the soil out with some reserve. */
function bedFor(mat: boolean, soil: BaseSoil): Bed {
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
  const { sand, clay } = compositionOf({
    texture: layer.texture,
    sand: layer.row.sand,
    clay: layer.row.clay,
  });
  return { curve: soilCurve(sand, clay) };
}

function sourcesOf(
  { site, highs }: Basis,
  m: Measures,
  depth: number,
  level: number,
  storm: Storm,
): SourceInflow[] {
  const { catchment, tub, pond, ground } = site;
  const kept = m.way === 'keptOut';
  const { p10, p50, p90 } = logPercentiles(ground.ksat);
  return inflowBySource({
    k: { low: p10, likely: p50, high: p90 },
    radius: Math.sqrt((planArea(pond.shape, 0) + planArea(pond.shape, depth)) / 2 / Math.PI),
    head: Math.max(highs.yearly(m, 0.9) - level, 0),
    ...storm,
    ring: tub && { area: tub.ringArea, fill: pond.ring.fill, capped: catchment.capped || kept },
    roofArea: kept ? 0 : catchment.roofArea,
    uphillArea: kept ? 0 : catchment.uphillArea,
    cover: catchment.cover,
    shed: wetGroundRunoff(site, storm, Math.max(-highs.yearly(m, 0.9), 0)),
    pondArea: planArea(pond.shape, 0),
    drawdown: pond.usualDrawdown,
    leakHead: Math.max(lowestUsualLevel(site, m) - level, 0),
  });
}
