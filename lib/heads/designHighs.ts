import { quantile } from '../sampling/index.js';
import type { MonthlyLevels, WaterEnsemble, Way } from '../site/index.js';
import { highestOfThree, undrainedHead } from './head.js';
import type { Measures } from './measures.js';

/** What decides about the undrained head, beside the site. */
type Undrained = Pick<Measures, 'way' | 'cutoff'>;

/** Values behind a quantile: the highest of a year or month, of an emptying begun in it, behind the uphill wall, of the clay, in the ring. */
export interface Drawn extends Undrained {
  of: 'year' | keyof MonthlyLevels | 'uphill' | 'clay' | 'ring';
  /** 1–12; absent: of the year */
  month?: number;
}

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
    return this.seek(p, { of: 'year', ...only(m) });
  }

  /** The same for the highs of a month, 1–12, or of the emptyings that start in it. */
  monthly(m: Undrained, month: number, p: number, over: keyof MonthlyLevels = 'month'): number {
    return this.seek(p, { of: over, month, ...only(m) });
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
    return this.seek(p, { of: 'uphill', month, way: 'asIs' });
  }

  /** Head of the clay alone, by which it gives water, by the same measure. */
  clay({ cutoff }: Undrained, month: number, p: number): number {
    return this.seek(p, { of: 'clay', month, way: 'asIs', cutoff });
  }

  /** Level in the ring by the same measure, that in the clay where it is dry; −Infinity where there is no ring. */
  ring(m: Undrained, month: number, p: number): number {
    return this.water.tub ? this.seek(p, { of: 'ring', month, way: m.way }) : Number.NEGATIVE_INFINITY;
  }

  /** What such a quantile is sought among, m above the datum; index sample × years + year. */
  values({ of, way, cutoff, month = 1 }: Drawn): Float64Array {
    const at = this.levelAt(of, { way, cutoff }, month - 1);
    const values = new Float64Array(this.highs.clayLow.length);
    for (let i = 0; i < values.length; i++) values[i] = at(i);
    return values;
  }

  private levelAt(of: Drawn['of'], { way, cutoff }: Undrained, month: number): (i: number) => number {
    const { clayLow, clayHigh, tub } = this.water;
    const none = Number.NEGATIVE_INFINITY;
    switch (of) {
      case 'year': {
        const { clayLow, clayHigh, tub } = this.highs;
        const ring = tub?.[way];
        return (i) => undrainedHead(cutoff, clayLow[i], clayHigh[i], ring ? ring[i] : none);
      }
      case 'uphill':
        return (i) => clayHigh.month[i * 12 + month];
      case 'clay':
        return (i) =>
          undrainedHead(cutoff, clayLow.month[i * 12 + month], clayHigh.month[i * 12 + month], none);
      case 'ring': {
        const ring = wetOrClay(tub![way].month, clayLow.month);
        return (i) => ring(i * 12 + month);
      }
      default: {
        const [low, high, ring] = [clayLow[of], clayHigh[of], tub?.[way][of]];
        return (i) => {
          const at = i * 12 + month;
          return undrainedHead(cutoff, low[at], high[at], ring ? ring[at] : none);
        };
      }
    }
  }

  private seek(p: number, drawn: Drawn): number {
    const key = `${drawn.of} ${drawn.month} ${drawn.way} ${drawn.cutoff} ${p}`;
    let found = this.found.get(key);
    if (found === undefined) {
      found = quantile(this.values(drawn), p);
      this.found.set(key, found);
    }
    return found;
  }
}

const only = ({ way, cutoff }: Undrained): Undrained => ({ way, cutoff });
