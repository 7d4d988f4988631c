import { quantile } from '../sampling/index.js';
import type { MonthlyLevels, WaterEnsemble, Way } from '../site/index.js';
import { highestOfThree, undrainedHead } from './head.js';
import type { Measures } from './measures.js';

/** What decides about the undrained head, beside the site. */
type Undrained = Pick<Measures, 'way' | 'cutoff'>;

/** Highest level of each year, m above the datum; index sample × years + year. */
export interface YearlyHighs {
  /** in the clay at the low side, behind the uphill wall, in the ring */
  clayLow: Float32Array;
  clayHigh: Float32Array;
  tub?: Record<Way, Float32Array>;
}

/** Level in the ring by place; a dry one has no level of its own, and that of the clay stands for it. */
export function wetOrClay(ring: Float32Array, clay: Float32Array): (i: number) => number {
  return (i) => (ring[i] === Number.NEGATIVE_INFINITY ? clay[i] : ring[i]);
}

/** Quantiles of the undrained head, of the yearly highs and month by month; each is sought once. */
export class DesignHighs {
  private readonly found = new Map<string, number>();
  private readonly waters = new Map<string, 'ring' | 'uphill wall' | 'low side'>();

  constructor(
    private readonly water: WaterEnsemble,
    private readonly highs: YearlyHighs,
  ) {}

  /** Yearly high that a share 1 − p of years exceeds, m above the datum. */
  yearly(m: Undrained, p: number): number {
    const { clayLow, clayHigh, tub } = this.highs;
    const ring = tub?.[m.way];
    return this.seek(`year ${m.way} ${m.cutoff} ${p}`, clayLow.length, p, (i) =>
      undrainedHead(m.cutoff, clayLow[i], clayHigh[i], ring ? ring[i] : Number.NEGATIVE_INFINITY),
    );
  }

  /** The same for the highs of a month, 1–12, or of the emptyings that start in it. */
  monthly(m: Undrained, month: number, p: number, over: keyof MonthlyLevels = 'month'): number {
    const { clayLow, clayHigh, tub } = this.water;
    const [low, high, ring] = [clayLow[over], clayHigh[over], tub?.[m.way][over]];
    return this.seek(`${over} ${month} ${m.way} ${m.cutoff} ${p}`, this.highs.clayLow.length, p, (i) => {
      const at = i * 12 + month - 1;
      return undrainedHead(m.cutoff, low[at], high[at], ring ? ring[at] : Number.NEGATIVE_INFINITY);
    });
  }

  /**
   * The water that is the highest in most of the years, or of a month in them, that a share 1 − p exceeds; without a drain.
   */
  highest(m: Undrained, p: number, month?: number): 'ring' | 'uphill wall' | 'low side' {
    const key = `which ${month} ${m.way} ${m.cutoff} ${p}`;
    const found = this.waters.get(key) ?? this.counted(m, p, month);
    this.waters.set(key, found);
    return found;
  }

  private counted(m: Undrained, p: number, month?: number) {
    const yearly = month === undefined;
    const from = yearly ? 0 : month - 1;
    const { clayLow, clayHigh } = yearly
      ? this.highs
      : { clayLow: this.water.clayLow.month, clayHigh: this.water.clayHigh.month };
    const ring = yearly ? this.highs.tub?.[m.way] : this.water.tub?.[m.way].month;
    const least = yearly ? this.yearly(m, p) : this.monthly(m, month, p);
    const none = Number.NEGATIVE_INFINITY;
    const counts = [0, 0, 0];
    for (let i = from; i < clayLow.length; i += yearly ? 1 : 12) {
      const standing = ring ? ring[i] : none;
      if (undrainedHead(m.cutoff, clayLow[i], clayHigh[i], standing) < least) continue;
      counts[highestOfThree(clayLow[i], undrainedHead(m.cutoff, clayLow[i], clayHigh[i], none), standing)]++;
    }
    return (['ring', 'uphill wall', 'low side'] as const)[counts.indexOf(Math.max(...counts))];
  }

  /** Level behind the uphill wall, whatever is done, by the same measure. */
  uphill(month: number, p: number): number {
    const { clayHigh } = this.water;
    return this.seek(
      `uphill ${month} ${p}`,
      this.highs.clayHigh.length,
      p,
      (i) => clayHigh.month[i * 12 + month - 1],
    );
  }

  /** Head of the clay alone, by which it gives water, by the same measure. */
  clay({ cutoff }: Undrained, month: number, p: number): number {
    const { clayLow, clayHigh } = this.water;
    return this.seek(`clay ${month} ${cutoff} ${p}`, this.highs.clayLow.length, p, (i) => {
      const at = i * 12 + month - 1;
      return undrainedHead(cutoff, clayLow.month[at], clayHigh.month[at], Number.NEGATIVE_INFINITY);
    });
  }

  /** Level in the ring by the same measure, that in the clay where it is dry; −Infinity where there is no ring. */
  ring(m: Undrained, month: number, p: number): number {
    const { clayLow, tub } = this.water;
    if (!tub) return Number.NEGATIVE_INFINITY;
    const ring = wetOrClay(tub[m.way].month, clayLow.month);
    return this.seek(`ring ${month} ${m.way} ${p}`, this.highs.clayLow.length, p, (i) =>
      ring(i * 12 + month - 1),
    );
  }

  private seek(key: string, length: number, p: number, value: (i: number) => number): number {
    let found = this.found.get(key);
    if (found === undefined) {
      const values = new Float64Array(length);
      for (let i = 0; i < length; i++) values[i] = value(i);
      found = quantile(values, p);
      this.found.set(key, found);
    }
    return found;
  }
}
