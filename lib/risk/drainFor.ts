import {
  type BaseSoil,
  BEDS,
  type Bed,
  type Discharge,
  type Drain,
  designDrain,
  dischargeSeen,
  type Ends,
  endlessFlow,
  governingSource,
  HEAVY_CLAY,
  inflowBySource,
  inflowEnds,
  judgeBed,
  judgeSoakaway,
  type Lowering,
  likelyInflow,
  loweringOf,
  maintenance,
  powerCutHours,
  rationalRunoff,
  type SoakawayVerdict,
  type SourceInflow,
  STORM_RUNOFF,
  soilCurve,
} from '../drain/index.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { quantileSorted } from '../sampling/index.js';
import { discInflow } from '../seepage/index.js';
import type { Assumptions, Site } from '../site/index.js';
import { compositionOf, logPercentiles } from '../soil/index.js';
import { outline, planArea } from '../uplift/index.js';
import type { Basis } from './basis.js';
import type { Decision } from './decide.js';
import { lawfulOutlets } from './lawfulOutlets.js';
import { drainLevel, floorLevel, lowestUsualLevel } from './measures.js';
import { floodOf } from './options.js';

/** A drain for a site: designed, with where its water comes from and what it does to others. */
export interface SiteDrain extends Drain {
  sources: SourceInflow[];
  governing: ReturnType<typeof governingSource>;
  /** all sources at their low, likely and high end, m³/s */
  ends: Ends;
  /** every bed the merchant could deliver, in words for this soil */
  verdicts: string[];
  soakaway: SoakawayVerdict;
  lowering: Lowering[];
  discharge: Discharge;
  /** m³/s for ever out of permeable ground, and the distance at which it is felt; absent on clay */
  endless?: { flow: number; felt: number };
  /** January to December: hours without power until water stands at the liner, one year in ten; null: a year at least */
  powerCut?: (number | null)[];
  maintenance: string[];
}

/** Beds that may be chosen, the easiest to lay first. */
const CHOICE: Bed[] = ['pea gravel on concrete sand', 'pea gravel on masonry sand', 'pea gravel in fabric'];
/** Reserve of the filter asked for where there is a choice. Our choice. */
const FILTER_RESERVE = 1.2;
/** Ground that is sand or gravel, m/s: Sichardt's radius means something. */
const SANDY = 1e-5;
/** Depth of trench at the mouth of the drain, m. Common practice. */
const MOUTH = 0.3;

/** The drain a decision needs, or null where it needs none. */
export function drainFor(basis: Basis, d: Decision, assume: Assumptions): SiteDrain | null {
  const { site, highs } = basis;
  const { drain } = d.measures;
  if (!drain || d.option === 'do-not-dig' || d.option === 'measure-first' || d.option === 'move') return null;
  const { pond, places, survey } = site;
  const floor = floorLevel(d.depth, d.measures);
  const level = drainLevel(drain, floor);
  const { shape } = pond;
  const floorArea = planArea(shape, d.depth);
  const sideArea =
    ((outline(shape) + outline(shape, d.depth)) / 2) * d.depth * Math.hypot(1, shape.sideSlope);
  const inset = 2 * shape.sideSlope * d.depth;
  const soil = soilUnder(site, -floor, assume);
  const storm: Storm = {
    rain: assume.or(survey.site.storm_rain, 'storm_rain', 0.03, 'm', 'a heavy summer storm: 30 mm'),
    seconds: assume.or(survey.site.storm_hours, 'storm_hours', 3600, 's', 'falling in one hour'),
  };
  const sources = sourcesOf(basis, d, level, storm);
  const undrained = { ...d.measures, drain: undefined };
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
    pond: pond.existing ? undefined : { ...shape, depth: d.depth },
    inflow: likelyInflow(sources),
    outside,
    soil,
    bed: CHOICE.find((bed) => judgeBed(bed, soil).retention >= FILTER_RESERVE) ?? CHOICE[CHOICE.length - 1],
    series: survey.site.show_units === 'us' ? 'us' : 'metric',
    end:
      drain.kind === 'outlet'
        ? { ...drain.outlet, kind: 'outlet', flood: floodOf(drain.outlet) }
        : { kind: 'sump', name: 'sump', level, distance: drain.distance, discharge: to?.level },
  });
  return { ...design, ...aroundIt(site, design, sources, storm, level, outside) };
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

/** Rain of the design storm, m, and its duration, s. */
interface Storm {
  rain: number;
  seconds: number;
}

function sourcesOf({ site, highs }: Basis, d: Decision, level: number, storm: Storm): SourceInflow[] {
  const { catchment, tub, pond, ground } = site;
  const kept = d.measures.way === 'keptOut';
  const { p10, p50, p90 } = logPercentiles(ground.ksat);
  return inflowBySource({
    k: { low: p10, likely: p50, high: p90 },
    radius: Math.sqrt((planArea(pond.shape, 0) + planArea(pond.shape, d.depth)) / 2 / Math.PI),
    head: Math.max(highs.yearly(d.measures, 0.9) - level, 0),
    ...storm,
    ring: tub && { area: tub.ringArea, fill: pond.ring.fill, capped: catchment.capped || kept },
    roofArea: kept ? 0 : catchment.roofArea,
    uphillArea: kept ? 0 : catchment.uphillArea,
    cover: catchment.cover,
    pondArea: planArea(pond.shape, 0),
    drawdown: pond.usualDrawdown,
    leakHead: Math.max(lowestUsualLevel(site, d.measures) - level, 0),
  });
}

/** What goes with a designed drain. */
function aroundIt(
  site: Site,
  design: Drain,
  sources: SourceInflow[],
  { rain, seconds }: Storm,
  level: number,
  outside: number,
): Omit<SiteDrain, keyof Drain> {
  const { ground, places, survey, catchment, pond, tub } = site;
  const { p10, p50, p90 } = logPercentiles(ground.ksat);
  const k: Ends = { low: p10, likely: p50, high: p90 };
  const lowered = Math.max(outside - level, 0);
  const shrinkable = survey.site.shrinkable_clay !== 'no' && ground.clayey;
  const radius = Math.sqrt(planArea(pond.shape, 0) / Math.PI);
  const boundary = places.boundary === undefined ? [] : [{ name: 'boundary', distance: places.boundary }];
  const before =
    rationalRunoff.compute(
      STORM_RUNOFF.lawn,
      rain / seconds,
      planArea(pond.shape, 0) + (tub?.ringArea ?? 0),
    ) + rationalRunoff.compute(STORM_RUNOFF[catchment.cover], rain / seconds, catchment.uphillArea);
  const soil = design.input.soil ?? HEAVY_CLAY;
  return {
    sources,
    governing: governingSource(sources),
    ends: inflowEnds(sources),
    verdicts: (Object.keys(BEDS) as Bed[]).map((bed) => judgeBed(bed, soil).words),
    soakaway: judgeSoakaway(Math.max(design.totalInflow * seconds, 0.1), 0.6, k.likely, outside > level),
    lowering: [...boundary, ...places.houses].map((place) => loweringOf(place, lowered, k, shrinkable)),
    discharge: dischargeSeen(design.inflow.clay, design.totalInflow, before),
    ...(k.likely > SANDY ? { endless: endlessFlow(k.likely, lowered + 1, lowered, radius) } : {}),
    ...(design.sump ? { powerCut: powerCutByMonth(site, design, level) } : {}),
    maintenance: maintenance(design.kind),
  };
}

/** Hours without power by month, the water outside as in the wettest year of ten. */
function powerCutByMonth(
  { water, ground, pond }: Site,
  { sump, input }: Drain,
  level: number,
): (number | null)[] {
  const radius = Math.sqrt((planArea(pond.shape, 0) + input.floorArea) / 2 / Math.PI);
  const count = water.samples * water.years;
  return Array.from({ length: 12 }, (_, month) => {
    const heads = Float64Array.from({ length: count }, (_, i) => water.clayHigh.month[i * 12 + month]).sort();
    const head = Math.max(quantileSorted(heads, 0.9) - level, 0);
    const hours = powerCutHours(sump!.storage, discInflow.compute(ground.ksat.median, radius, head));
    return hours > (365 * SECONDS_PER_DAY) / 3600 ? null : hours;
  });
}
