import {
  BEDS,
  type Bed,
  type Discharge,
  type Drain,
  type Ends,
  type EnvelopeVerdict,
  endlessFlow,
  governingSource,
  HEAVY_CLAY,
  inflowEnds,
  judgeBed,
  judgeSoakaway,
  type Lowering,
  loweringOf,
  maintenance,
  type OutletWorks,
  outletWorks,
  powerCutHours,
  rationalRunoff,
  type SoakawayVerdict,
  type SourceInflow,
} from '../drain/index.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import type { Assumption } from '../site/index.js';
import { RUNOFF_COEFFICIENT } from '../soil/index.js';
import { planArea } from '../uplift/index.js';
import type { Basis } from './basis.js';
import { loweredGround } from './loweredGround.js';
import type { Storm } from './storm.js';

/** A drain for a site: designed, with where its water comes from and what it does to others. */
export interface SiteDrain extends Drain {
  sources: SourceInflow[];
  governing: ReturnType<typeof governingSource>;
  /** all sources at their low, likely and high end, m³/s */
  ends: Ends;
  /** every bed the merchant could deliver, judged on this soil */
  verdicts: EnvelopeVerdict[];
  /** cover, frost, erosion and backwater of the run; absent for a sump */
  works?: OutletWorks;
  soakaway: SoakawayVerdict;
  /** at the boundary and at houses */
  lowering: Lowering[];
  discharge: Discharge;
  /** m³/s for ever out of permeable ground, and the distance at which it is felt; absent on clay */
  endless?: { flow: number; felt: number };
  /** January to December: hours without power until water stands at the liner, one year in ten; null: a year at least */
  powerCut?: (number | null)[];
  maintenance: string[];
  /** what the survey does not say and was assumed for it */
  assumptions: Assumption[];
}

/** Ground that is sand or gravel, m/s: Sichardt's radius means something. */
const SANDY = 1e-5;

/** Water that a soakaway below the drain's mouth would hold, m deep. Our choice. */
const SOAKAWAY_DEPTH = 0.6;

/** What goes with a designed drain. */
export function aroundIt(
  basis: Basis,
  design: Drain,
  depth: number,
  sources: SourceInflow[],
  { rain, seconds }: Storm,
  level: number,
  outside: number,
): Omit<SiteDrain, keyof Drain | 'assumptions'> {
  const { ground, places, survey, catchment, pond, tub } = basis.site;
  const around = loweredGround(basis.site, level, depth);
  const k = around.k.likely;
  const lowered = Math.max(outside - level, 0);
  const shrinkable = survey.site.shrinkable_clay !== 'no' && ground.clayey;
  const radius = Math.sqrt(planArea(pond.shape, 0) / Math.PI);
  const boundary = places.boundary === undefined ? [] : [{ name: 'boundary', distance: places.boundary }];
  const before =
    rationalRunoff.compute(
      RUNOFF_COEFFICIENT.lawn.likely,
      rain / seconds,
      planArea(pond.shape, 0) + (tub?.ringArea ?? 0),
    ) +
    rationalRunoff.compute(RUNOFF_COEFFICIENT[catchment.cover].likely, rain / seconds, catchment.uphillArea);
  const governing = governingSource(sources);
  const { soil = HEAVY_CLAY, end } = design.input;
  return {
    sources,
    governing,
    ends: inflowEnds(sources),
    verdicts: (Object.keys(BEDS) as Bed[]).map((bed) => judgeBed(bed, soil)),
    ...(end.kind === 'outlet'
      ? {
          works: outletWorks({
            floor: design.input.floor,
            diameter: design.pipeDiameter,
            velocity: design.flow.velocity,
            soil: ground.clayey ? 'clay' : 'sand',
            outside,
            relief: level,
            flood: end.flood,
          }),
        }
      : {}),
    soakaway: judgeSoakaway({
      volume: Math.max(design.totalInflow * seconds, 0.1),
      depth: SOAKAWAY_DEPTH,
      k,
      clearance: level - SOAKAWAY_DEPTH - outside,
    }),
    lowering: [...boundary, ...places.houses].map((place) => loweringOf(place, lowered, around, shrinkable)),
    discharge: { ordinary: design.inflow.clay, storm: governing.total.likely, before },
    ...(k > SANDY ? { endless: endlessFlow(k, lowered + 1, lowered, radius) } : {}),
    ...(design.sump ? { powerCut: powerCutByMonth(basis, design, level, around.k.likely) } : {}),
    maintenance: maintenance(design.kind),
  };
}

/** Hours without power by month, the water outside as in the wettest year of ten. */
function powerCutByMonth(
  { site, highs }: Basis,
  { sump, input }: Drain,
  level: number,
  k: number,
): (number | null)[] {
  const radius = Math.sqrt((planArea(site.pond.shape, 0) + input.floorArea) / 2 / Math.PI);
  return Array.from({ length: 12 }, (_, month) => {
    const head = Math.max(highs.uphill(month + 1, 0.9) - level, 0);
    const hours = powerCutHours(sump!.storage, discInflow.compute(k, radius, head));
    return hours > (365 * SECONDS_PER_DAY) / 3600 ? null : hours;
  });
}
