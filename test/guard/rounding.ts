/** A survey as another tape would have it that is off by a billionth: what differs then was decided by rounding. */
import { Dice } from '../survey/generated.js';
import type { Told } from './told.js';

const BILLIONTH = 1e-9;

/** Every length of the pond, the levels, the holes and the heads, each moved by itself. */
export function offByABillionth(files: Record<string, string>, seed: number): Record<string, string> {
  const dice = new Dice(seed);
  const moved = (cell: string) =>
    /^-?\d*\.?\d+$/.test(cell) && Number(cell) !== 0
      ? String(Number(cell) * (1 + (dice.chance(0.5) ? BILLIONTH : -BILLIONTH)))
      : cell;
  return Object.fromEntries(
    Object.entries(files).map(([name, text]) => {
      if (name === 'weather.csv' || name === 'climate.csv') return [name, text];
      const [header = '', ...rows] = text.trimEnd().split('\n');
      const long = header.split(',').map((column) => /_(m|ft)$/.test(column));
      const facts = header.startsWith('item,');
      const lines = rows.map((row) =>
        row
          .split(',')
          .map((cell, at, cells) =>
            (facts && at === 1 && /^(m|ft)$/.test(cells[2] ?? '')) || long[at] ? moved(cell) : cell,
          )
          .join(','),
      );
      return [name, `${[header, ...lines].join('\n')}\n`];
    }),
  );
}

/** What a billionth changed: the advice, its depth, or a chance by more than a year in a thousand. */
export function decidedByRounding(one: Told, other: Told): string[] {
  const advice = ({ recommendation: { option, also, depth_m } }: Told) =>
    `${[option, ...also].join(' + ')} at ${depth_m.toFixed(3)} m`;
  const found = advice(one) === advice(other) ? [] : [`${advice(one)}, else ${advice(other)}`];
  one.options.forEach(({ option, risk_at_wish }, at) => {
    const [a, b] = [risk_at_wish?.per_year, other.options[at]?.risk_at_wish?.per_year];
    if (a === b) return;
    if (a === undefined || b === undefined || !(Math.abs(a - b) <= 0.001))
      found.push(`${option}: ${a} a year, else ${b}`);
  });
  return found;
}
