import type { Briefly, PossibleOption, Report } from '../contract/index.js';

/** Months of the wish in which time alone keeps down a pond with nothing done, and for how long. */
export function brieflyUndrained(
  { result, pond }: Report,
  { hours_empty_safe }: PossibleOption,
): Briefly | undefined {
  const months = result.situations.flatMap(({ of, situation, why, month }) =>
    of === 'no-drain' && situation === 'emptied' && why === 'briefly' ? [month!] : [],
  );
  if (months.length === 0) return undefined;
  const hours = Math.min(...months.map((month) => hours_empty_safe[month - 1] ?? Number.POSITIVE_INFINITY));
  return { months, days: Math.min(pond.days_empty, hours / 24), changed: false };
}
