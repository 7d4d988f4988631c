import type { DigWindow } from '../site/digWindow.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { duringMonths, monthName } from './monthWords.js';
import { atLeastText, chanceText } from './say.js';
import { listText } from './sentence.js';
/** What the digging window shows, for whoever does not see it. */
export function digWindowAlt(window: DigWindow, nearest: number, units: UnitSystem): string {
  const { depths, months, pumped } = window;
  const when = months.map(({ chance, at }) => {
    const of = at[nearest]!;
    return `with a chance of ${chanceText(chance)} or more ${of.length === 0 ? 'in no month' : of.length === 12 ? 'in every month' : duringMonths(of)}`;
  });
  const middle = pumped.p50[nearest]!;
  const worst = middle.indexOf(Math.max(...middle));
  const flow = (q: number) => formatQuantity(q, 'flow', units);
  return (
    `Months and depths in which the floor of the dig stays dry. At ${formatQuantity(depths[nearest]!, 'length', units)}, ` +
    `the nearest to the depth wished (outlined), it is dry ${listText(when)}. ` +
    `Most is to be pumped in ${monthName(worst + 1)}: ${flow(middle[worst]!)}, ` +
    `in one dig of ten more than ${flow(pumped.p90[nearest]![worst]!)}; rain into the hole comes on top.`
  );
}

/**
 * A month at a depth of the digging window.
 * @param month - 1 is January
 * @param told - depth of the dig, m, chance that its floor stays dry, and what is to be pumped, m³/s
 * @param units - how numbers are written
 * @returns words
 */
export function digMonthText(
  month: number,
  told: { depth: number; dry: number; pumped: { p50: number; p90: number } },
  units: UnitSystem,
): string {
  const flow = (q: number) => formatQuantity(q, 'flow', units);
  return (
    `${monthName(month)}, ${formatQuantity(told.depth, 'length', units)} deep: floor dry all month with a chance of ` +
    `${atLeastText(told.dry)}; to pump ${flow(told.pumped.p50)}, one dig in ten more than ${flow(told.pumped.p90)}`
  );
}
