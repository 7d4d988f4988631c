import type { LiftingHeads } from './liftingHeads.js';

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
  /** what was asked last: at the spill level one year is like the next */
  private sample = -1;
  private undrained = 0;
  private tub = 0;
  private found = 0;

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
  }

  /** Whether no head within the bounds lifts it at any depth. */
  get neverLifts(): boolean {
    return this.from === this.count;
  }

  /**
   * First of the depths at which the liner lifts within the days it stands empty; their count where it never does.
   * @param undrained - head without a drain, and `tub` the level in the ring
   */
  firstLift(sample: number, undrained: number, tub: number): number {
    if (sample === this.sample && undrained === this.undrained && tub === this.tub) return this.found;
    this.sample = sample;
    this.undrained = undrained;
    this.tub = tub;
    this.found = this.search(sample, undrained, tub);
    return this.found;
  }

  private search(sample: number, undrained: number, tub: number): number {
    // Deeper never lifts less.
    let low = this.from;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.lifting.lifts(sample, middle, this.head(middle, undrained), tub)) high = middle;
      else low = middle + 1;
    }
    return low;
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
    return Math.max(Math.min(undrained, this.most[j]), this.least);
  }
}
