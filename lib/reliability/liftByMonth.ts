import { DAYS_OF_MONTH } from '../climate/index.js';
import { LEVEL_RESOLUTION, SECONDS_PER_DAY } from '../formula/index.js';
import { tubVolume } from '../groundwater/index.js';
import { daysCounted, type Site } from '../site/index.js';
import { clayArrival, LEAST_FLOOR, planArea } from '../uplift/index.js';

/** Water outside in a month. */
export interface MonthWater {
  /** head by which the clay gives water, m above the datum */
  clay: number;
  /** level in the ring, m above the datum */
  standing: number;
}

/** Years of an emptying after which it counts as never lifted. Our choice. */
const LONGEST = 5;

/**
 * Shortest time from the emptying of a pond until its liner lifts, over the days of a month on which it may start: what
 * seeps in is added up from month to month, each with its own head on all its days.
 * @param months - January first, with ground and floor alike in all
 * @param lifted - depth of water over the floor that counts as lifted, m
 * @returns seconds for a month, 0–11, Infinity never; `free`: nothing stands above the floor in the days as planned
 */
export function soonestLift(
  site: Site,
  depth: number,
  months: readonly (MonthWater & { permeability: number; holds: number })[],
  lifted: number,
): (month: number, free: boolean) => number {
  const { tub, pond } = site;
  const wanted = lifted * Math.max(planArea(pond.shape, depth), LEAST_FLOOR);
  const water = months.map(({ clay, standing, permeability, holds }) => {
    const rise = clay > holds + LEVEL_RESOLUTION ? clay - holds : 0;
    return {
      /** m³ a day */
      seeps: clayArrival(pond.shape, depth, rise, permeability) * SECONDS_PER_DAY,
      stands:
        tub && standing > holds + LEVEL_RESOLUTION ? tubVolume(tub, standing) - tubVolume(tub, holds) : 0,
    };
  });
  const never = water.every(({ seeps, stands }) => seeps === 0 && stands < wanted);
  /** days from a day of a month on */
  const from = (first: number, day: number): number => {
    let [days, come] = [0, 0];
    for (let i = 0, used = day; i < 12 * LONGEST; i++, used = 0) {
      const month = (first + i) % 12;
      const { seeps, stands } = water[month];
      const missing = wanted - stands - come;
      if (missing <= 0) return days;
      const length = DAYS_OF_MONTH[month] - used;
      if (seeps * length >= missing) return days + missing / seeps;
      come += seeps * length;
      days += length;
    }
    return Number.POSITIVE_INFINITY;
  };
  return (month, free) => {
    if (never) return Number.POSITIVE_INFINITY;
    const dry = free ? daysCounted(pond.daysEmpty) : 0;
    let soonest = Number.POSITIVE_INFINITY;
    for (let start = 0; start < DAYS_OF_MONTH[month]; start++) {
      let [first, day] = [month, start + dry];
      for (; day >= DAYS_OF_MONTH[first]; first = (first + 1) % 12) day -= DAYS_OF_MONTH[first];
      soonest = Math.min(soonest, dry + from(first, day));
    }
    return soonest * SECONDS_PER_DAY;
  };
}
