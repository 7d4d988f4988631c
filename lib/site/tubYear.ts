import { method, SECONDS_PER_DAY } from '../formula/index.js';
import { CAP_LEAK, runTub, type TubGeometry, tubVolume } from '../groundwater/index.js';
import { logPercentiles, RUNOFF_COEFFICIENT, triangularRain } from '../soil/index.js';
import { deepestMonth } from './monthlyHighs.js';
import { permeabilityAround } from './profile.js';
import type { Site } from './siteModel.js';

export const tubYearMethod = method({
  title: 'How long water stands in the tub',
  what:
    'Days a year above each level, by the daily simulation; hours from the start of a storm until an empty ring is ' +
    'full; weeks until a full one has drained through the clay alone.',
  assumptions: [
    'storm: triangular, run-off by the likely coefficient of the cover, through a cap a twentieth; nothing leaves meanwhile',
    'draining: no rain, the water in the clay at the middle of its deepest month, to a tenth of the height',
    'longer than three years counts as never',
  ],
  source: 'water balance of the tub; triangular storm as declared',
});

/** Shares of the height between floor and spill level. */
const SHARES = [0, 0.25, 0.5, 0.75, 0.95];
const DRAINED = 0.1;
const LONGEST = 3 * 365;

/** How long water stands in the tub. */
export interface TubYear {
  /** mean days a year above a level (m above the lowest ground at the rim), run-off as it is; empty without weather */
  daysAbove: { level: number; days: number }[];
  /** hours from the start of the storm; absent: it does not fill the ring */
  hoursToFull?: number;
  /** false: how low the water in the clay falls is not known, and with it how long the ring takes */
  clayKnown: boolean;
  /** weeks to drain in ground that passes water well, as expected and badly; absent: never */
  weeksToDrain: { quick?: number; likely?: number; slow?: number };
}

/**
 * @param storm - m in s
 * @returns undefined where no permeable layer touches the liner
 */
export function tubYear(site: Site, storm: { rain: number; seconds: number }): TubYear | undefined {
  const { tub, ground, water } = site;
  if (!tub) return undefined;
  const clay = deepestMonth(water.clayLow);
  const { p10, p50, p90 } = logPercentiles(permeabilityAround(ground, -tub.floor));
  const [slow, likely, quick] = [p10, p50, p90].map((k) => weeksToDrain(tub, k, clay));
  return {
    daysAbove: daysAbove(site, tub),
    hoursToFull: hoursToFull(site, tub, storm),
    clayKnown: (site.monthly?.usual ?? []).length === 0,
    weeksToDrain: { quick, likely, slow },
  };
}

function daysAbove({ water }: Site, tub: TubGeometry): TubYear['daysAbove'] {
  const { daily } = water;
  if (!daily?.tub) return [];
  const years = (daily.days * daily.samples) / 365.25;
  return SHARES.map((share) => {
    // A millimetre above: a level that is just reached does not count.
    const level = tub.floor + share * (tub.spill - tub.floor);
    const days = daily.tub!.asIs.reduce((sum, z) => (z > level + 1e-3 ? sum + 1 : sum), 0);
    return { level, days: days / years };
  });
}

function hoursToFull(
  { catchment }: Site,
  tub: TubGeometry,
  { rain, seconds }: { rain: number; seconds: number },
) {
  const { uphillArea, cover, roofArea, pondRoof, overflow, capped } = catchment;
  const roofs = roofArea + (overflow === 'ring' ? pondRoof : 0);
  const area =
    tub.ringArea + RUNOFF_COEFFICIENT[cover].likely * uphillArea + RUNOFF_COEFFICIENT.roof.likely * roofs;
  const needed = tubVolume(tub, tub.spill) / (area * (capped ? CAP_LEAK : 1));
  if (needed >= rain) return undefined;
  let [low, high] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const x = (low + high) / 2;
    if (triangularRain.compute(rain, x) < needed) low = x;
    else high = x;
  }
  return (high * seconds) / 3600;
}

function weeksToDrain(tub: TubGeometry, permeability: number, clay: number): number | undefined {
  const inflow = new Float64Array(LONGEST);
  // The first day's water fills it whatever seeps away meanwhile.
  const wall = tub.ringArea + tub.bedArea + tub.perimeter * (tub.spill - tub.floor);
  inflow[0] = tubVolume(tub, tub.spill) + permeability * SECONDS_PER_DAY * wall * 2;
  const level = new Float64Array(LONGEST);
  runTub(tub, { inflow, clay: new Float64Array(LONGEST).fill(clay), permeability }, level);
  const low = tub.floor + DRAINED * (tub.spill - tub.floor);
  const day = level.findIndex((z, d) => d > 0 && z <= low);
  return day < 0 ? undefined : day / 7;
}
