import type { Basis } from '../basis/index.js';
import { MONTHS } from '../climate/index.js';
import { withoutDrain } from '../heads/index.js';
import { monthlyLimits, verdictAt } from '../reliability/index.js';
import { drainFor } from '../works/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** Months in which even the full pond may lift without its drain. */
function liftsUndrained(basis: Basis, { measures, depth }: Decision): number[] {
  const without = withoutDrain(measures);
  if (verdictAt(basis, without, depth).kept) return [];
  const brim = basis.site.pond.fullLevel + measures.raise;
  const { lowestSafeLevel } = monthlyLimits(basis, without, depth);
  return MONTHS.filter((month) => (lowestSafeLevel[month - 1] ?? Number.NEGATIVE_INFINITY) > brim + 1e-9);
}

/** What holds while the drain does not run: a full pond, where that is enough; else how long there is. */
export function stoppedRule(basis: Basis, d: Decision, add: AddRule): void {
  const { drain } = d.measures;
  const months = liftsUndrained(basis, d);
  if (drain?.kind !== 'sump') {
    if (months.length > 0) add('if-drain-stops/may-lift', { months }, { months });
    return;
  }
  if (months.length === 0) {
    add('full-if-power-fails/holds', {});
    return;
  }
  const designed = drainFor(basis, d.measures, d.depth);
  const finite = (hours: number) => (Number.isFinite(hours) ? hours : null);
  const hours = Math.min(
    ...months.map((month) => designed?.powerCut?.[month - 1] ?? Number.POSITIVE_INFINITY),
  );
  add(
    'full-if-power-fails/may-lift',
    {
      months,
      hours: finite(hours),
      storm_hours: finite(designed?.sump?.hoursStorm ?? 0),
    },
    { months },
  );
}
