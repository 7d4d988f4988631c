import { type Basis, decidingDay } from '../basis/index.js';
import { formula, LEVEL_RESOLUTION } from '../formula/index.js';
import type { Measures } from '../heads/index.js';

/** The level to keep, where the pond holds as it is kept. */
export const lowestAsKept = formula({
  title: 'The level to keep where the pond holds as it is kept',
  symbol: 'l',
  unit: 'm',
  expression: 'min(a, p)',
  parameters: {
    a: { meaning: 'level by the water outside and the margin', unit: 'm', min: -30, max: 10 },
    p: { meaning: 'level of the pond as it is kept', unit: 'm', min: -30, max: 10 },
  },
  compute: (a: number, p: number) => Math.min(a, p),
  validity:
    'where the pond as it is kept fails no more often than is accepted, and its level is not below the water',
  source: 'what is accepted of the pond in use is not forbidden by a margin; our choice',
});

/**
 * Level of the pond on the day that decides in a month (1–12), as it is kept, where that asks for less than the margin does and
 * holds against the water, that month and in the year; m above the datum, undefined elsewhere.
 * @param wanted - level by the water and the margin, m above the datum
 * @param high - water outside, m above the datum
 */
export function keptLevel(
  basis: Basis,
  m: Measures,
  depth: number,
  month: number,
  wanted: number,
  high: number,
): number | undefined {
  const p = 1 - basis.site.pond.acceptedRisk;
  const holds = (pond: number, head: number) => pond + m.ballast >= head - LEVEL_RESOLUTION;
  const { pond } = decidingDay(basis, m, depth, p, month);
  if (pond >= wanted || !holds(pond, high)) return undefined;
  const year = decidingDay(basis, m, depth, p);
  return holds(year.pond, year.head) ? pond : undefined;
}
