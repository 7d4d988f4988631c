/** In which months the work is done, and whether it fits into them. */
import type { Report } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import { digWeekends } from './buildWords.js';
import { monthStrips } from './monthStrips.js';
import { duringMonths, monthName } from './monthWords.js';

/** Weekends of a month. */
const A_MONTH = 365 / 12 / 7;

/**
 * The plan of the dry months: what is dug, laid, lined and filled in them, in order, and whether two people get it done.
 * @param report - with what is recommended
 * @param units - how numbers are written
 * @returns sentences; empty where nothing is dug, or where the months are all one
 */
export function workPlan(report: Report, units: UnitSystem): string {
  const { build, recommendation, drain } = report.result;
  const { slab } = report;
  const months = longestRun(monthsToDig(report, units));
  if (!build || build.hours_by_hand === 0 || months.length === 0 || months.length === 12) return '';
  // Pipes, liner and edging take another, a slab one more, and it is filled a week later.
  const needed = digWeekends(build) + (slab ? 3 : 1);
  const has = Math.floor(months.length * A_MONTH);
  const last = monthName(months.at(-1)!);
  const uphill = [recommendation.option, ...recommendation.also].includes('cutoff-drain');
  const order = [
    drain || uphill ? 'the trench from its mouth upwards with the pipe in it' : '',
    'the hole',
    drain ? 'bed and pipe under the liner' : '',
    ...(slab
      ? ['fleece and liner', 'the slab', 'water, a week later']
      : ['fleece, liner and water on one weekend']),
  ].filter(Boolean);
  const fits =
    needed <= has
      ? `The work takes ${needed} weekends of the ${has} there are: begin so that the pond is full before ${last} ends.`
      : `The work takes ${needed} weekends and there are ${has}: hire a digger or more hands, for the hole must not stand open afterwards.`;
  return (
    `Dry-month plan: dig ${duringMonths(months)}. First ${order.join(', then ')}. ${fits} ` +
    'A hole that is not lined by then is fenced and nobody goes into it any more: fill it back in, or ask again before going on.'
  );
}

/** Months named for the dig by a rule; else those in which its floor stays dry, or it may be dug at all. */
function monthsToDig(report: Report, units: UnitSystem): number[] {
  const ruled = report.result.recommendation.rules.find(({ code }) => code === 'dig-in')?.months;
  if (ruled) return ruled;
  const cells = monthStrips(report, units).find(({ kind }) => kind === 'dig')?.cells ?? [];
  return cells.flatMap(({ verdict }, at) => (verdict === 'holds' ? [at + 1] : []));
}

/** The longest run of months that follow one another round the year, the first of like ones. */
function longestRun(months: number[]): number[] {
  if (months.length === 12) return months;
  const runs = months
    .filter((month) => !months.includes(month === 1 ? 12 : month - 1))
    .map((start) => {
      const run = [start];
      for (let next = (start % 12) + 1; months.includes(next); next = (next % 12) + 1) run.push(next);
      return run;
    });
  return runs.reduce((a, b) => (b.length > a.length ? b : a), []);
}
