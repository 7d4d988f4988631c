import { quantile } from '../sampling/index.js';
import type { WaterEnsemble, Way } from '../site/index.js';
import { undrainedHead } from './head.js';
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

/** Quantiles of the undrained head, of the yearly highs and month by month; each is sought once. */
export class DesignHighs {
  private readonly found = new Map<string, number>();

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

  /** The same for the highs of a month, 1–12. */
  monthly(m: Undrained, month: number, p: number): number {
    const { clayLow, clayHigh, tub } = this.water;
    const ring = tub?.[m.way].month;
    return this.seek(`${month} ${m.way} ${m.cutoff} ${p}`, this.highs.clayLow.length, p, (i) => {
      const at = i * 12 + month - 1;
      return undrainedHead(
        m.cutoff,
        clayLow.month[at],
        clayHigh.month[at],
        ring ? ring[at] : Number.NEGATIVE_INFINITY,
      );
    });
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

  /** Level in the ring by the same measure; −Infinity where there is none. */
  ring(m: Undrained, month: number, p: number): number {
    const ring = this.water.tub?.[m.way].month;
    if (!ring) return Number.NEGATIVE_INFINITY;
    return this.seek(
      `ring ${month} ${m.way} ${p}`,
      this.highs.clayLow.length,
      p,
      (i) => ring[i * 12 + month - 1],
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
