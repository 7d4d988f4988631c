import type { ClimateRecord } from '../climate/index.js';
import type { NextDoor, SiteDrain } from '../contract/index.js';
import { brimOf, type Decision, housesBelow, isHeld } from '../decision/index.js';
import { loweringOf, rationalRunoff } from '../drain/index.js';
import { method, SECONDS_PER_DAY } from '../formula/index.js';
import { drainLevel, floorLevel } from '../heads/index.js';
import { roofInflow, type Site } from '../site/index.js';
import { RUNOFF_COEFFICIENT } from '../soil/index.js';
import { loweringWords } from '../text/index.js';
import { planArea } from '../uplift/index.js';
import { loweredGround, stormOf } from '../works/index.js';

export const nextDoorMethod = method({
  title: 'What changes next door',
  what:
    'Water that leaves the ground of the pond before and after: on a mean day of the wet half-year rain less evaporation, ' +
    'in the storm its run-off; with what a drain brings to one point, and how far its lowering can be told.',
  assumptions: [
    'before: lawn; after: a pond full to the brim sheds all rain that falls on it',
    'a roof led into the pond is counted after only: where its water went before is not known',
    'a drain is counted with its likely inflow at the highest water of one year in ten, so an ordinary day brings less; ' +
      'beside it the high end of its sources; a hole in the liner is told of apart',
    'what a drain uphill of the pond brings, and how far it draws the water down, is not worked out',
    'no storm named: 30 mm in one hour (our choice)',
  ],
  source: 'water balance; rational method; lowering by Dupuit with recharge',
});

/** Farthest that a lowering is looked for, m. */
const FARTHEST = 200;

/** What changes for others with a decision and its drain. */
export function nextDoor(site: Site, d: Decision, drain: SiteDrain | null): NextDoor {
  const { places, pond, survey, tub } = site;
  const area = planArea(pond.shape, 0);
  const storm = stormOf(site);
  const shed = (c: number, a: number) => rationalRunoff.compute(c, storm.rain / storm.seconds, a);
  const surplus = winterSurplus(site);
  const ground = area + (tub?.ringArea ?? 0);
  const exit = exitOf(site, d);
  const above = brimOf(site, d);
  // What a trench uphill brings is worked out nowhere.
  const unknown = exit.kind === 'cutoff' ? null : 0;
  return {
    exit,
    held: isHeld(site, d)
      ? { above_m: above, volume_m3: above * planArea(pond.shape, -Math.max(pond.fullLevel, 0)) }
      : null,
    overflow: survey.pond.overflow === 'away' ? 'away' : 'rim',
    boundary_m: places.boundary ?? null,
    downhill: housesBelow(site, d, exit),
    winter_day:
      surplus === undefined
        ? null
        : {
            before: surplus * ground,
            brim: surplus * area + winterRoof(site),
            drain: drain?.inflow.clay ?? unknown,
            drain_high: drain?.sources.find(({ source }) => source === 'clay')?.high ?? unknown,
          },
    storm: {
      rain_m: storm.rain,
      seconds: storm.seconds,
      named: survey.site.storm_rain !== undefined,
      // What a drain catches of roof and slope ran off before as well.
      before:
        shed(RUNOFF_COEFFICIENT.lawn.likely, ground) + (drain ? drain.inflow.uphill + drain.inflow.roof : 0),
      brim: shed(1, area) + shed(RUNOFF_COEFFICIENT.roof.likely, site.catchment.pondRoof),
      drain: drain?.governing.total.likely ?? unknown,
      drain_high: drain?.governing.total.high ?? unknown,
    },
    lowered: (drain?.lowering ?? []).map((place) => ({
      name: place.name,
      neighbour: places.houses.find(({ name }) => name === place.name)?.neighbour ?? null,
      distance_m: place.distance,
      likely_m: place.lowered.likely,
      most_m: place.lowered.high,
      words: loweringWords(place),
    })),
    felt_m: drain ? feltTo(site, d, drain) : unknown,
  };
}

/** What a roof led into the pond brings on a mean day of the wet half-year, m³/s. */
function winterRoof({ record, wetMonths, catchment }: Site): number {
  const led = record && roofInflow(record, catchment.pondRoof);
  return led ? meanOf(led, record, wetMonths) / SECONDS_PER_DAY : 0;
}

/** Mean of a daily series over some months, 1–12. */
function meanOf(daily: Float64Array, { month }: ClimateRecord, months: readonly number[]): number {
  let [sum, days] = [0, 0];
  daily.forEach((value, day) => {
    if (!months.includes(month[day])) return;
    sum += value;
    days++;
  });
  return sum / Math.max(days, 1);
}

/** Rain less evaporation on a mean day of the wet half-year, m/s; never below nothing. */
function winterSurplus({ record, wetMonths }: Site): number | undefined {
  if (!record) return undefined;
  const surplus = record.rain.map((rain, day) => rain - record.demand[day]);
  return Math.max(meanOf(surplus, record, wetMonths), 0) / SECONDS_PER_DAY;
}

function exitOf(site: Site, d: Decision): NextDoor['exit'] {
  const { measures, option } = d;
  const { drain, cutoffTo } = measures;
  const { places } = site;
  const pipe = drain?.kind === 'outlet' ? drain.outlet : cutoffTo;
  const end = drain?.kind === 'sump' ? drain.to : pipe;
  if (!end || option === 'measure-first' || option === 'move')
    return {
      kind: 'brim',
      name: isHeld(site, d) ? 'lowest place of the raised edge' : 'lowest ground of the rim',
      level_m: isHeld(site, d) ? brimOf(site, d) : 0,
      distance_m: 0,
      to_boundary_m: places.boundary ?? null,
    };
  return {
    kind: drain?.kind ?? 'cutoff',
    name: end.name,
    level_m: end.level,
    distance_m: end.distance,
    to_boundary_m: drain?.kind === 'sump' ? null : (pipe?.toBoundary ?? null),
  };
}

/** Distance within which the lowering is more than nobody could tell, at the permeable end of the ground. */
function feltTo(site: Site, d: Decision, { input }: SiteDrain): number {
  const { ground, survey } = site;
  const level = drainLevel(d.measures, floorLevel(d.depth, d.measures));
  const lowered = Math.max((input.outside ?? 0) - level, 0);
  const around = loweredGround(site, level, d.depth);
  const shrinkable = survey.site.shrinkable_clay !== 'no' && ground.clayey;
  const felt = (distance: number) =>
    !loweringOf({ name: '', distance }, lowered, around, shrinkable).unnoticed;
  if (!felt(0)) return 0;
  let [near, far] = [0, FARTHEST];
  for (let i = 0; i < 24; i++) {
    const middle = (near + far) / 2;
    if (felt(middle)) near = middle;
    else far = middle;
  }
  return far;
}
