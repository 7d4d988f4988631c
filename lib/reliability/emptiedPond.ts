import type { Emptyings, UndrainedHeads } from '../basis/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import type { LiftingHeads } from '../heads/index.js';
import { meanRise, rungBelow } from '../site/index.js';

/** A head that a drain keeps between bounds, the upper one by depth; m above the datum. */
export interface Bounds {
  least: number;
  most?: Float64Array;
}

/** Emptyings of one month of a sample, by rank from the highest head down. */
interface RankedEmptyings {
  sample: number;
  /** index of the highest head of the clay */
  first: number;
  /** index of the month in the mean heights, by year */
  month: (year: number) => number;
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
  /** first rung of the mean heights below what holds the liner, by depth */
  private readonly rungs: Uint8Array;

  /**
   * @param lifting - of the same depths
   * @param cracks - heads outside above which water stands in a crack behind a bared side, by depth, m above the datum
   * @param heads - of the emptyings without a drain
   */
  constructor(
    private readonly lifting: LiftingHeads,
    private readonly cracks: Float64Array,
    { least, most }: Bounds,
    private readonly emptyings: Emptyings,
    private readonly heads: UndrainedHeads,
  ) {
    const { holds } = lifting;
    this.count = cracks.length;
    this.most = most ?? new Float64Array(this.count).fill(Number.POSITIVE_INFINITY);
    this.least = least;
    const reached = holds.findIndex(
      (hold, j) => this.head(j, Number.POSITIVE_INFINITY) > hold + LEVEL_RESOLUTION,
    );
    this.from = reached < 0 ? this.count : reached;
    this.rungs = Uint8Array.from(holds, (hold) => rungBelow(hold - heads.shift));
  }

  /** Whether no head within the bounds lifts it at any depth. */
  get neverLifts(): boolean {
    return this.from === this.count;
  }

  /**
   * First of the depths at which the liner lifts within the days it stands empty, of every year of an emptying; their
   * count where it never does.
   * @param into - by year
   */
  firstLifts(of: RankedEmptyings, into: Uint16Array): void {
    const { year } = this.heads;
    // Years of like heads lift at like depths: sought from where the one before did.
    let j = this.from;
    for (let i = of.first; i < of.first + into.length; i++) {
      while (j > this.from && this.lifts(of, i, j - 1)) j--;
      while (j < this.count && !this.lifts(of, i, j)) j++;
      into[year[i]] = j;
    }
  }

  /**
   * First of the depths at which a bared side slumps, of every year of an emptying; their count where it never does.
   * @param wet - first depth whose side is too tall with water in its crack, and `dry` with air
   */
  firstSlumps({ first }: RankedEmptyings, wet: number, dry: number, into: Uint16Array): void {
    const { year, emptied } = this.heads;
    for (let i = first; i < first + into.length; i++) {
      let j = wet;
      while (j < dry && this.head(j, emptied[i]) <= LEVEL_RESOLUTION + this.cracks[j]) j++;
      into[year[i]] = j;
    }
  }

  /**
   * First of the depths at which a side slips by the kind of its ground, where that is sooner than what is known.
   * @param levels - outside, above which it slips, by depth, m above the datum
   */
  firstSlips({ first }: RankedEmptyings, levels: Float64Array, into: Uint16Array): void {
    const { year, emptied } = this.heads;
    const from = levels.findIndex((level) => level < Number.POSITIVE_INFINITY);
    for (let i = first; from >= 0 && i < first + into.length; i++) {
      let j = from;
      while (j < into[year[i]] && this.head(j, emptied[i]) <= levels[j] + LEVEL_RESOLUTION) j++;
      into[year[i]] = Math.min(into[year[i]], j);
    }
  }

  private lifts(of: RankedEmptyings, i: number, j: number): boolean {
    const { ring, year, clay, shift } = this.heads;
    const { low, high, rises, stored, tub } = this.emptyings;
    const hold = this.lifting.holds[j];
    const highest = this.head(j, clay[i]) - hold;
    let mean = highest;
    // Of water seen under the liner only its highest is known.
    if ((stored || tub === undefined) && highest > LEVEL_RESOLUTION) {
      const month = of.month(year[i]);
      const top = Math.max(low[month], high[month]);
      mean = meanRise(top, rises, month, hold - shift, this.rungs[j]);
      // What comes back through the drain is there on all days.
      if (this.least > hold) mean += this.least - hold;
      if (mean > highest) mean = highest;
    }
    return this.lifting.lifts(of.sample, j, highest, mean, Math.min(ring[i], this.most[j]));
  }

  private head(j: number, undrained: number): number {
    return Math.max(Math.min(undrained, this.most[j]), this.least);
  }
}
