import type { Situation } from './situation.js';

/**
 * Months in which no level of the pond is safe: the level to keep lies above the full one, and the pond as it is kept, and full
 * to the brim, fails oftener than is accepted.
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
  const yearly = (of: Situation['situation']) =>
    rows.find(({ situation, month }) => situation === of && month === null)?.allowed;
  // A blocked drain has no row of the brim.
  if ((yearly(kept) ?? true) || (kept === 'drawn-down' && yearly('full'))) return [];
  return rows.flatMap(({ situation, month, lowest_level_m: lowest }) =>
    situation === lowered && month !== null && lowest !== null && lowest > full + 1e-9 ? [month] : [],
  );
}
