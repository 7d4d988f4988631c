/** What looks of some winters tell of others, on a measured well: see `test/fixtures/wells`. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { otherYearSpread, wetSeasons } from '../../lib/site/otherYears.js';

const CSV = readFileSync(new URL('../fixtures/wells/boulder-clay/heads.csv', import.meta.url), 'utf8');
const WET = [11, 12, 1, 2, 3, 4];

/** Depths by winter and month, m. */
const winters = new Map<number, Map<number, number[]>>();
for (const line of CSV.trim().split('\n').slice(1)) {
  const [date, depth] = line.split(',');
  const [year, month] = date!.split('-').map(Number) as [number, number];
  const winter = winters.get(month > 6 ? year + 1 : year) ?? new Map<number, number[]>();
  winters.set(month > 6 ? year + 1 : year, winter);
  winter.set(month, [...(winter.get(month) ?? []), Number(depth)]);
}
const whole = [...winters.values()].filter((winter) => WET.every((month) => winter.has(month)));
const highest = (winter: Map<number, number[]>) => Math.min(...[...winter.values()].flat());

/** Share of other winters above the 95 % end of looks once a wet month in so many winters that follow each other. */
function passed(seasons: number): number {
  const found: boolean[] = [];
  for (let first = 0; first + seasons <= whole.length; first++) {
    const looked = whole.slice(first, first + seasons);
    for (let look = 0; look < 4; look++) {
      const read = looked.flatMap((winter) =>
        WET.map((month) => winter.get(month)![look % winter.get(month)!.length]!),
      );
      const end = Math.min(...read) - 1.645 * otherYearSpread(seasons);
      found.push(
        ...whole.filter((winter) => !looked.includes(winter)).map((winter) => highest(winter) < end),
      );
    }
  }
  return found.filter(Boolean).length / found.length;
}

test.each([1, 2, 3, 5])('looks of %s winters hold the highest of nine other winters in ten', (seasons) => {
  expect(whole.length).toBeGreaterThan(9);
  expect(passed(seasons)).toBeLessThan(0.1);
});

test('more winters tell more, and a winter is one on either side of the new year', () => {
  const spreads = [1, 2, 3, 5].map(otherYearSpread);
  expect(spreads).toEqual([...spreads].sort((a, b) => b - a));
  const day = (date: string) => Date.parse(date) / 86_400_000;
  expect(wetSeasons([day('2023-12-10'), day('2024-01-10'), day('2024-07-10')], WET)).toBe(1);
  expect(wetSeasons([day('2024-01-10'), day('2024-12-10')], WET)).toBe(2);
});
