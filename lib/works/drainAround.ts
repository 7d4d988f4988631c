import type { Basis } from '../basis/index.js';
import type { SiteDrain } from '../contract/index.js';
import {
  BEDS,
  type Bed,
  type Drain,
  endlessFlow,
  governingSource,
  HEAVY_CLAY,
  inflowEnds,
  judgeBed,
  judgeSoakaway,
  loweringOf,
  maintenance,
  outletWorks,
  powerCutHours,
  rationalRunoff,
  type SourceInflow,
} from '../drain/index.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { RUNOFF_COEFFICIENT } from '../soil/index.js';
import { depthOver, planArea } from '../uplift/index.js';
import { loweredGround } from './loweredGround.js';
import type { Storm } from './storm.js';

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
  const k = around.permeability.likely;
  const lowered = depthOver.compute(outside, level, 0);
  const shrinkable = survey.site.shrinkable_clay !== 'no' && ground.clayey;
  const { radius } = around;
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
      permeability: k,
      clearance: level - SOAKAWAY_DEPTH - outside,
    }),
    lowering: [...boundary, ...places.houses].map((place) => loweringOf(place, lowered, around, shrinkable)),
    discharge: { ordinary: design.inflow.clay, storm: governing.total.likely, before },
    ...(k > SANDY ? { endless: endlessFlow(k, lowered + 1, lowered, radius) } : {}),
    ...(design.sump ? { powerCut: powerCutByMonth(basis, design, level, around.permeability.likely) } : {}),
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
