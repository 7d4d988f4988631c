/** How low the pond may be let, month by month, as it is told on the card and the page; from the design situations. */

import { decidingRows } from './decidingRows.js';
import { holdingOf, hoursEmpty } from './holding.js';
import { liftsEvenFull } from './liftsEvenFull.js';
import type { Report } from './report.js';
import type { Situation } from './situation.js';

/** A month of a column of the card. */
export interface MonthLowering {
  /** 1–12 */
  month: number;
  /** m below full; null: to the floor */
  below: number | null;
  /** `briefly`: emptied as planned, for no longer */
  says: 'empty' | 'briefly' | 'down' | 'keep-full' | 'not-even-full';
  /** that it may stand empty, where that is less than a month */
  hours?: number;
}

/** How low, by month: with the drain working or none needed, and with it blocked; absent where there is no drain. */
interface LoweringYear {
  works: MonthLowering[];
  blocked?: MonthLowering[];
}

/**
 * Twelve months, down from the full level to the centimetre on the safe side.
 * @param report - from {@link reportOf}
 */
export function loweringYear(report: Report): LoweringYear {
  const rows = decidingRows(report);
  const advised = rows.some(({ of }) => of === 'recommended');
  const full = report.pond.full_level_m + (advised ? report.result.recommendation.raise_m : 0);
  const yearOf = (situation: Situation['situation'], kept: Situation['situation']) => {
    const lifts = liftsEvenFull(rows, full, { kept, let: situation });
    return rows
      .filter((row) => row.situation === situation && row.month !== null)
      .map((row) => {
        const hours = holdingOf(row) === 'briefly' ? hoursEmpty(row, report) : null;
        return { ...loweringOf(row, full, lifts), ...(hours === null ? {} : { hours }) };
      });
  };
  const blocked = yearOf('drain-blocked', 'drain-blocked');
  return { works: yearOf('emptied', 'drawn-down'), ...(blocked.length > 0 ? { blocked } : {}) };
}

function loweringOf({ month, lowest_level_m, why }: Situation, full: number, lifts: number[]): MonthLowering {
  const at = (below: number | null, says: MonthLowering['says']): MonthLowering => ({
    month: month!,
    below,
    says,
  });
  if (lowest_level_m === null) return at(null, 'empty');
  const below = Math.max(0, Math.floor((full - lowest_level_m) * 100 + 1e-9) / 100);
  if (why === 'briefly') return at(below, 'briefly');
  if (below > 0) return at(below, 'down');
  return at(0, lifts.includes(month!) ? 'not-even-full' : 'keep-full');
}
