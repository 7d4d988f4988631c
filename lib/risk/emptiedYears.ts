import type { Basis } from './basis.js';
import type { Course } from './courses.js';
import { EmptiedPond } from './emptiedPond.js';
import { emptiedHold } from './emptying.js';
import { liftingHeads } from './liftingHeads.js';
import type { Measures } from './measures.js';
import { Onsets } from './onsets.js';
import { Remembered } from './remembered.js';
import { NO_SHIFT, type Shift } from './shift.js';
import { baredSides, firstTaller } from './sides.js';
import { undrainedHeads } from './undrainedHeads.js';

/** Years in which an emptied pond fails with one course of its drain, however high the pond is kept otherwise. */
export interface EmptiedYears {
  /** how often each year counts: as often as there are months in which a ditch may flood */
  rounds: number;
  /** by plan of emptying */
  plans: EmptiedPlan[];
  /** by sample: 1 where no year fails at any depth */
  idle: Uint8Array;
}

/** A plan of emptying. */
export interface EmptiedPlan {
  lift: Onsets;
  slump: Onsets;
  /** the ditch in flood in one month of the plan after another, and in none of them */
  cases: EmptiedCase[];
}

/** Where the ditch is in flood. */
interface EmptiedCase {
  /** place of the month in which it is; absent: in none of the plan */
  flooded?: number;
  /** how often it counts */
  times: number;
  /** first depth that fails; index sample × years + rank, the years in the order of the plan's first month */
  first: Uint16Array;
}

const found = new Remembered<EmptiedYears>(16);

/** {@link countEmptied}, remembered where no shift makes it other than it will be asked for again. */
export function emptiedYears(
  basis: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift: Shift = NO_SHIFT,
): EmptiedYears {
  const count = () => countEmptied(basis, m, course, depths, shift);
  if (shift.water !== NO_SHIFT.water || shift.conductivity !== NO_SHIFT.conductivity) return count();
  const { way, cutoff, raise, ballast, drain } = m;
  const relieved = course.calm.most ? [drain, course.state] : [];
  const key = JSON.stringify([way, cutoff, raise, ballast, relieved, Array.from(depths)]);
  return found.of(basis.emptied, key, count);
}

function countEmptied(
  { site, draws, sides, emptyings }: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift: Shift,
): EmptiedYears {
  const { samples, years } = draws;
  const { months } = emptyings;
  const count = depths.length;
  const bared = baredSides(m, depths);
  const lifting = liftingHeads(site, draws, m, depths, shift.conductivity);
  const holds = Float64Array.from(depths, (depth) => emptiedHold(site, m, depth));
  const calm = new EmptiedPond(lifting, holds, bared, course.calm);
  const flooded = course.flood && new EmptiedPond(lifting, holds, bared, course.flood);
  const relieved = calm.neverLifts && (flooded?.neverLifts ?? true);
  const rounds = flooded ? site.wetMonths.length : 1;
  const mayFlood = (q: number) => flooded !== undefined && site.wetMonths.includes(months[q] + 1);
  const onsets = () => new Onsets(samples, count, rounds);
  const plans = emptyings.plans.map((places): EmptiedPlan => {
    const wet = places.filter(mayFlood);
    const first = () => new Uint16Array(samples * years).fill(count);
    return {
      lift: onsets(),
      slump: onsets(),
      cases: [
        ...wet.map((flooded) => ({ flooded, times: 1, first: first() })),
        { times: rounds - wet.length, first: first() },
      ],
    };
  });
  const idle = new Uint8Array(samples);
  const heads = undrainedHeads(draws, emptyings, m, shift.water);
  const each = () =>
    months.map((): FirstDepths => ({ lift: new Uint16Array(years), slump: new Uint16Array(years) }));
  const inCalm = each();
  const inFlood = each();
  const emptied = plans.map(({ cases }, p) =>
    cases.map((of) => emptyings.plans[p].map((q) => (q === of.flooded ? inFlood[q] : inCalm[q]))),
  );
  for (let s = 0; s < samples; s++) {
    const tallWet = sides ? firstTaller(bared, sides.softWet[s]) : count;
    const tallDry = sides ? firstTaller(bared, sides.softDry[s]) : count;
    if (relieved && tallWet === count) {
      idle[s] = 1;
      continue;
    }
    const from = (q: number) => (s * months.length + q) * years;
    for (let q = 0; q < months.length; q++) {
      calm.firstLifts(s, heads, from(q), inCalm[q].lift);
      calm.firstSlumps(heads, from(q), tallWet, tallDry, inCalm[q].slump);
      if (!flooded || !mayFlood(q)) continue;
      flooded.firstLifts(s, heads, from(q), inFlood[q].lift);
      flooded.firstSlumps(heads, from(q), tallWet, tallDry, inFlood[q].slump);
    }
    plans.forEach((plan, p) => {
      const [place] = emptyings.plans[p];
      if (place === undefined) return;
      const order = heads.year.subarray(from(place), from(place) + years);
      plan.cases.forEach((of, c) => {
        addYears(plan, s, of, emptied[p][c], order);
      });
    });
  }
  return { rounds, plans, idle };
}

/** First depths at which the liner lifts and a side slumps in an emptying, by year. */
interface FirstDepths {
  lift: Uint16Array;
  slump: Uint16Array;
}

/**
 * Adds the years of a sample, those that fail alike together.
 * @param emptied - one emptying of the plan after another
 * @param order - of the years, in which those that fail alike stand together
 */
function addYears(
  plan: EmptiedPlan,
  sample: number,
  { times, first }: EmptiedCase,
  emptied: FirstDepths[],
  order: Uint16Array,
): void {
  const years = order.length;
  let [lifts, slumps, alike] = [0, 0, 0];
  for (let r = 0; r < years; r++) {
    let lift = Number.POSITIVE_INFINITY;
    let slump = Number.POSITIVE_INFINITY;
    for (const of of emptied) {
      lift = Math.min(lift, of.lift[order[r]]);
      slump = Math.min(slump, of.slump[order[r]]);
    }
    first[sample * years + r] = Math.min(lift, slump);
    if (lift !== lifts || slump !== slumps) {
      plan.lift.add(sample, times * alike, lifts);
      plan.slump.add(sample, times * alike, slumps);
      alike = 0;
      lifts = lift;
      slumps = slump;
    }
    alike++;
  }
  plan.lift.add(sample, times * alike, lifts);
  plan.slump.add(sample, times * alike, slumps);
}
