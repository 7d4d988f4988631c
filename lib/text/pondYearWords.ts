import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { duringMonths } from './monthWords.js';
/** What a year asks of whoever tops the pond up, and the months in which it comes nearest to lifting. */
export function pondYearWords({ result: { water }, pond }: Report, units: UnitSystem): string[] {
  const { danger_months, by_month, top_up_year_m3 } = water.pond;
  const volume = (value: number) => formatQuantity(value, 'volume', units);
  const p10 = Math.min(...by_month.map(({ net_head_m }) => net_head_m.p10));
  const off = formatQuantity(Math.abs(p10), 'length', units);
  return [
    ...(pond.kept.habit === 'topped-up' && top_up_year_m3
      ? [
          `Topping it up takes ${volume(top_up_year_m3.p50)} in a middle year and ${volume(top_up_year_m3.p90)} in a dry one (1 in 10 takes more).`,
        ]
      : []),
    `With nothing done it comes nearest to lifting ${duringMonths(danger_months)}: in 1 year of 10 ${
      p10 < 0
        ? `the water outside stands ${off} or more above the pond`
        : `the pond stands ${off} or less above the water outside`
    } on some day.`,
  ];
}
