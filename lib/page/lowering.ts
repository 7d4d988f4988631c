/** How low the pond may be let, month by month, as it is told on the card and the page; from the design situations. */

import type { Report, Situation } from '../contract/index.js';
import { liftsEvenFull } from '../figures/evenFull.js';
import { decidingRows } from '../figures/situationTables.js';
import { hoursEmpty, timeWords, verdictOf } from '../figures/waterPanels.js';
import { formatGap, type UnitSystem } from '../units/index.js';

/** A month of a column of the card. */
export interface Lowering {
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
export interface LoweringYear {
  works: Lowering[];
  blocked?: Lowering[];
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
        const hours = verdictOf(row) === 'briefly' ? hoursEmpty(row, report) : null;
        return { ...loweringOf(row, full, lifts), ...(hours === null ? {} : { hours }) };
      });
  };
  const blocked = yearOf('drain-blocked', 'drain-blocked');
  return { works: yearOf('emptied', 'drawn-down'), ...(blocked.length > 0 ? { blocked } : {}) };
}

function loweringOf({ month, lowest_level_m, why }: Situation, full: number, lifts: number[]): Lowering {
  const at = (below: number | null, says: Lowering['says']): Lowering => ({ month: month!, below, says });
  if (lowest_level_m === null) return at(null, 'empty');
  const below = Math.max(0, Math.floor((full - lowest_level_m) * 100 + 1e-9) / 100);
  if (why === 'briefly') return at(below, 'briefly');
  if (below > 0) return at(below, 'down');
  return at(0, lifts.includes(month!) ? 'not-even-full' : 'keep-full');
}

/**
 * A month of the card in words.
 * @param days - that it stands empty as planned
 */
export function loweringWords({ below, says, hours }: Lowering, days: number, units: UnitSystem): string {
  const empty = timeWords(hours ?? 24 * days);
  const down = below === null || below === 0 ? '' : `${formatGap(below, units, 'down')} below full`;
  switch (says) {
    case 'empty':
      return hours === undefined ? 'may be emptied' : `may be emptied for ${empty} at most`;
    case 'briefly':
      return `empty for ${empty} at most; else ${down || 'full'}`;
    case 'down':
      return down;
    case 'keep-full':
      return 'keep full';
    case 'not-even-full':
      return 'not safe even full';
  }
}
