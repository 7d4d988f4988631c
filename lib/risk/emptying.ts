import { SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import { tubVolume } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import type { Site } from '../site/index.js';
import { clayArrival, LEAST_FLOOR, LIFT_VOLUME_DEPTH, planArea, secondsToFill } from '../uplift/index.js';
import { floorLevel, type Measures } from './measures.js';

/** Level below which water does not lift an emptied liner: its lowest point and what lies on it, m above the datum. */
export function emptiedHold(site: Site, m: Measures, depth: number): number {
  return floorLevel(depth, m) + site.pond.floorBallast + m.ballast;
}

/**
 * Seconds until an emptied liner lifts; 0 at once, Infinity never.
 * @param hold - level from which water lifts it, m above the datum
 * @param head - outside, and `tub` in the ring
 * @param lifted - depth of water over the floor that counts as lifted, m
 */
export function secondsToLift(
  site: Site,
  depth: number,
  hold: number,
  head: number,
  tub: number,
  conductivity: number,
  lifted = LIFT_VOLUME_DEPTH,
  use: Use = unrecorded,
): number {
  if (head <= hold) return Number.POSITIVE_INFINITY;
  const { shape } = site.pond;
  const ring = site.tub && tub > hold ? tubVolume(site.tub, tub) - tubVolume(site.tub, hold) : 0;
  if (ring >= lifted * Math.max(planArea(shape, depth), LEAST_FLOOR)) return 0;
  const clay = clayArrival(shape, depth, head - hold, conductivity, use);
  return secondsToFill(planArea(shape, depth), { clay, ring, storm: 0 }, lifted, use);
}

/** A head that a drain keeps between bounds, the upper one by depth. */
export interface Bounds {
  least: number;
  most?: Float64Array;
}

/** An emptied pond at each of many depths, ascending: at which it lifts first, and at which a side slumps. */
export class EmptiedPond {
  /** level from which water lifts it, by depth, m above the datum */
  readonly holds: Float64Array;
  private readonly sides: Float64Array;
  private readonly areas: Float64Array;
  private readonly standing: Float64Array;
  /** level of the rim of a pond without ballast, m above the datum */
  private readonly rim: number;
  private readonly seconds: number;

  constructor(
    private readonly site: Site,
    m: Measures,
    depths: ArrayLike<number>,
  ) {
    const { pond, tub } = site;
    const at = (f: (depth: number) => number) => Float64Array.from(depths, f);
    this.holds = at((depth) => emptiedHold(site, m, depth));
    this.sides = at((depth) => Math.max(depth - m.raise, 0));
    this.areas = at((depth) => Math.max(planArea(pond.shape, depth), LEAST_FLOOR));
    this.standing = at((depth) => (tub ? tubVolume(tub, emptiedHold(site, m, depth)) : 0));
    this.rim = m.raise + pond.floorBallast + m.ballast;
    this.seconds = pond.daysEmpty * SECONDS_PER_DAY;
  }

  /** Whether a drain that keeps the head within bounds keeps it from lifting at every depth. */
  neverLifts({ least, most }: Bounds): boolean {
    return most?.every((level, j) => Math.max(level, least) <= this.holds[j]) ?? false;
  }

  /** Tallest side that is bared, m. */
  get tallest(): number {
    return this.sides[this.sides.length - 1];
  }

  /**
   * First of the depths at which the liner lifts within the days it stands empty; their count where it never does.
   * @param undrained - head without a drain, and `tub` the level in the ring
   */
  firstLift(bounds: Bounds, undrained: number, tub: number, conductivity: number): number {
    const count = this.holds.length;
    // Deeper never lifts less.
    if (!this.lifts(count - 1, bounds, undrained, tub, conductivity)) return count;
    if (this.lifts(0, bounds, undrained, tub, conductivity)) return 0;
    let [no, yes] = [0, count - 1];
    while (yes - no > 1) {
      const middle = (no + yes) >> 1;
      if (this.lifts(middle, bounds, undrained, tub, conductivity)) yes = middle;
      else no = middle;
    }
    return yes;
  }

  /**
   * First of the depths at which a bared side slumps; their count where it never does.
   * @param wet - height the side stands with water in its crack, m
   * @param dry - with air
   */
  firstSlump(bounds: Bounds, undrained: number, wet: number, dry: number): number {
    const { sides } = this;
    const count = sides.length;
    let j = count;
    while (j > 0 && sides[j - 1] > wet) j--;
    // The crack reaches half way down the side: water stands in it when the head outside is above that.
    while (j < count && sides[j] <= dry && headAt(bounds, j, undrained) <= -sides[j] / 2) j++;
    return j;
  }

  private lifts(j: number, bounds: Bounds, undrained: number, tub: number, conductivity: number): boolean {
    const { shape } = this.site.pond;
    const geometry = this.site.tub;
    const head = headAt(bounds, j, undrained);
    const rise = head - this.holds[j];
    if (rise <= 0) return false;
    const level = Math.min(tub, head);
    const ring = geometry && level > this.holds[j] ? tubVolume(geometry, level) - this.standing[j] : 0;
    const missing = LIFT_VOLUME_DEPTH * this.areas[j] - ring;
    if (missing <= 0) return true;
    const gathering = (this.areas[j] + planArea(shape, Math.max(this.rim - head, 0))) / 2;
    return discInflow.compute(conductivity, Math.sqrt(gathering / Math.PI), rise) * this.seconds > missing;
  }
}

function headAt({ least, most }: Bounds, j: number, undrained: number): number {
  return Math.max(most === undefined || undrained < most[j] ? undrained : most[j], least);
}
