import type { Report, Situation } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { beforeDiggingWords } from './beforeDigging.js';
import { monthName } from './monthWords.js';
import { orderText } from './say.js';

interface ToldPanel {
  title: string;
  word: string;
  margin: string;
  water: string;
  row: Situation;
  note: string | null;
  band: { low_m: number; high_m: number; kept: boolean } | null;
}

/** What which water wins shows, for whoever does not see it. */
export function whichWaterAlt(panels: readonly ToldPanel[], report: Report, units: UnitSystem): string {
  const { accepted_risk, pond } = report;
  const before = beforeDiggingWords(report);
  if (panels.length === 0) return 'No water was computed against the pond.';
  const level = (metres: number) => formatQuantity(metres, 'level', units);
  const told = panels.map(({ title, word, margin, water, row, note, band }) => {
    const range = band
      ? `, the month's highest water ${band.kept ? 'without the drain ' : ''}${level(band.low_m)} to ${level(band.high_m)} in 8 years of 10`
      : '';
    return `${title}: ${word.toLowerCase()}, ${margin}; ${water} at ${level(row.water?.level_m ?? 0)}${range}.${note ? ` ${note}` : ''}`;
  });
  return `Which water wins? ${before ? `${before} ` : ''}The pond cut across, ${formatQuantity(pond.depth_m, 'length', units)} deep as wished; levels from the lowest ground at the rim; the water that decides stands higher in ${orderText(accepted_risk)}. ${told.join(' ')}`;
}

/**
 * What the line and the bar of a panel are.
 * @param accepted - risk a year
 * @returns sentences
 */
export function whichWaterKey(accepted: number): string {
  return `The heavy line is the water that decides: it stands higher in ${orderText(accepted)}. The bar is where the month's highest water stands in 8 years of 10.`;
}

/** The bar by name; how many years stays on one row. */
export function bandWords({ month, kept }: { month: number; kept: boolean }): string {
  return `highest water in ${monthName(month)}, 8\u00a0years\u00a0of\u00a010${kept ? ', without the drain' : ''}`;
}
