import type { Barred, MonthlyLimits } from '../contract/index.js';
import { monthsFree } from '../contract/index.js';
import { SECONDS_PER_DAY } from '../formula/index.js';
import { emptiedSlab, riseBelow } from '../heads/index.js';
import type { Site } from '../site/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** When the pond may be emptied and how low it may be let. */
export function emptyingRules(site: Site, d: Decision, limits: MonthlyLimits, add: AddRule): void {
  const { pond } = site;
  const { lowestSafeLevel } = limits;
  const months = lowestSafeLevel.map((_, i) => i + 1);
  const free = monthsFree(lowestSafeLevel);
  const bound = months.filter((m) => lowestSafeLevel[m - 1] !== null);
  if (bound.length === 0) return;
  // Found safe because the water comes too slowly: as briefly as planned, and no longer.
  const wished = d.change?.emptied_in ?? (pond.emptiedIn === 'any' ? [] : pond.emptiedIn);
  const days = d.change?.days_empty ?? pond.daysEmpty;
  const planned = d.verdict?.safe && d.option !== 'measure-first';
  const brief = planned ? bound.filter((m) => wished.includes(m)) : [];
  // Never longer than the water of the design year leaves.
  const lasting = (of: number[]) => Math.min(...of.map((m) => limits.empty[m - 1].seconds / SECONDS_PER_DAY));
  const briefly = { months: brief, days: Math.min(days, lasting(brief)), changed: d.change !== undefined };
  if (free.length > 0)
    add(
      'empty-only-in/free',
      { months: free, days: days || daysAMonth(lasting(free)), briefly: brief.length > 0 ? briefly : null },
      { months: [...free, ...brief].sort((a, b) => a - b) },
    );
  else if (brief.length > 0) add('empty-only-in/briefly', briefly, { months: brief });
  else noMonthRule(bound, limits, riseBelow(site, d.measures) - emptiedSlab(d.measures), add);
  const level = (month: number) => lowestSafeLevel[month - 1]!;
  levelRule(site, d, { bound, level, excepted: brief.length > 0 }, add);
  if ((d.emptyingRuled || d.change?.emptied_in) && free.length > 0)
    add('do-not-lower/other-months', { months: bound }, { months: bound });
}

/** Of a pond that is not to be emptied nobody said for how long: what the shortest of its months leaves; 0: all of it. */
const daysAMonth = (days: number) => (days < LONGEST_MONTH ? days : 0);
const LONGEST_MONTH = 31;

/** Where no month is free the dip pipe tells, but of the water under the liner only. */
function noMonthRule(bound: number[], { barred }: MonthlyLimits, below: number, add: AddRule): void {
  const by = (cause: Barred | null) => bound.filter((month) => barred[month - 1] === cause);
  for (const cause of ['floor-heave', 'side-slump'] as const) {
    const months = by(cause);
    if (months.length > 0) add('do-not-lower/barred', { months, cause }, { months });
  }
  const read = by(null);
  if (read.length > 0) add('do-not-lower/unread', { months: read, below_m: below }, { months: read });
}

/** Months in which it may not be emptied, the level of each, and whether the days it stands empty are excepted. */
interface Bound {
  bound: number[];
  level: (month: number) => number;
  excepted: boolean;
}

/** Nearer to the brim it is told as the brim, as on the card, m. */
const TOLD = 0.01;

/** The level to keep, never above the brim: where that is too low, no level of this pond is safe. */
function levelRule(site: Site, d: Decision, { bound, level, excepted }: Bound, add: AddRule): void {
  const brim = site.pond.fullLevel + d.measures.raise;
  const over = bound.filter((month) => level(month) > brim + 1e-9);
  const lifts = over.length > 0 && !d.verdict?.kept;
  const held = lifts ? bound.filter((month) => !over.includes(month)) : bound;
  if (held.length > 0) {
    const highest = Math.min(Math.max(...held.map(level)), brim);
    const bounds = { months: held, level_m: highest };
    const full = held.filter((month) => brim - level(month) < TOLD - 1e-9);
    if (full.length > 0) add('keep-above-level/brim', { months: held, brim: full, excepted }, bounds);
    else add('keep-above-level/level', { ...bounds, excepted }, bounds);
  }
  if (lifts) add('full-may-lift/undrained', { months: over }, { months: over });
}
