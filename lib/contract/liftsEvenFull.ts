import type { Situation } from './situation.js';

/**
 * Months in which no level of the pond is safe: the level to keep lies above the full one, and the pond as it is kept
 * fails oftener than is accepted.
 * @param rows - of one option
 * @param full - level of the full pond, m
 * @param kept - how it is kept, and the months it is let fall in: with a drain, or with it blocked
 * @returns 1–12
 */
export function liftsEvenFull(
  rows: readonly Situation[],
  full: number,
  { kept, let: lowered }: { kept: Situation['situation']; let: Situation['situation'] } = {
    kept: 'drawn-down',
    let: 'emptied',
  },
): number[] {
  if (rows.find(({ situation, month }) => situation === kept && month === null)?.allowed ?? true) return [];
  return rows.flatMap(({ situation, month, lowest_level_m: lowest }) =>
    situation === lowered && month !== null && lowest !== null && lowest > full + 1e-9 ? [month] : [],
  );
}
