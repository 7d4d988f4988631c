import type { LiftingHeads } from './liftingHeads.js';
import type { UndrainedHeads } from './undrainedHeads.js';

/** A head that a drain keeps between bounds, the upper one by depth; m above the datum. */
export interface Bounds {
  least: number;
  most?: Float64Array;
}

/**
 * An emptied pond at each of many depths, ascending, with the head outside kept between bounds: at which it lifts
 * first, and at which a side slumps.
 */
export class EmptiedPond {
  /** how many depths */
  private readonly count: number;
  /** greatest head, by depth */
  private readonly most: Float64Array;
  private readonly least: number;
  /** shallowest depth that a head within the bounds can lift at all */
  private readonly from: number;
  /** what holds the deepest floor, m above the datum */
  private readonly lowest: number;

  /**
   * @param lifting - of the same depths
   * @param sides - bared, by depth, m
   */
  constructor(
    private readonly lifting: LiftingHeads,
    private readonly sides: Float64Array,
    { least, most }: Bounds,
  ) {
    this.count = sides.length;
    this.most = most ?? new Float64Array(this.count).fill(Number.POSITIVE_INFINITY);
    this.least = least;
    const reached = lifting.holds.findIndex((hold, j) => this.head(j, Number.POSITIVE_INFINITY) > hold);
    this.from = reached < 0 ? this.count : reached;
    this.lowest = lifting.holds[this.count - 1];
  }

  /** Whether no head within the bounds lifts it at any depth. */
  get neverLifts(): boolean {
    return this.from === this.count;
  }

  /**
   * First of the depths at which the liner lifts within the days it stands empty, of every year of an emptying; their
   * count where it never does.
   * @param first - index of the highest of the emptying's heads
   * @param into - by year, from `at` on
   */
  firstLifts(
    sample: number,
    heads: UndrainedHeads,
    first: number,
    into: Int32Array,
    at: number,
    years: number,
  ): void {
    // The lower the head the deeper it lifts first, as long as the ring is as full as the head, or empty.
    let full = -1;
    let dry = -1;
    for (let i = first; i < first + years; i++) {
      const head = heads.emptied[i];
      const ring = heads.ring[i];
      let depth: number;
      if (ring >= head) depth = full = this.deeper(sample, full, head, ring);
      else if (ring <= this.lowest) depth = dry = this.deeper(sample, dry, head, ring);
      else depth = this.search(sample, head, ring);
      into[at + heads.year[i]] = depth;
    }
  }

  /** First depth that lifts, from that of a higher head on; −1: none is known. */
  private deeper(sample: number, higher: number, head: number, ring: number): number {
    if (higher < 0) return this.search(sample, head, ring);
    let j = higher;
    while (j < this.count && !this.lifting.lifts(sample, j, this.head(j, head), ring)) j++;
    return j;
  }

  private search(sample: number, undrained: number, ring: number): number {
    // Deeper never lifts less.
    let low = this.from;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.lifting.lifts(sample, middle, this.head(middle, undrained), ring)) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /**
   * First of the depths at which a bared side slumps, of every year of an emptying; their count where it never does.
   * @param wet - first depth whose side is too tall with water in its crack, and `dry` with air
   */
  firstSlumps(
    heads: UndrainedHeads,
    first: number,
    wet: number,
    dry: number,
    into: Int32Array,
    at: number,
    years: number,
  ): void {
    for (let i = first; i < first + years; i++) {
      let j = wet;
      // The crack reaches half way down the side: water stands in it when the head outside is above that.
      while (j < dry && this.head(j, heads.emptied[i]) <= -this.sides[j] / 2) j++;
      into[at + heads.year[i]] = j;
    }
  }

  private head(j: number, undrained: number): number {
    return Math.max(Math.min(undrained, this.most[j]), this.least);
  }
}
