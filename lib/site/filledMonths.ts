/** Months of the year of which nothing was told or seen. */

/**
 * Wet months of which nothing is known are as wet as they may be: a season nobody looked in is not dry for it. One alone
 * between two that are known lies between them.
 * @param known - depths, January to December
 * @param wetMonths - 1–12
 * @param wettest - depth of those that are not known
 * @returns the same with these filled in
 */
export function wetFilled(
  known: readonly (number | undefined)[],
  wetMonths: readonly number[],
  wettest: number,
): (number | undefined)[] {
  const alone = (m: number) => known[(m + 11) % 12] !== undefined && known[(m + 1) % 12] !== undefined;
  return known.map((d, m) => (d === undefined && wetMonths.includes(m + 1) && !alone(m) ? wettest : d));
}

/**
 * Straight between the months that are known, round the year, at the wetter end of a month: its highest water is asked for.
 * @param known - depths, January to December, one of them at least
 * @returns all twelve
 */
export function interpolate(known: (number | undefined)[]): number[] {
  return known.map((d, m) => {
    if (d !== undefined) return d;
    let back = 1;
    while (known[(m - back + 12) % 12] === undefined) back++;
    let on = 1;
    while (known[(m + on) % 12] === undefined) on++;
    const a = known[(m - back + 12) % 12]!;
    const b = known[(m + on) % 12]!;
    const wetter = a < b ? back - 0.5 : back + 0.5;
    return a + ((b - a) * wetter) / (back + on);
  });
}
