import type { LiftingHeads } from './liftingHeads.js';
import type { UndrainedHeads } from './undrainedHeads.js';

/** A head that a drain keeps between bounds, the upper one by depth; m above the datum. */
export interface Bounds {
  least: number;
  most?: Float64Array;
}

/** Levels in a ring as full as the head outside, and below every floor. */
const FULL = Number.POSITIVE_INFINITY;
const EMPTY = Number.NEGATIVE_INFINITY;

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
   * @param holds - level from which water lifts it, by depth, m above the datum
   * @param sides - bared, by depth, m
   */
  constructor(
    private readonly lifting: LiftingHeads,
    private readonly holds: Float64Array,
    private readonly sides: Float64Array,
    { least, most }: Bounds,
  ) {
    this.count = sides.length;
    this.most = most ?? new Float64Array(this.count).fill(Number.POSITIVE_INFINITY);
    this.least = least;
    const reached = holds.findIndex((hold, j) => this.head(j, Number.POSITIVE_INFINITY) > hold);
    this.from = reached < 0 ? this.count : reached;
    this.lowest = holds[this.count - 1];
  }

  /** Whether no head within the bounds lifts it at any depth. */
  get neverLifts(): boolean {
    return this.from === this.count;
  }

  /**
   * First of the depths at which the liner lifts within the days it stands empty, of every year of an emptying; their
   * count where it never does.
   * @param first - index of the highest of the emptying's heads
   * @param into - by year
   */
  firstLifts(sample: number, heads: UndrainedHeads, first: number, into: Uint16Array): void {
    // The lower the head the deeper it lifts first, were the ring as full as the head, or empty.
    let full = -1;
    let empty = -1;
    for (let i = first; i < first + into.length; i++) {
      const head = heads.emptied[i];
      const ring = heads.ring[i];
      let depth: number;
      if (ring <= this.lowest) depth = empty = this.deeper(sample, empty, head, EMPTY);
      else {
        depth = full = this.deeper(sample, full, head, FULL);
        if (ring < Math.max(head, this.least)) {
          empty = this.deeper(sample, Math.max(empty, full), head, EMPTY);
          depth = this.between(sample, full, empty, head, ring);
        }
      }
      into[heads.year[i]] = depth;
    }
  }

  /** First depth that lifts, from that of a higher head on; −1: none is known. */
  private deeper(sample: number, higher: number, head: number, ring: number): number {
    if (higher < 0) return this.between(sample, this.from, this.count, head, ring);
    let j = higher;
    while (j < this.count && !this.lifts(sample, j, head, ring)) j++;
    return j;
  }

  /** First depth from `low` on that lifts, `high` at the latest. */
  private between(sample: number, low: number, high: number, undrained: number, ring: number): number {
    // Deeper never lifts less.
    let [no, yes] = [low, high];
    while (no < yes) {
      const middle = (no + yes) >> 1;
      if (this.lifts(sample, middle, undrained, ring)) yes = middle;
      else no = middle + 1;
    }
    return yes;
  }

  /**
   * First of the depths at which a bared side slumps, of every year of an emptying; their count where it never does.
   * @param wet - first depth whose side is too tall with water in its crack, and `dry` with air
   */
  firstSlumps(heads: UndrainedHeads, first: number, wet: number, dry: number, into: Uint16Array): void {
    for (let i = first; i < first + into.length; i++) {
      let j = wet;
      // The crack reaches half way down the side: water stands in it when the head outside is above that.
      while (j < dry && this.head(j, heads.emptied[i]) <= -this.sides[j] / 2) j++;
      into[heads.year[i]] = j;
    }
  }

  private lifts(sample: number, j: number, undrained: number, ring: number): boolean {
    return this.lifting.lifts(sample, j, this.head(j, undrained) - this.holds[j], ring);
  }

  private head(j: number, undrained: number): number {
    return Math.max(Math.min(undrained, this.most[j]), this.least);
  }
}
