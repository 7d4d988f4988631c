import type { Basis } from '../basis/index.js';
import { withoutDrain } from '../heads/index.js';
import { monthlyLimits, verdictAt } from '../reliability/index.js';
import { monthWords } from '../text/index.js';
import { drainFor } from '../works/index.js';
import type { Decision } from './decide.js';
import type { AddRule } from './sideRules.js';

const MONTHS = Array.from({ length: 12 }, (_, i) => i + 1);

/** Months in which even the full pond may lift without its drain. */
export function liftsUndrained(basis: Basis, { measures, depth }: Decision): number[] {
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
  if (drain?.kind === 'outlet') {
    if (months.length > 0)
      add(
        'if-drain-stops',
        `Water that stands in the inspection pipe says that the drain has stopped. Even the full pond may lift then ${when(months)}: keep it full to the brim and free the drain the same day.`,
        { months },
      );
    return;
  }
  if (months.length === 0) {
    add(
      'full-if-power-fails',
      'When the power fails, keep the pond full to the brim until the pump runs again.',
    );
    return;
  }
  const designed = drainFor(basis, d.measures, d.depth);
  const hours = Math.min(
    ...months.map((month) => designed?.powerCut?.[month - 1] ?? Number.POSITIVE_INFINITY),
  );
  const storm = designed?.sump?.hoursStorm ?? 0;
  const time = Number.isFinite(hours) ? `about ${hoursDown(hours)}` : 'a year at least';
  add(
    'full-if-power-fails',
    `Without the pump even the full pond may lift ${when(months)}: bed and sump take up ${time} of seepage, ${hoursDown(storm)} of the design storm. A pump on a battery must run by then; keep the pond full to the brim until it does.`,
    { months },
  );
}

const when = (months: number[]) => (months.length === 12 ? 'in any month' : `in ${monthWords(months)}`);

/** Hours rounded to the safe side. */
function hoursDown(hours: number): string {
  return hours < 1
    ? 'less than an hour'
    : hours < 72
      ? `${Math.floor(hours)} hours`
      : `${Math.floor(hours / 24)} days`;
}
