import type { MonthWater } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import type { MonthStrip } from './monthStrips.js';
import { monthName, monthShort } from './monthWords.js';

/** Nobody levels closer, m. */
const LEVEL = 0.005;

interface DrawnYear {
  waters: readonly MonthWater[];
  looks: readonly unknown[];
  strips: readonly MonthStrip[];
  lines: readonly { name: string; level_m: number }[];
}

/** What the year shows, for whoever does not see it. */
export function yearAlt({ waters, looks, strips, lines }: DrawnYear, units: UnitSystem): string {
  const level = (metres: number) =>
    Math.abs(metres) < LEVEL ? 'at the ground' : formatQuantity(metres, 'level', units);
  const told = strips.map(({ title, cells }) => {
    const runs = (['holds', 'briefly', 'fails'] as const).flatMap((verdict) => {
      const months = cells.flatMap((cell, m) =>
        cell.verdict === verdict
          ? [`${monthName(m + 1)}${verdict === 'briefly' ? ` (${cell.word})` : ''}`]
          : [],
      );
      const lead = { holds: 'yes', briefly: 'within limits', fails: 'no' }[verdict];
      return months.length === 0
        ? []
        : [`${lead} in ${months.length === 12 && verdict !== 'briefly' ? 'every month' : months.join(', ')}`];
    });
    return `${title}: ${runs.join('; ')}.`;
  });
  const named = lines.map(({ name, level_m }) => `${name} ${level(level_m)}`).join(', ');
  const water = waters
    .map(
      ({ low_m, middle_m, high_m }, m) =>
        `${monthShort(m + 1)} ${level(middle_m)} (${level(low_m)} to ${level(high_m)})`,
    )
    .join(', ');
  const counted =
    looks.length === 0
      ? 'No look is marked'
      : looks.length === 1
        ? '1 look is marked'
        : `${looks.length} looks are marked`;
  return `Your year. The month's highest water in the clay, middle year and 8 years of 10, from the lowest ground at the rim: ${water}. Levels: ${named}. ${counted}. ${told.join(' ')}`;
}
