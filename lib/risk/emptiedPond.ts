import { SECONDS_PER_DAY } from '../formula/index.js';
import { tubVolume } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import type { Site } from '../site/index.js';
import { LEAST_FLOOR, LIFT_VOLUME_DEPTH, planArea } from '../uplift/index.js';
import { emptiedHold } from './emptying.js';
import type { Measures } from './measures.js';
import { baredSides } from './sides.js';

/** A head that a drain keeps between bounds, the upper one by depth; m above the datum. */
export interface Bounds {
  least: number;
  most?: Float64Array;
}

/** What a head outside brings, whatever the depth: plan area at it, m², and water in the ring, m³. */
interface Water {
  head: number;
  tub: number;
  gathering: number;
  volume: number;
}

/**
 * An emptied pond at each of many depths, ascending, with the head outside kept between bounds: at which it lifts
 * first, and at which a side slumps.
 */
export class EmptiedPond {
  /** how many depths */
  private readonly count: number;
  /** level from which water lifts it, by depth, m above the datum */
  private readonly holds: Float64Array;
  /** greatest head, by depth */
  private readonly most: Float64Array;
  private readonly least: number;
  /** greatest head that any depth sees */
  private readonly highest: number;
  /** shallowest depth that a head within the bounds can lift at all */
  private readonly from: number;
  private readonly sides: Float64Array;
  private readonly areas: Float64Array;
  /** water over the floor that counts as lifted, m³ */
  private readonly wanted: Float64Array;
  private readonly standing: Float64Array;
  /** level of the rim of a pond without ballast, m above the datum */
  private readonly rim: number;
  private readonly seconds: number;
  private last = { head: Number.NaN, ring: 0, conductivity: 0, first: 0 };
  private water: Water = { head: Number.NaN, tub: Number.NaN, gathering: 0, volume: 0 };

  constructor(
    private readonly site: Site,
    m: Measures,
    depths: ArrayLike<number>,
    { least, most }: Bounds,
  ) {
    const { pond, tub } = site;
    const at = (f: (depth: number) => number) => Float64Array.from(depths, f);
    this.count = depths.length;
    this.holds = at((depth) => emptiedHold(site, m, depth));
    this.most = most ?? new Float64Array(this.count).fill(Number.POSITIVE_INFINITY);
    this.least = least;
    this.highest = Math.max(...this.most);
    this.from = this.firstAbove(0, Number.POSITIVE_INFINITY);
    this.sides = baredSides(m, depths);
    this.areas = at((depth) => Math.max(planArea(pond.shape, depth), LEAST_FLOOR));
    this.wanted = this.areas.map((area) => LIFT_VOLUME_DEPTH * area);
    this.standing = at((depth) => (tub ? tubVolume(tub, emptiedHold(site, m, depth)) : 0));
    this.rim = m.raise + pond.floorBallast + m.ballast;
    this.seconds = pond.daysEmpty * SECONDS_PER_DAY;
  }

  /** Whether no head within the bounds lifts it at any depth. */
  get neverLifts(): boolean {
    return this.from === this.count;
  }

  /**
   * First of the depths at which the liner lifts within the days it stands empty; their count where it never does.
   * @param undrained - head without a drain, and `tub` the level in the ring
   */
  firstLift(undrained: number, tub: number, conductivity: number): number {
    if (this.from === this.count) return this.count;
    // Above what the drain lets through, or at the spill level, one year is like the last.
    const head = Math.min(undrained, this.highest);
    const ring = Math.min(tub, head);
    const { last } = this;
    if (head !== last.head || ring !== last.ring || conductivity !== last.conductivity)
      this.last = { head, ring, conductivity, first: this.search(head, ring, conductivity) };
    return this.last.first;
  }

  private search(undrained: number, ring: number, conductivity: number): number {
    const { count } = this;
    let yes = this.firstAbove(this.from, undrained);
    if (yes === count || this.lifts(yes, undrained, ring, conductivity)) return yes;
    // Deeper never lifts less.
    let no = yes;
    yes = count - 1;
    if (!this.lifts(yes, undrained, ring, conductivity)) return count;
    while (yes - no > 1) {
      const middle = (no + yes) >> 1;
      if (this.lifts(middle, undrained, ring, conductivity)) yes = middle;
      else no = middle;
    }
    return yes;
  }

  /**
   * First of the depths at which a bared side slumps; their count where it never does.
   * @param wet - first depth whose side is too tall with water in its crack, and `dry` with air
   */
  firstSlump(undrained: number, wet: number, dry: number): number {
    let j = wet;
    // The crack reaches half way down the side: water stands in it when the head outside is above that.
    while (j < dry && this.head(j, undrained) <= -this.sides[j] / 2) j++;
    return j;
  }

  private head(j: number, undrained: number): number {
    const most = this.most[j];
    return Math.max(Math.min(undrained, most), this.least);
  }

  /** First of the depths from one on at which the head is above what holds the liner. */
  private firstAbove(from: number, undrained: number): number {
    let [low, high] = [from, this.count];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.head(middle, undrained) > this.holds[middle]) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  private lifts(j: number, undrained: number, tub: number, conductivity: number): boolean {
    const head = this.head(j, undrained);
    const rise = head - this.holds[j];
    if (rise <= 0) return false;
    if (head !== this.water.head || tub !== this.water.tub) this.water = this.waterAt(head, tub);
    const { gathering, volume } = this.water;
    const ring = volume - this.standing[j];
    const missing = ring > 0 ? this.wanted[j] - ring : this.wanted[j];
    if (missing <= 0) return true;
    const radius = Math.sqrt((this.areas[j] + gathering) / (2 * Math.PI));
    return discInflow.compute(conductivity, radius, rise) * this.seconds > missing;
  }

  private waterAt(head: number, tub: number): Water {
    const { pond, tub: geometry } = this.site;
    return {
      head,
      tub,
      gathering: planArea(pond.shape, Math.max(this.rim - head, 0)),
      volume: geometry ? tubVolume(geometry, Math.min(tub, head)) : 0,
    };
  }
}
