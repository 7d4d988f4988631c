import type { PondYear } from '../contract/index.js';
import { NOTHING } from '../heads/index.js';
import { type Percentiles, percentiles, Remembered } from '../sampling/index.js';
import { monthValues } from '../site/index.js';
import type { Basis } from './basis.js';
import { keptMonths } from './keptPond.js';

/** Months whose net heads differ by no more are alike, m. Our choice. */
const ALIKE = 0.01;

const found = new Remembered<WaterYears>(2);

/** What of the pond's year does not depend on how high its full level is. */
interface WaterYears {
  /** of the highest daily sum of the water outside and what the pond lacks, m above the datum, January first */
  sums: Percentiles[];
  drawdown: Percentiles[];
  topUp: Percentiles[] | null;
  topUpYear: Percentiles | null;
}

/**
 * The pond's own year beside the water outside, with nothing done.
 * @param basis - site and draws
 * @returns by month what it lacks, what is topped up and its net head; and the months of greatest danger
 */
export function pondYear(basis: Pick<Basis, 'site' | 'draws'>): PondYear {
  const { fullLevel, kept } = basis.site.pond;
  // A level held leaves the water as it is; every other habit runs it again.
  const held = 'held' in kept ? `${kept.held}` : '';
  const { sums, drawdown, topUp, topUpYear } = found.of(basis.site.water, held, () => yearsOf(basis));
  const months = sums.map(({ p10, p50, p90 }, m) => ({
    month: m + 1,
    drawdown_m: drawdown[m],
    top_up_m3: topUp?.[m] ?? null,
    // The higher the water the lower the net head: the percentiles change places.
    net_head_m: { p10: fullLevel - p90, p50: fullLevel - p50, p90: fullLevel - p10 },
  }));
  const least = Math.min(...months.map(({ net_head_m }) => net_head_m.p10));
  return {
    by_month: months,
    top_up_year_m3: topUpYear,
    danger_months: months
      .filter(({ net_head_m }) => net_head_m.p10 <= least + ALIKE)
      .map(({ month }) => month),
  };
}

function yearsOf(basis: Pick<Basis, 'site' | 'draws'>): WaterYears {
  const { water, pond } = basis.site;
  const sums = byMonth(keptMonths(basis, NOTHING));
  if ('held' in pond.kept) {
    const { held } = pond.kept;
    const drawdown = sums.map(() => ({ p10: held, p50: held, p90: held }));
    return { sums, drawdown, topUp: null, topUpYear: null };
  }
  const { drawdown, topUp } = water.pond!;
  const years = new Float64Array(topUp.length / 12);
  topUp.forEach((volume, i) => {
    years[Math.floor(i / 12)] += volume;
  });
  return { sums, drawdown: byMonth(drawdown), topUp: byMonth(topUp), topUpYear: percentiles(years) };
}

/** Percentiles of each month of all samples and years, January first. */
function byMonth(values: ArrayLike<number>): Percentiles[] {
  return Array.from({ length: 12 }, (_, m) => percentiles(monthValues(values, m + 1)));
}
