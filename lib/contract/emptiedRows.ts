import { MONTHS } from '../climate/index.js';
import { isDoneOtherwise } from './doneOtherwise.js';
import { type Holding, holdingOf } from './holding.js';
import { monthsPlanned } from './monthsPlanned.js';
import type { Report } from './report.js';
import type { Situation } from './situation.js';

const RANK: Record<Holding, number> = { holds: 0, briefly: 1, fails: 2 };

/** The emptying that picture and words are of. */
interface EmptiedRows {
  /** nobody is to empty it: told as what would be */
  never: boolean;
  /** with nothing done, in the worst of the months planned, or of the year */
  bare: Situation;
  /** with what is recommended, where that is another pond */
  done?: {
    rows: Situation[];
    worst: Situation;
    /** in the same month where that is allowed, else in the worst that is; absent: in none */
    shown?: Situation;
  };
}

/** The rows of emptying that are told of first; undefined where none were computed. */
export function emptiedRows(report: Report): EmptiedRows | undefined {
  const { result, pond } = report;
  const emptied = (of: Situation['of']) =>
    result.situations.filter((each) => each.of === of && each.situation === 'emptied');
  const planned = monthsPlanned(report);
  const never = planned.length === 0;
  const months = never ? MONTHS : planned;
  const bare = worstOf(emptied('no-drain'), months);
  if (!bare) return undefined;
  const rows = emptied('recommended');
  const same = rows.find(({ month }) => month === bare.month);
  if (!same || !isDoneOtherwise(result.recommendation, pond.depth_m)) return { never, bare };
  const worst = worstOf(rows, months) ?? same;
  // As planned where that holds, else in the months that are left, else kept full.
  const left = never
    ? undefined
    : worstOf(
        rows.filter(({ allowed }) => allowed),
        MONTHS,
      );
  const shown = !worst.allowed ? left : RANK[holdingOf(worst)] > RANK[holdingOf(same)] ? worst : same;
  return { never, bare, done: { rows, worst, shown } };
}

function worstOf(rows: Situation[], months: readonly number[]): Situation | undefined {
  const worse = (a: Situation, b: Situation) =>
    RANK[holdingOf(b)] - RANK[holdingOf(a)] || (a.margin_m ?? 0) - (b.margin_m ?? 0);
  return rows.filter(({ month }) => month !== null && months.includes(month)).sort(worse)[0];
}
