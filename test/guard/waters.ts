/**
 * Water outside the pond by month, from two sides: what the result tells, and what the survey's own rows say.
 * Levels m above the datum. `p90` is passed by one year in ten, `p50` by one in two.
 */

import { mayCarry } from './seams.js';
import type { GuardSite } from './site.js';
import type { Band, Told } from './told.js';

export interface Water {
  source: string;
  p50: number;
  p90: number;
}

/** One in ten of a normal spread lies beyond this many standard deviations (normal table). */
const ONE_IN_TEN = 1.2816;
/** A look at one day is no spread: the tape, the plane of the ground and the place it is carried to. Our choice, m. */
const LOOK_ERROR = 0.15;

/** Told highs of a month: the ground's own, and the ring's where its water is enough to lift. */
export function toldWater(told: Told, month: number): Water {
  const { table_depth_m: t } = told.water.by_month[month - 1] as Told['water']['by_month'][number];
  return { source: 'the month told', p50: -t.p50, p90: -t.p10 };
}

/** Water in the ring as told. */
export function toldRing(told: Told, month: number): Band | null {
  return told.water.by_month[month - 1]?.tub_level_m ?? null;
}

/** What the rows of heads.csv and water.csv say of a month, without any model. */
export function rawWaters(site: GuardSite, month: number): Water[] {
  const { survey } = site;
  const out: Water[] = [];
  for (const { place, month: of, depth, spread = 0.1 } of survey.heads) {
    if (of !== month || place.startsWith('below:') || place === 'uphill') continue;
    out.push({ source: `heads.csv ${place}`, ...spreadOf(carried(site, place, depth), spread) });
  }
  for (const look of shallowLooks(site)) {
    if (new Date(look.day * 86_400_000).getUTCMonth() + 1 !== month) continue;
    const level = -(look.depth ?? 0) - LOOK_ERROR;
    out.push({ source: `water.csv ${look.pit}`, p50: level, p90: level });
  }
  return out;
}

/** Water at or below the ground spreads up to the ground, where it runs off; what is known to stand above it spreads on. */
function spreadOf(p50: number, spread: number): Pick<Water, 'p50' | 'p90'> {
  const high = p50 + ONE_IN_TEN * spread;
  return { p50, p90: p50 > 0 ? high : Math.min(high, 0) };
}

/** Whether the survey's rows say of any month where the water stands. */
export function hasRawWater(site: GuardSite): boolean {
  return Array.from({ length: 12 }, (_, at) => rawWaters(site, at + 1)).some((waters) => waters.length > 0);
}

/** A depth to water carried to the pond from a hole: as depth or as level, whichever is less water. */
function carried({ groundAt }: GuardSite, place: string, depth: number): number {
  return Math.min(place === 'site' ? 0 : groundAt(place), 0) - depth;
}

/** Looks at the ground's own water: in sealed pipes that end above any seam; the depth is carried over, not the level. */
function shallowLooks({ survey, layers, groundAt }: GuardSite) {
  const struck = new Set(survey.looks.filter(({ reading }) => reading === 'strike').map(({ pit }) => pit));
  return survey.looks.filter(({ pit, reading, openFrom, depth, holeDepth }) => {
    if (reading !== 'level' || depth === undefined || openFrom === undefined || struck.has(pit)) return false;
    const seam = layers.find((l) => mayCarry(l.texture) && l.top > 0.35);
    return !seam || (holeDepth ?? 0) - groundAt(pit) < seam.top - 0.05;
  });
}

/** Highest water of the year that one year in ten passes, as told and as the survey's rows say. */
export function yearlyHighs(site: GuardSite, told: Told): Water[] {
  const { p10, p50 } = told.water.seasonal_high_depth_m;
  const rows = site.survey.heads.filter(
    ({ place, month }) => month === 'high' && !place.startsWith('below:') && place !== 'uphill',
  );
  return [
    { source: 'the seasonal high told', p50: -p50, p90: -p10 },
    ...rows.map(({ place, depth, spread = 0.1 }) => ({
      source: `heads.csv ${place} high`,
      ...spreadOf(carried(site, place, depth), spread),
    })),
  ];
}

/**
 * How full the ground stands by month, 0 to 1, from what the sky gives less what it takes: the record of days, else of
 * months; evaporation as given, else by Hargreaves with the sun of the latitude (FAO-56 eq. 52 and 21). Absent without
 * either.
 */
export function wetness({ survey }: GuardSite): number[] | undefined {
  const surplus = monthlySurplus(survey);
  if (!surplus) return undefined;
  const full = new Array<number>(12).fill(0);
  let held = 0;
  // Three turns of an ordinary year settle a store of any start.
  for (let at = 0; at < 36; at++) {
    held = Math.min(Math.max(held + (surplus[at % 12] as number), 0), STORE);
    full[at % 12] = held / STORE;
  }
  return full;
}
/** What rain has to fill before water stands in the ground: a root zone of clay, mm. FAO-56 Tables 19 and 22: 70 to 180. */
const STORE = 100;

function monthlySurplus({ weather, climate, site }: GuardSite['survey']): number[] | undefined {
  const { latitude } = site;
  if (weather.length >= 700 && latitude !== undefined) {
    const [sum, count] = [new Array<number>(12).fill(0), new Array<number>(12).fill(0)];
    for (const { day, rain, tmin, tmax, et0 } of weather) {
      if (rain === undefined) continue;
      const at = new Date(day * 86_400_000).getUTCMonth();
      const lost =
        et0 !== undefined
          ? et0 * 1000
          : tmin === undefined || tmax === undefined
            ? Number.NaN
            : hargreaves(latitude, at, tmin, tmax);
      if (Number.isNaN(lost)) continue;
      sum[at] = (sum[at] as number) + rain * 1000 - lost;
      count[at] = (count[at] as number) + 1;
    }
    if (count.every((n) => n > 20)) return sum.map((mm, at) => (mm / (count[at] as number)) * 30.4);
  }
  if (climate.length === 12 && climate.every(({ rain, et0 }) => rain !== undefined && et0 !== undefined))
    return [...climate]
      .sort((a, b) => a.month - b.month)
      .map(({ rain, et0 }) => 1000 * ((rain as number) - (et0 as number)));
  return undefined;
}

/** Reference evaporation of a day in the middle of a month, mm. */
function hargreaves(latitude: number, month: number, tmin: number, tmax: number): number {
  const turn = (2 * Math.PI * (30.4 * month + 15)) / 365;
  const [phi, tilt] = [(latitude * Math.PI) / 180, 0.409 * Math.sin(turn - 1.39)];
  const sunset = Math.acos(Math.min(Math.max(-Math.tan(phi) * Math.tan(tilt), -1), 1));
  const near = 1 + 0.033 * Math.cos(turn);
  const sun =
    ((24 * 60) / Math.PI) *
    0.082 *
    near *
    (sunset * Math.sin(phi) * Math.sin(tilt) + Math.cos(phi) * Math.cos(tilt) * Math.sin(sunset));
  return Math.max(0.0023 * 0.408 * sun * ((tmin + tmax) / 2 + 17.8) * Math.sqrt(Math.max(tmax - tmin, 0)), 0);
}
