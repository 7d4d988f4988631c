import type { Site } from '../site/index.js';
import type { Decision } from './decide.js';
import type { MonthlyLimits } from './monthlyLimits.js';
import { monthWords } from './monthWords.js';
import { sayer } from './say.js';
import type { AddRule } from './sideRules.js';

/** When the pond may be emptied and how low it may be let. */
export function emptyingRules(
  site: Site,
  d: Decision,
  { lowestSafeLevel }: MonthlyLimits,
  add: AddRule,
): void {
  const { pond } = site;
  const months = lowestSafeLevel.map((_, i) => i + 1);
  const free = months.filter((m) => lowestSafeLevel[m - 1] === null);
  const bound = months.filter((m) => lowestSafeLevel[m - 1] !== null);
  if (bound.length === 0) return;
  // Found safe because the water comes too slowly: as briefly as planned, and no longer.
  const wished = pond.emptiedIn === 'any' ? [] : pond.emptiedIn;
  const planned = d.verdict?.safe && d.depth === pond.depth && d.option !== 'measure-first';
  const brief = planned ? bound.filter((m) => wished.includes(m)) : [];
  const briefly = `in ${monthWords(brief)} for at most ${pond.daysEmpty} days, as planned`;
  if (free.length > 0)
    add(
      'empty-only-in',
      `Empty it only in ${monthWords(free)}${brief.length > 0 ? `, or ${briefly}` : ''}.`,
      {
        months: [...free, ...brief].sort((a, b) => a - b),
      },
    );
  else if (brief.length > 0)
    add('empty-only-in', `Empty it only ${briefly}, and read the dip pipe first.`, { months: brief });
  else
    add('do-not-lower', 'Do not empty it in any month without reading the dip pipe first.', {
      months: bound,
    });
  const level = (month: number) => lowestSafeLevel[month - 1]!;
  levelRule(
    site,
    d,
    { bound, level, but: brief.length > 0 ? ', but for the days it stands empty as planned' : '' },
    add,
  );
  if (d.emptyingRuled && free.length > 0)
    add('do-not-lower', `Do not empty it in ${monthWords(bound)}.`, { months: bound });
}

const inMonths = (months: number[]) => (months.length === 12 ? 'all year' : `in ${monthWords(months)}`);

/** Months in which it may not be emptied, the level of each, and what is excepted. */
interface Bound {
  bound: number[];
  level: (month: number) => number;
  but: string;
}

/** The level to keep, never above the brim: where that is too low, no level of this pond is safe. */
function levelRule(site: Site, d: Decision, { bound, level, but }: Bound, add: AddRule): void {
  const brim = site.pond.fullLevel + d.measures.raise;
  const over = bound.filter((month) => level(month) > brim + 1e-9);
  const lifts = over.length > 0 && !d.verdict?.kept;
  const held = lifts ? bound.filter((month) => !over.includes(month)) : bound;
  if (held.length > 0) {
    const highest = Math.min(Math.max(...held.map(level)), brim);
    const worst =
      over.length > 0 && !lifts
        ? `full to the brim ${inMonths(over)}`
        : `in the worst month ${sayer(site).level(highest)} from the lowest ground at the rim`;
    add(
      'keep-above-level',
      `Keep the water above the level of the month ${inMonths(held)}${but}: ${worst}.`,
      { months: held, level_m: highest },
    );
  }
  if (lifts)
    add(
      'full-may-lift',
      `The water outside may stand too high even for the full pond ${inMonths(over)}: with nothing done no level of it is safe then.`,
      { months: over },
    );
}

/** Work on a pond that is there already: it is emptied for it, and what lies under the liner asks for the liner out. */
export function rebuildRule(
  { measures: m }: Decision,
  { lowestSafeLevel }: MonthlyLimits,
  add: AddRule,
): void {
  const under = m.drain !== undefined || m.raise > 0;
  if (!under && m.ballast === 0) return;
  const free = lowestSafeLevel.map((_, i) => i + 1).filter((month) => lowestSafeLevel[month - 1] === null);
  add(
    'rebuild',
    `The pond is emptied for this${under ? ' and the liner comes out' : ''}: the work is done in the driest months, with the dip pipe read first and nothing left under an empty liner overnight.`,
    free.length > 0 && free.length < 12 ? { months: free } : {},
  );
}
